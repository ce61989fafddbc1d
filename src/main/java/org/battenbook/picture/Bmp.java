package org.battenbook.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * The size of a BMP image: of the header behind that of the file. The oldest header has numbers of
 * 16 bits. In others a height below 0 means rows from the top downward (Microsoft, BITMAPCOREHEADER
 * and BITMAPINFOHEADER).
 */
final class Bmp {
  private static final int HEADER = 14;
  private static final int OLDEST = 12;
  private static final int NEWEST = 124;

  private Bmp() {}

  static PictureSize size(ByteBuffer head) throws NoPicture {
    head.order(ByteOrder.LITTLE_ENDIAN);
    int size = HEADER + 4;
    int version = head.getInt(HEADER);
    if (version < OLDEST || version > NEWEST) {
      throw new NoPicture("is a damaged BMP image: its header is not at its beginning");
    }
    if (version == OLDEST) {
      int both = head.getInt(size);
      return PictureSize.of(both & 0xffff, both >>> Short.SIZE);
    }
    return PictureSize.of(head.getInt(size), Math.abs((long) head.getInt(size + 4)));
  }
}
