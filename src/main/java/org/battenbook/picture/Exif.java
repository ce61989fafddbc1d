package org.battenbook.picture;

import java.nio.ByteBuffer;

/** What a camera wrote into an image of another format, as the beginning of a TIFF file. */
final class Exif {
  private Exif() {}

  /** Whether the image is turned by a quarter; no where these bytes of its file are damaged. */
  static boolean isTurned(ByteBuffer file, long start, long length) {
    try {
      int here = (int) Math.min(length, file.limit() - start);
      return Tiff.at(file.slice((int) start, here)).isTurned();
    } catch (NoPicture | IndexOutOfBoundsException damaged) {
      return false;
    }
  }
}
