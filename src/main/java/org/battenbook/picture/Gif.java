package org.battenbook.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The size of a GIF image: of its logical screen (GIF89a specification, 18). */
final class Gif {
  private static final int SCREEN = 6;

  private Gif() {}

  static PictureSize size(ByteBuffer head) throws NoPicture {
    int both = head.order(ByteOrder.LITTLE_ENDIAN).getInt(SCREEN);
    return PictureSize.of(both & 0xffff, both >>> Short.SIZE);
  }
}
