package org.battenbook.picture;

import java.nio.ByteBuffer;

/**
 * The size of a JPEG image: of the header of its frame (ITU-T T.81, B.1.1 and B.2.2). Segments
 * before it are skipped, but for the one of Exif, which tells how the image is turned.
 */
final class Jpeg {
  static final String SIGNATURE = "\u00ff\u00d8";

  private static final int EXIF = 0xe1;
  private static final int SCAN = 0xda;
  private static final int END = 0xd9;
  private static final String EXIF_NAME = "Exif\0\0";

  private Jpeg() {}

  static PictureSize size(ByteBuffer head) throws NoPicture {
    boolean turned = false;
    int at = SIGNATURE.length();
    while (true) {
      at = behindMark(head, at);
      int marker = Byte.toUnsignedInt(head.get(at - 1));
      if (isFrame(marker)) {
        return PictureSize.of(number(head, at + 5), number(head, at + 3)).turned(turned);
      }
      if (marker == EXIF && Format.isAt(head, at + 2, EXIF_NAME)) {
        int start = 2 + EXIF_NAME.length();
        turned = Exif.isTurned(head, at + start, length(head, at, marker) - start);
      }
      at += length(head, at, marker);
    }
  }

  /** A marker is a byte behind any number of bytes that are 0xff. */
  private static int behindMark(ByteBuffer head, int start) throws NoPicture {
    int at = start;
    while (head.get(at) == (byte) 0xff) {
      at++;
    }
    if (at == start) {
      throw new NoPicture("is a damaged JPEG image: it has no marker where one belongs");
    }
    return at + 1;
  }

  /** Whether a marker begins a frame: 0xc0 to 0xcf but for three of tables. */
  private static boolean isFrame(int marker) {
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  private static int length(ByteBuffer head, int at, int marker) throws NoPicture {
    if (isAlone(marker)) {
      return 0;
    }
    int length = number(head, at);
    if (length < 2 || marker == SCAN || marker == END) {
      throw new NoPicture("is a damaged JPEG image: its size is not before its pixels");
    }
    return length;
  }

  /** Whether nothing belongs to a marker. */
  private static boolean isAlone(int marker) {
    return marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7);
  }

  private static int number(ByteBuffer head, int at) {
    return Short.toUnsignedInt(head.getShort(at));
  }
}
