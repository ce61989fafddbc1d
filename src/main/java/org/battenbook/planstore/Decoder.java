package org.battenbook.planstore;

import java.math.BigInteger;
import java.util.Arrays;
import org.battenbook.number.Rational;

/** Reads what an {@link Encoder} wrote; nothing in the bytes can make it fail otherwise. */
final class Decoder {
  private static final int MOST_BYTES_OF_NUMBER = Rational.MOST_BITS / Byte.SIZE;

  private final byte[] bytes;
  private int at;

  Decoder(byte[] bytes) {
    this.bytes = bytes;
  }

  private int next() throws Damaged {
    Damaged.unless(at < bytes.length, "it ends too early");
    return bytes[at++] & 0xff;
  }

  /** A number from 0 to, and with, the most. */
  int count(int most) throws Damaged {
    long count = 0;
    int shift = 0;
    int read = next();
    for (; read >= 0x80; read = next()) {
      count |= (long) (read & 0x7f) << shift;
      shift += 7;
      Damaged.unless(shift <= 28, "a count is too long");
    }
    count |= (long) read << shift;
    Damaged.unless(count <= most, "a count is past its most");
    return (int) count;
  }

  boolean flag() throws Damaged {
    return count(1) == 1;
  }

  Rational number() throws Damaged {
    BigInteger numerator = whole();
    BigInteger denominator = whole();
    Damaged.unless(denominator.signum() > 0, "a denominator is not above zero");
    return Rational.of(numerator, denominator);
  }

  private BigInteger whole() throws Damaged {
    int length = count(MOST_BYTES_OF_NUMBER);
    Damaged.unless(length > 0 && length <= bytes.length - at, "a number ends too early");
    at += length;
    return new BigInteger(Arrays.copyOfRange(bytes, at - length, at));
  }

  void end() throws Damaged {
    Damaged.unless(at == bytes.length, "more comes after its end");
  }
}
