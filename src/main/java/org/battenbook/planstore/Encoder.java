package org.battenbook.planstore;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import org.battenbook.number.Rational;

/**
 * Writes values as bytes, one after the other, each in one way only. Counts take seven bits a byte,
 * the lowest first, with the eighth bit set where more come.
 */
final class Encoder {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  byte[] bytes() {
    return out.toByteArray();
  }

  /** A number that is not negative. */
  void count(long count) {
    long left = count;
    while (left >= 0x80) {
      out.write((int) ((left & 0x7f) | 0x80));
      left >>>= 7;
    }
    out.write((int) left);
  }

  void flag(boolean flag) {
    out.write(flag ? 1 : 0);
  }

  void text(String text) {
    raw(text.getBytes(StandardCharsets.UTF_8));
  }

  void number(Rational number) {
    whole(number.numerator());
    whole(number.denominator());
  }

  /** A count that may be absent. */
  void limit(OptionalInt limit) {
    flag(limit.isPresent());
    limit.ifPresent(this::count);
  }

  private void whole(BigInteger whole) {
    raw(whole.toByteArray());
  }

  private void raw(byte[] bytes) {
    count(bytes.length);
    out.writeBytes(bytes);
  }
}
