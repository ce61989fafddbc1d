package org.battenbook.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * The size of a WebP image: of the first chunk, which is extended, lossless or lossy (RFC 9649, 2.5
 * to 2.7, and RFC 6386, 9.1).
 */
final class WebP {
  private static final int FIRST_CHUNK = 12;

  /** A chunk has its name and its length before its data. */
  private static final int LENGTH = 4;

  private static final int DATA = 8;
  private static final int START = FIRST_CHUNK + DATA;
  private static final int BITS_14 = 0x3fff;
  private static final int BITS_24 = 0xffffff;

  private WebP() {}

  static PictureSize size(ByteBuffer head) throws NoPicture {
    head.order(ByteOrder.LITTLE_ENDIAN);
    if (Format.isAt(head, 8, "WEBPVP8X")) {
      return extended(head);
    }
    if (Format.isAt(head, 8, "WEBPVP8L") && Format.isAt(head, START, "/")) {
      return lossless(head);
    }
    if (Format.isAt(head, 8, "WEBPVP8 ") && Format.isAt(head, START + 3, "\u009d\u0001*")) {
      return lossy(head);
    }
    throw new NoPicture("is a damaged WebP image: its size is not at its beginning");
  }

  /** Each side less one, in 24 bits. */
  private static PictureSize extended(ByteBuffer head) throws NoPicture {
    int across = head.getInt(START + 4) & BITS_24;
    int down = head.getInt(START + 6) >>> Byte.SIZE;
    return PictureSize.of(across + 1L, down + 1L).turned(isTurned(head));
  }

  /** Each side less one, in 14 bits. */
  private static PictureSize lossless(ByteBuffer head) throws NoPicture {
    int both = head.getInt(START + 1);
    return PictureSize.of((both & BITS_14) + 1L, (both >>> 14 & BITS_14) + 1L);
  }

  /** 14 bits of each side, two more of how it is to be scaled. */
  private static PictureSize lossy(ByteBuffer head) throws NoPicture {
    int both = head.getInt(START + 6);
    return PictureSize.of(both & BITS_14, both >>> Short.SIZE & BITS_14);
  }

  /** Data of an odd length are followed by one byte more. */
  private static boolean isTurned(ByteBuffer head) {
    long at = FIRST_CHUNK;
    while (at + DATA <= head.limit()) {
      long length = Integer.toUnsignedLong(head.getInt((int) at + LENGTH));
      if (Format.isAt(head, (int) at, "EXIF")) {
        return Exif.isTurned(head, at + DATA, length);
      }
      at += DATA + length + length % 2;
    }
    return false;
  }
}
