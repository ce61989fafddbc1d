package org.battenbook.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainDecimalTest {

  @ParameterizedTest
  @CsvSource({
    "15 3/8, 15.375",
    "-1/4, -0.25",
    "0, 0",
    "1200, 1200",
    "1/64, 0.015625",
    "297/25, 11.88",
    "1/3, 0.333333333333333",
    "-2/3, -0.666666666666667",
    "1485/127, 11.6929133858268"
  })
  void a_decimal_that_ends_is_written_in_full_others_to_fifteen_digits(String number, String text) {
    assertThat(PlainDecimal.of(Rational.parse(number))).isEqualTo(text);
  }

  @Test
  void no_number_is_written_with_a_power_of_ten() {
    assertThat(PlainDecimal.of(Rational.of(1, 10_000_000_000L))).isEqualTo("0.0000000001");
    assertThat(PlainDecimal.of(1e20)).isEqualTo("100000000000000000000");
    assertThat(PlainDecimal.of(1e-9)).isEqualTo("0.000000001");
  }

  @Test
  void a_double_is_written_without_its_binary_noise() {
    assertThat(PlainDecimal.of(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(PlainDecimal.of(new Approximate(0.1 + 0.2, 1e-15))).isEqualTo("0.3");
    assertThat(PlainDecimal.of(-0.0)).isEqualTo("0");
  }

  @Test
  void what_ends_as_a_decimal_reads_back_as_the_same_number() {
    long seed = 20_261_126;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      Rational number =
          Rational.of(random.nextLong() >> random.nextInt(64))
              .dividedBy(
                  Rational.of(2)
                      .pow(random.nextInt(30))
                      .times(Rational.of(5).pow(random.nextInt(20))));
      BigDecimal read = new BigDecimal(PlainDecimal.of(number));
      assertThat(Rational.of(read.unscaledValue(), BigInteger.TEN.pow(read.scale())))
          .as("seed %d, number %d: %s", seed, i, number)
          .isEqualTo(number);
    }
  }
}
