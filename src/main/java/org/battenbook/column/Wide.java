package org.battenbook.column;

/**
 * Arithmetic on numbers of 128 bits in two longs, {@code high * 2^64 + low} with the low one
 * unsigned. Callers know beforehand that results fit.
 */
final class Wide {
  private static final double TWO_TO_64 = 0x1p64;

  private Wide() {}

  /** The high long of a product; the low one is {@code low * factor}. */
  static long productHigh(long high, long low, long factor) {
    return high * factor + Math.multiplyHigh(low, factor) + ((low >> 63) & factor);
  }

  /** The high long of a sum; the low one is {@code lowA + lowB}. */
  static long sumHigh(long highA, long lowA, long highB, long lowB) {
    long low = lowA + lowB;
    long carry = ((lowA & lowB) | ((lowA | lowB) & ~low)) >>> 63;
    return highA + highB + carry;
  }

  /** The high long of the negative; the low one is {@code -low}. */
  static long negateHigh(long high, long low) {
    return low == 0 ? -high : ~high;
  }

  /**
   * The greatest whole number not above the quotient. It must fit a long with some to spare. A
   * quotient in doubles is off by its last places only; what it leaves is divided in turn.
   */
  static long floorDivide(long high, long low, long divisor) {
    long quotient = 0;
    long restHigh = high;
    long restLow = low;
    while (restHigh != 0 || restLow < 0 || restLow >= divisor) {
      long part = (long) Math.floor(toDouble(restHigh, restLow) / divisor);
      long takenLow = part * divisor;
      long takenHigh = Math.multiplyHigh(part, divisor);
      restHigh = sumHigh(restHigh, restLow, negateHigh(takenHigh, takenLow), -takenLow);
      restLow -= takenLow;
      quotient += part;
    }
    return quotient;
  }

  private static double toDouble(long high, long low) {
    if (high == low >> 63) {
      return low;
    }
    double unsigned = (low >>> 1) * 2.0 + (low & 1);
    return high * TWO_TO_64 + unsigned;
  }
}
