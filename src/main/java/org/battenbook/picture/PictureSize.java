package org.battenbook.picture;

import java.nio.ByteBuffer;

/**
 * How many pixels an image has across and down, as a person sees it: where a camera has marked it
 * as turned by a quarter, across and down are exchanged.
 */
public record PictureSize(int across, int down) {
  private static final String NONE = "tells no size at its beginning";

  /**
   * Reads the size of an image: PNG, JPEG, GIF, BMP, TIFF or WebP.
   *
   * @param head the first bytes of its file, or all of them
   * @throws NoPicture where they tell none
   */
  public static PictureSize read(byte[] head) throws NoPicture {
    try {
      return Format.of(head).size(ByteBuffer.wrap(head));
    } catch (IndexOutOfBoundsException pastTheEnd) {
      throw new NoPicture(NONE);
    }
  }

  /**
   * A size as a file states it.
   *
   * @throws NoPicture where it has no extent, or too much to be counted
   */
  static PictureSize of(long across, long down) throws NoPicture {
    if (Math.min(across, down) <= 0 || Math.max(across, down) > Integer.MAX_VALUE) {
      throw new NoPicture(NONE);
    }
    return new PictureSize((int) across, (int) down);
  }

  PictureSize turned(boolean byQuarter) {
    return byQuarter ? new PictureSize(/* across= */ down, /* down= */ across) : this;
  }
}
