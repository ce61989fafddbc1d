package org.battenbook.column;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;

/** Rounds ticks of 128 bits to a step; the counted steps fit longs. */
final class WideSteps {
  /** Rounded up and doubled, a count of steps still fits. */
  private static final int MOST_BITS = 61;

  private WideSteps() {}

  /** Null if what it takes might not fit. */
  static @Nullable NumberLane rounded(Rounding rounding, WideLane lane, Rational step) {
    Rational steps = lane.tick().dividedBy(step);
    if (steps.isWhole()) {
      return lane;
    }
    if (!steps.isSmall() || steps.longDenominator() > Division.ByConstant.MOST) {
      return null;
    }
    long divisor = steps.longDenominator();
    WideLane numbers = lane.inTick(step, steps.longNumerator());
    BigInteger most = numbers == null ? null : numbers.most.divide(BigInteger.valueOf(divisor));
    return numbers == null || most == null || most.bitLength() > MOST_BITS
        ? null
        : new LongLane(wholes(rounding, numbers, divisor), step, most.longValue() + 1);
  }

  private static long[] wholes(Rounding rounding, WideLane numbers, long divisor) {
    long[] wholes = new long[numbers.rows()];
    for (int row = 0; row < wholes.length; row++) {
      wholes[row] = whole(rounding, numbers.high[row], numbers.low[row], divisor);
    }
    return wholes;
  }

  private static long whole(Rounding rounding, long high, long low, long divisor) {
    return switch (rounding) {
      case UP -> -Wide.floorDivide(Wide.negateHigh(high, low), -low, divisor);
      case DOWN -> Wide.floorDivide(high, low, divisor);
      case NEAREST -> nearest(high, low, divisor, 0);
      case EVENLY -> nearest(high, low, divisor, 1);
    };
  }

  /** As {@link Steps} does it on longs. */
  private static long nearest(long high, long low, long divisor, long evenly) {
    if (high < 0) {
      return -nearest(Wide.negateHigh(high, low), -low, divisor, evenly);
    }
    long doubledHigh = Wide.sumHigh((high << 1) | (low >>> 63), low << 1, 0, divisor);
    long doubledLow = (low << 1) + divisor;
    long whole = Wide.floorDivide(doubledHigh, doubledLow, 2 * divisor);
    long tie = whole * 2 * divisor == doubledLow ? evenly : 0;
    return whole - (whole & tie);
  }
}
