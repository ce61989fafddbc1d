package org.battenbook.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DimensionTest {
  private static final Dimension USD = Dimension.money("USD");

  static Stream<Arguments> words() {
    return Stream.of(
        Arguments.of(Dimension.NONE, "a plain number", ""),
        Arguments.of(Dimension.LENGTH, "a length", "in"),
        Arguments.of(Dimension.AREA, "an area", "in^2"),
        Arguments.of(Dimension.VOLUME, "a volume", "in^3"),
        Arguments.of(Dimension.LENGTH.pow(4), "a length^4", "in^4"),
        Arguments.of(Dimension.MASS, "a mass", "lb"),
        Arguments.of(Dimension.ANGLE, "an angle", "deg"),
        Arguments.of(Dimension.TIME, "a time", "h"),
        Arguments.of(Dimension.TEMPERATURE_DIFFERENCE, "a temperature difference", "K"),
        Arguments.of(USD, "money in USD", "USD"),
        Arguments.of(USD.dividedBy(Dimension.LENGTH), "money in USD per length", "USD/in"),
        Arguments.of(Dimension.MASS.dividedBy(Dimension.VOLUME), "a mass per volume", "lb/in^3"),
        Arguments.of(Dimension.LENGTH.times(Dimension.MASS), "a mass times length", "lb*in"),
        Arguments.of(Dimension.NONE.dividedBy(Dimension.AREA), "a plain number per area", "1/in^2"),
        Arguments.of(
            USD.dividedBy(Dimension.TIME.times(Dimension.LENGTH)),
            "money in USD per length per time",
            "USD/in/h"));
  }

  @ParameterizedTest
  @MethodSource("words")
  void a_dimension_has_words_and_a_base_unit(Dimension dimension, String words, String symbol) {
    assertThat(dimension.words()).isEqualTo(words);
    assertThat(dimension.baseSymbol()).isEqualTo(symbol);
    assertThat(dimension.baseUnit().dimension()).isEqualTo(dimension);
  }

  @Test
  void products_and_quotients_meet_whichever_way_they_are_taken() {
    Dimension pressure = Dimension.MASS.dividedBy(Dimension.AREA);
    assertThat(pressure.times(Dimension.AREA)).isEqualTo(Dimension.MASS);
    assertThat(Dimension.LENGTH.times(Dimension.LENGTH))
        .isEqualTo(Dimension.AREA)
        .hasSameHashCodeAs(Dimension.AREA);
    assertThat(Dimension.VOLUME.dividedBy(Dimension.VOLUME)).isEqualTo(Dimension.NONE);
    assertThat(Dimension.LENGTH.pow(0)).isEqualTo(Dimension.NONE);
  }

  @Test
  void only_even_powers_have_a_square_root() {
    assertThat(Dimension.AREA.root(2)).contains(Dimension.LENGTH);
    assertThat(Dimension.VOLUME.root(3)).contains(Dimension.LENGTH);
    assertThat(Dimension.VOLUME.root(2)).isEmpty();
    assertThat(Dimension.AREA.times(Dimension.MASS).root(2)).isEmpty();
    assertThat(Dimension.NONE.root(2)).contains(Dimension.NONE);
  }

  @Test
  void two_currencies_are_two_dimensions() {
    assertThat(USD).isNotEqualTo(Dimension.money("EUR"));
    assertThat(USD.isMoney()).isTrue();
    assertThat(USD.dividedBy(Dimension.LENGTH).isMoney()).isFalse();
    assertThat(USD.dividedBy(Dimension.LENGTH).currency()).contains("USD");
    assertThat(Dimension.LENGTH.currency()).isEmpty();
    assertThat(USD.dividedBy(Dimension.money("EUR")).words())
        .isEqualTo("money in USD per money in EUR");
  }

  @Test
  void a_power_never_wraps() {
    Dimension high = Dimension.LENGTH.pow(Integer.MAX_VALUE);
    assertThatThrownBy(() -> high.times(Dimension.LENGTH)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> high.pow(2)).isInstanceOf(ArithmeticException.class);
  }
}
