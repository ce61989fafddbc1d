package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Laws through both forms of a rational, against {@link BigInteger} and {@link BigDecimal}. */
class RationalLawsTest {
  private static final int TIMES = 20_000;

  private final Samples samples = new Samples();

  @Test
  void the_four_operations_are_those_of_big_integers() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      Rational y = samples.anyRational();
      BigInteger a = x.numerator();
      BigInteger b = x.denominator();
      BigInteger c = y.numerator();
      BigInteger d = y.denominator();
      same(x.plus(y), a.multiply(d).add(c.multiply(b)), b.multiply(d));
      same(x.minus(y), a.multiply(d).subtract(c.multiply(b)), b.multiply(d));
      same(x.times(y), a.multiply(c), b.multiply(d));
      if (y.signum() != 0) {
        same(x.dividedBy(y), a.multiply(d), b.multiply(c));
      }
      assertThat(Integer.signum(x.compareTo(y)))
          .as(seed())
          .isEqualTo(a.multiply(d).compareTo(c.multiply(b)));
    }
  }

  private void same(Rational result, BigInteger numerator, BigInteger denominator) {
    assertThat(result.numerator().multiply(denominator))
        .as(seed())
        .isEqualTo(result.denominator().multiply(numerator));
    assertThat(result.denominator().signum()).as(seed()).isEqualTo(1);
    assertThat(result.numerator().gcd(result.denominator())).as(seed()).isEqualTo(1);
    boolean fits =
        result.numerator().abs().bitLength() < 64 && result.denominator().bitLength() < 64;
    assertThat(result.isSmall()).as(seed()).isEqualTo(fits);
  }

  @Test
  void the_numbers_are_a_field() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      Rational y = samples.anyRational();
      Rational z = samples.anyRationalButZero();
      assertThat(x.plus(y)).as(seed()).isEqualTo(y.plus(x));
      assertThat(x.plus(y).plus(z)).as(seed()).isEqualTo(x.plus(y.plus(z)));
      assertThat(x.times(y).times(z)).as(seed()).isEqualTo(x.times(y.times(z)));
      assertThat(x.plus(y).times(z)).as(seed()).isEqualTo(x.times(z).plus(y.times(z)));
      assertThat(x.plus(y).minus(y)).as(seed()).isEqualTo(x).hasSameHashCodeAs(x);
      assertThat(x.times(z).dividedBy(z)).as(seed()).isEqualTo(x).hasSameHashCodeAs(x);
      assertThat(x.minus(x)).as(seed()).isEqualTo(Rational.ZERO);
      assertThat(z.dividedBy(z)).as(seed()).isEqualTo(Rational.ONE);
    }
  }

  @Test
  void the_order_goes_along_with_the_operations() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      Rational y = samples.anyRational();
      Rational z = samples.anyRationalButZero();
      int order = Integer.signum(x.compareTo(y));
      assertThat(Integer.signum(y.compareTo(x))).as(seed()).isEqualTo(-order);
      assertThat(order == 0).as(seed()).isEqualTo(x.equals(y));
      assertThat(x.minus(y).signum()).as(seed()).isEqualTo(order);
      assertThat(Integer.signum(x.plus(z).compareTo(y.plus(z)))).as(seed()).isEqualTo(order);
      assertThat(Integer.signum(x.times(z).compareTo(y.times(z))))
          .as(seed())
          .isEqualTo(order * z.signum());
      assertThat(x.abs().signum()).as(seed()).isEqualTo(Math.abs(x.signum()));
    }
  }

  @Test
  void what_is_printed_is_read_back() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      assertThat(Rational.parse(x.toString())).as(seed()).isEqualTo(x);
    }
  }

  @Test
  void floor_and_ceiling_enclose_the_number_by_less_than_one() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      assertThat(x.floor()).as(seed()).isEqualTo(divided(x, RoundingMode.FLOOR));
      assertThat(x.ceiling()).as(seed()).isEqualTo(divided(x, RoundingMode.CEILING));
    }
  }

  private static BigInteger divided(Rational x, RoundingMode mode) {
    return new BigDecimal(x.numerator())
        .divide(new BigDecimal(x.denominator()), 0, mode)
        .toBigIntegerExact();
  }

  /** A double is nearest if the number lies within half a unit of its last place. */
  @Test
  void the_nearest_double_is_no_farther_than_its_neighbors() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRational();
      double nearest = x.toNearestDouble();
      Rational distance = x.minus(Rational.exactly(nearest)).abs();
      Rational above = x.minus(Rational.exactly(Math.nextUp(nearest))).abs();
      Rational below = x.minus(Rational.exactly(Math.nextDown(nearest))).abs();
      assertThat(distance).as(seed() + " " + x).isLessThanOrEqualTo(above);
      assertThat(distance).as(seed() + " " + x).isLessThanOrEqualTo(below);
      if (distance.equals(above) || distance.equals(below)) {
        assertThat(Double.doubleToLongBits(nearest) & 1).as(seed() + " tie " + x).isZero();
      }
    }
  }

  @Test
  void every_double_is_its_own_nearest() {
    for (int i = 0; i < TIMES; i++) {
      double number = Double.longBitsToDouble(samples.random().nextLong());
      if (Double.isFinite(number)) {
        assertThat(Rational.exactly(number).toNearestDouble())
            .as(seed())
            .isEqualTo(number == 0 ? 0 : number);
        assertThat(new BigDecimal(Rational.exactly(number).numerator()))
            .as(seed())
            .isEqualByComparingTo(
                new BigDecimal(number)
                    .multiply(
                        new BigDecimal(Rational.exactly(number).denominator()),
                        MathContext.UNLIMITED));
      }
    }
  }

  @Test
  void the_common_divisor_goes_wholly_into_both_and_no_larger_one_does() {
    for (int i = 0; i < TIMES; i++) {
      Rational x = samples.anyRationalButZero();
      Rational y = samples.anyRationalButZero();
      Rational common = Rational.gcd(x, y);
      Rational inX = x.dividedBy(common);
      Rational inY = y.dividedBy(common);
      assertThat(inX.isWhole() && inY.isWhole()).as(seed()).isTrue();
      assertThat(inX.numerator().gcd(inY.numerator())).as(seed()).isEqualTo(1);
    }
  }

  private String seed() {
    return "seed " + samples.seed;
  }
}
