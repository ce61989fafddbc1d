package org.battenbook.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Objects;

/**
 * The first directory of a TIFF file, of 32 bits (TIFF 6.0, section 2) or of 64 (BigTIFF). Of its
 * entries only those of single numbers are read. No directory behind it or below it is.
 */
final class Tiff {
  private static final int WIDTH = 0x100;
  private static final int LENGTH = 0x101;
  private static final int ORIENTATION = 0x112;

  /** Orientations from 5 to 8 are turned by a quarter (TIFF 6.0, section 8). */
  private static final int FIRST_TURNED = 5;

  private static final int LAST_TURNED = 8;

  /** The types of numbers. */
  private static final int OF_16_BITS = 3;

  private static final int OF_32_BITS = 4;
  private static final int OF_64_BITS = 16;

  private final ByteBuffer bytes;
  private final boolean big;
  private final int entries;
  private final long count;

  private Tiff(ByteBuffer bytes, boolean big) {
    this.bytes = bytes;
    this.big = big;
    int directory = index(big ? bytes.getLong(8) : Integer.toUnsignedLong(bytes.getInt(4)));
    this.count = big ? bytes.getLong(directory) : Short.toUnsignedInt(bytes.getShort(directory));
    this.entries = directory + (big ? 8 : 2);
  }

  static PictureSize size(ByteBuffer head) throws NoPicture {
    Tiff tiff = at(head);
    return PictureSize.of(tiff.number(WIDTH), tiff.number(LENGTH)).turned(tiff.isTurned());
  }

  /** The directory of a file that begins at the first of these bytes. */
  static Tiff at(ByteBuffer bytes) throws NoPicture {
    boolean little = Format.isAt(bytes, 0, "II");
    bytes.order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int version = bytes.getShort(2);
    if (version != 42 && version != 43) {
      throw new NoPicture(
          "is not read as an image: it begins like a TIFF image, but has another version");
    }
    return new Tiff(bytes, version == 43);
  }

  boolean isTurned() {
    long orientation = number(ORIENTATION);
    return orientation >= FIRST_TURNED && orientation <= LAST_TURNED;
  }

  /** The number of a tag; 0 where there is none, or none in the bytes that are there. */
  private long number(int tag) {
    int size = big ? 20 : 12;
    int here = (int) Math.min(Math.max(count, 0), (bytes.limit() - entries) / size);
    for (int at = entries; at < entries + here * size; at += size) {
      if (Short.toUnsignedInt(bytes.getShort(at)) == tag) {
        return value(bytes.getShort(at + 2), at + size - (big ? 8 : 4));
      }
    }
    return 0;
  }

  private long value(int type, int at) {
    return switch (type) {
      case OF_16_BITS -> Short.toUnsignedInt(bytes.getShort(at));
      case OF_32_BITS -> Integer.toUnsignedLong(bytes.getInt(at));
      case OF_64_BITS -> big ? bytes.getLong(at) : 0;
      default -> 0;
    };
  }

  private int index(long offset) {
    return (int) Objects.checkIndex(offset, (long) bytes.limit());
  }
}
