package org.battenbook.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText.Content;
import org.junit.jupiter.api.Test;

class SpreadsheetTextTest {
  private final SpreadsheetText a = SpreadsheetText.reference("a", Content.NUMBER);
  private final SpreadsheetText b = SpreadsheetText.reference("b", Content.NUMBER);
  private final SpreadsheetText c = SpreadsheetText.reference("c", Content.NUMBER);

  @Test
  void brackets_stand_where_they_are_needed_and_nowhere_else() {
    assertThat(a.plus(b).times(c)).hasToString("(a+b)*c");
    assertThat(a.times(b).plus(c)).hasToString("a*b+c");
    assertThat(a.minus(b.minus(c))).hasToString("a-(b-c)");
    assertThat(a.minus(b).minus(c)).hasToString("a-b-c");
    assertThat(a.plus(b.minus(c))).hasToString("a+b-c");
    assertThat(a.dividedBy(b.times(c))).hasToString("a/(b*c)");
    assertThat(a.times(b.dividedBy(c))).hasToString("a*b/c");
    assertThat(a.minus(b).compared(">", c)).hasToString("a-b>c");
    assertThat(SpreadsheetText.choice(a.compared("=", b), a.plus(c), b))
        .hasToString("IF(a=b,a+c,b)");
  }

  @Test
  void every_term_of_a_power_or_of_a_sign_is_bracketed_since_programs_disagree() {
    assertThat(a.power(2).negate()).hasToString("-(a^2)");
    assertThat(a.negate().power(2)).hasToString("(-a)^2");
    assertThat(a.power(2).power(3)).hasToString("(a^2)^3");
    assertThat(number(-3).power(2)).hasToString("(-3)^2");
    assertThat(a.minus(b.negate())).hasToString("a-(-b)");
    assertThat(a.times(b.negate())).hasToString("a*(-b)");
    assertThat(a.negate().negate()).hasToString("-(-a)");
    assertThat(a.power(-1)).hasToString("a^(-1)");
  }

  @Test
  void numbers_are_decimals_where_that_is_exact_and_fractions_elsewhere() {
    assertThat(number(Rational.parse("15 3/8"))).hasToString("15.375");
    assertThat(number(Rational.of(5, 127))).hasToString("5/127");
    assertThat(number(Rational.of(-5, 127))).hasToString("-5/127");
    assertThat(number(1_000_000)).hasToString("1000000");
    assertThat(number(Rational.of(1, 3).pow(60))).hasToString(Double.toString(Math.pow(3, -60)));
  }

  @Test
  void units_are_converted_by_the_number_that_people_know() {
    assertThat(a.scaled(Rational.of(5, 127))).hasToString("a/25.4");
    assertThat(a.scaled(Rational.of(127, 5))).hasToString("a*25.4");
    assertThat(a.scaled(Rational.of(1, 12))).hasToString("a/12");
    assertThat(a.scaled(Rational.of(2, 3))).hasToString("a/1.5");
    assertThat(a.scaled(Rational.of(5, 9))).hasToString("a/1.8");
    assertThat(a.scaled(Rational.of(3, 7))).hasToString("a*3/7");
    assertThat(a.scaled(Rational.ONE)).hasToString("a");
    assertThat(number(3).scaled(Rational.of(1, 2))).hasToString("1.5");
  }

  @Test
  void whole_steps_come_out_as_the_nearest_double() {
    assertThat(a.steps(Rational.of(3, 10))).hasToString("a*3/10");
    assertThat(a.steps(Rational.of(1, 16))).hasToString("a/16");
    assertThat(a.steps(Rational.of(5))).hasToString("a*5");
  }

  @Test
  void texts_are_quoted_and_long_ones_are_joined() {
    assertThat(SpreadsheetText.text("5\" cap")).hasToString("\"5\"\" cap\"");
    String joined = SpreadsheetText.text("x".repeat(300)).toString();
    assertThat(joined).isEqualTo("\"" + "x".repeat(255) + "\"&\"" + "x".repeat(45) + "\"");
    String pairs = SpreadsheetText.text("\uD83D\uDDBC".repeat(130)).toString();
    assertThat(pairs.indexOf('&')).isEqualTo(1 + 254 + 1);
  }

  @Test
  void a_column_may_be_reckoned_with_but_not_put_through_a_function() {
    SpreadsheetText column = SpreadsheetText.column("A1:A9", Content.NUMBER);
    assertThat(column.plus(a).isColumn()).isTrue();
    assertThat(column.plus(a).isFit()).isTrue();
    assertThat(SpreadsheetText.call("ROUND", column, number(0)).isFit()).isFalse();
    SpreadsheetText chosen = SpreadsheetText.choice(column.compared(">", a), column, number(0));
    assertThat(SpreadsheetText.total("SUM", chosen).isColumn()).isFalse();
    assertThat(SpreadsheetText.total("SUM", chosen).isFit()).isTrue();
    SpreadsheetText same = Operations.find("=").orElseThrow().spreadsheet(List.of(column, b));
    assertThat(same).hasToString("IF(A1:A9-b>0.0000001,FALSE,b-A1:A9<=0.0000001)");
    assertThat(same.isFit()).isTrue();
  }
}
