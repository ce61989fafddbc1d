package org.battenbook.picture;

import java.nio.ByteBuffer;

/** The size of a PNG image: of its header, the first chunk (W3C PNG, third edition, 5 and 11). */
final class Png {
  static final String SIGNATURE = "\u0089PNG\r\n\u001a\n";

  private static final int FIRST_CHUNK = SIGNATURE.length();

  /** A chunk has its length before its kind, and a check sum behind its data. */
  private static final int KIND = 4;

  private static final int DATA = 8;
  private static final int AROUND = 12;

  private Png() {}

  static PictureSize size(ByteBuffer head) throws NoPicture {
    if (!Format.isAt(head, FIRST_CHUNK + KIND, "IHDR")) {
      throw new NoPicture("is a damaged PNG image: its header is not at its beginning");
    }
    int header = FIRST_CHUNK + DATA;
    return PictureSize.of(head.getInt(header), head.getInt(header + 4)).turned(isTurned(head));
  }

  /** Looks for the one chunk that tells how the image is turned; it stands before the pixels. */
  private static boolean isTurned(ByteBuffer head) {
    long at = FIRST_CHUNK;
    while (at + AROUND <= head.limit() && !Format.isAt(head, (int) at + KIND, "IDAT")) {
      long length = Integer.toUnsignedLong(head.getInt((int) at));
      if (Format.isAt(head, (int) at + KIND, "eXIf")) {
        return Exif.isTurned(head, at + DATA, length);
      }
      at += AROUND + length;
    }
    return false;
  }
}
