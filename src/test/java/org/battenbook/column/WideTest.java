package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.battenbook.number.Rational;
import org.battenbook.number.Samples;
import org.junit.jupiter.api.Test;

/** Against {@link BigInteger}. */
class WideTest {
  private static final BigInteger TWO_TO_128 = BigInteger.ONE.shiftLeft(128);

  private final Samples samples = new Samples();

  @Test
  void products_sums_and_negatives_are_those_of_big_integers() {
    for (int i = 0; i < 20_000; i++) {
      long high = samples.anyLong();
      long low = samples.anyLong();
      long otherHigh = samples.anyLong();
      long other = samples.anyLong();
      BigInteger number = whole(high, low);
      same(
          Wide.productHigh(high, low, other),
          low * other,
          number.multiply(BigInteger.valueOf(other)));
      same(
          Wide.sumHigh(high, low, otherHigh, other),
          low + other,
          number.add(whole(otherHigh, other)));
      same(Wide.negateHigh(high, low), -low, number.negate());
    }
  }

  /** What does not fit 128 bits comes round. */
  private void same(long high, long low, BigInteger exact) {
    assertThat(whole(high, low).subtract(exact).mod(TWO_TO_128))
        .as("seed %d", samples.seed)
        .isZero();
  }

  @Test
  void quotients_are_the_whole_numbers_below() {
    for (int i = 0; i < 20_000; i++) {
      long divisor = 1 + (samples.anyLong() & Long.MAX_VALUE) / 2;
      BigInteger number =
          BigInteger.valueOf(divisor).multiply(BigInteger.valueOf(samples.anyLong() >> 2));
      quotient(number.add(BigInteger.valueOf(samples.anyLong() >> 2)), divisor);
      quotient(number, divisor);
      quotient(number.subtract(BigInteger.ONE), divisor);
    }
  }

  private void quotient(BigInteger number, long divisor) {
    BigInteger[] parts = number.divideAndRemainder(BigInteger.valueOf(divisor));
    BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    if (floor.bitLength() < 63) {
      assertThat(Wide.floorDivide(number.shiftRight(64).longValue(), number.longValue(), divisor))
          .as("%d by %d, seed %d", number, divisor, samples.seed)
          .isEqualTo(floor.longValueExact());
    }
  }

  private static BigInteger whole(long high, long low) {
    long[] highs = {high};
    long[] lows = {low};
    Rational number = new WideLane(highs, lows, Rational.ONE, BigInteger.ZERO).at(0);
    return number.numerator();
  }
}
