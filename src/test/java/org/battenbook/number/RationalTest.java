package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RationalTest {
  private static final BigInteger TWO_TO_64 = BigInteger.ONE.shiftLeft(64);

  @ParameterizedTest
  @CsvSource({
    "15, 15",
    "3/8, 3/8",
    "6/16, 3/8",
    "15 3/8, 123/8",
    "15.5, 31/2",
    "-3/8, -3/8",
    "-15 3/8, -123/8",
    "0.10, 1/10",
    "0, 0",
    "0/7, 0",
    "007, 7",
    "9223372036854775808, 9223372036854775808",
    "-9223372036854775808, -9223372036854775808"
  })
  void numbers_are_read_as_written_at_the_bench(String written, String lowestTerms) {
    assertThat(Rational.parse(written)).hasToString(lowestTerms);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "-", ".5", "5.", "1,5", "1e3", "1/", "/2", "1 2", "--1", "1/2/3", "1 -2/3", "1/-2", "٣",
        "1.5/2", "+1", " 1", "1 "
      })
  void what_is_no_number_is_refused(String written) {
    assertThatThrownBy(() -> Rational.parse(written))
        .isInstanceOf(NumberFormatException.class)
        .hasMessageContaining("'" + written + "' is not a number");
  }

  @Test
  void nothing_is_divided_by_zero() {
    assertThatThrownBy(() -> Rational.parse("3/0")).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.of(1, 0)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.of(Long.MIN_VALUE, 0))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.ONE.dividedBy(Rational.ZERO))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("division by zero");
    assertThatThrownBy(() -> Rational.ZERO.pow(-1)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void a_number_is_small_whenever_both_parts_fit_a_long() {
    assertThat(Rational.of(Long.MAX_VALUE, 3).isSmall()).isTrue();
    assertThat(Rational.of(TWO_TO_64, TWO_TO_64.shiftLeft(2))).isEqualTo(Rational.of(1, 4));
    assertThat(Rational.of(TWO_TO_64, TWO_TO_64.shiftLeft(2)).isSmall()).isTrue();
    assertThat(Rational.of(TWO_TO_64, BigInteger.ONE).isSmall()).isFalse();
    assertThat(Rational.of(1, Long.MIN_VALUE).isSmall()).isFalse();
    assertThat(Rational.of(2, Long.MIN_VALUE)).isEqualTo(Rational.of(-1, 1L << 62));
  }

  @Test
  void the_least_long_is_left_to_the_big_form() {
    Rational least = Rational.of(Long.MIN_VALUE);
    assertThat(least.isSmall()).isFalse();
    assertThat(least.negate()).hasToString("9223372036854775808");
    assertThat(least.plus(Rational.ONE)).isEqualTo(Rational.of(-Long.MAX_VALUE));
    assertThat(least.plus(Rational.ONE).isSmall()).isTrue();
    assertThat(Rational.of(-Long.MAX_VALUE).minus(Rational.ONE)).isEqualTo(least);
    assertThat(Rational.of(1L << 62).times(Rational.of(-2))).isEqualTo(least);
    assertThatThrownBy(least::longNumerator).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void a_tenth_and_two_tenths_are_three_tenths() {
    assertThat(Rational.parse("0.1").plus(Rational.parse("0.2"))).isEqualTo(Rational.of(3, 10));
  }

  /** The example of Knuth, <i>The Art of Computer Programming</i>, volume 2, section 4.5.1. */
  @Test
  void knuths_sum_of_seven_66ths_and_seventeen_12ths_is_67_over_44() {
    assertThat(Rational.of(7, 66).plus(Rational.of(17, 12))).isEqualTo(Rational.of(67, 44));
  }

  @ParameterizedTest
  @CsvSource({
    "7/2, 3, 4",
    "-7/2, -4, -3",
    "4, 4, 4",
    "-1/9223372036854775808, -1, 0",
    "18446744073709551617/2, 9223372036854775808, 9223372036854775809"
  })
  void floor_and_ceiling_are_the_whole_numbers_around(String number, String floor, String ceiling) {
    assertThat(Rational.parse(number).floor()).isEqualTo(floor);
    assertThat(Rational.parse(number).ceiling()).isEqualTo(ceiling);
  }

  @ParameterizedTest
  @CsvSource({"1/16, 1/10, 1/80", "1/16, 5/127, 1/2032", "0, 3/8, 3/8", "-6, 4, 2", "0, 0, 0"})
  void the_common_divisor_divides_both_wholly(String a, String b, String common) {
    assertThat(Rational.gcd(Rational.parse(a), Rational.parse(b)))
        .isEqualTo(Rational.parse(common));
  }

  @Test
  void numbers_stop_growing_at_their_limit_with_a_plain_message() {
    Rational large = Rational.of(2).pow(19_999);
    assertThatThrownBy(() -> large.times(Rational.of(2)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("the number grew past 20,000 binary digits");
    assertThatThrownBy(() -> Rational.of(3).pow(Integer.MAX_VALUE))
        .hasMessage("the number grew past 20,000 binary digits");
    assertThatThrownBy(() -> Rational.of(1, 3).pow(1_000_000))
        .hasMessage("the number grew past 20,000 binary digits");
    assertThatThrownBy(() -> Rational.parse("9".repeat(10_000)))
        .hasMessage("the number grew past 20,000 binary digits");
    assertThat(Rational.ONE.negate().pow(Integer.MAX_VALUE)).isEqualTo(Rational.of(-1));
  }

  @Test
  void powers_are_repeated_products_and_negative_ones_their_reciprocals() {
    assertThat(Rational.of(-2, 3).pow(3)).isEqualTo(Rational.of(-8, 27));
    assertThat(Rational.of(-2, 3).pow(-3)).isEqualTo(Rational.of(-27, 8));
    assertThat(Rational.ZERO.pow(0)).isEqualTo(Rational.ONE);
    assertThat(Rational.of(10).pow(30)).hasToString("1" + "0".repeat(30));
  }

  @Test
  void a_double_is_taken_for_its_exact_value() {
    assertThat(Rational.exactly(0.1)).hasToString("3602879701896397/36028797018963968");
    assertThat(Rational.exactly(-2.5)).isEqualTo(Rational.of(-5, 2));
    assertThat(Rational.exactly(0)).isEqualTo(Rational.ZERO);
    assertThatThrownBy(() -> Rational.exactly(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
