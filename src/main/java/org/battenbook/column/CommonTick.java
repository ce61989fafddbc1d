package org.battenbook.column;

import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * The largest tick in which two lanes can both be counted.
 *
 * @param left by what the counts of the left lane are multiplied to be counted in it
 * @param right by what those of the right lane are
 */
record CommonTick(Rational tick, long left, long right) {

  /** Null if a factor does not fit a long. */
  static @Nullable CommonTick of(Ticked left, Ticked right) {
    if (right.isZero() || left.tick().equals(right.tick())) {
      return new CommonTick(left.tick(), 1, 1);
    }
    if (left.isZero()) {
      return new CommonTick(right.tick(), 1, 1);
    }
    Rational tick = Rational.gcd(left.tick(), right.tick());
    Rational ofLeft = left.tick().dividedBy(tick);
    Rational ofRight = right.tick().dividedBy(tick);
    return ofLeft.isSmall() && ofRight.isSmall()
        ? new CommonTick(tick, ofLeft.longNumerator(), ofRight.longNumerator())
        : null;
  }
}
