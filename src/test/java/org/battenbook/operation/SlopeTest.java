package org.battenbook.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** An operation changes by its slope: exactly, since each that has a number is linear. */
class SlopeTest {
  private static final List<Rational> OPERANDS = List.of(Rational.of(7, 3), Rational.of(-5, 4));
  private static final Rational MOVED = Rational.of(3, 16);

  @TestFactory
  Stream<DynamicTest> an_operand_moves_the_result_by_its_slope() {
    return Stream.of("+", "-", "*", "/", "negate")
        .map(name -> dynamicTest(name, () -> eachMoves(Operations.find(name).orElseThrow())));
  }

  private static void eachMoves(Operation operation) {
    List<Rational> operands = OPERANDS.subList(0, operation.arity().least());
    for (int i = 0; i < operands.size(); i++) {
      if (operation.slope(i) != Slope.CURVED) {
        int at = i;
        List<Rational> moved =
            IntStream.range(0, operands.size())
                .mapToObj(j -> j == at ? operands.get(j).plus(MOVED) : operands.get(j))
                .toList();
        Rational other = operands.get(operands.size() - 1 - i);
        assertThat(result(operation, moved).minus(result(operation, operands)))
            .isEqualTo(MOVED.times(factor(operation.slope(i), other)));
      }
    }
  }

  private static Rational factor(Slope slope, Rational other) {
    return switch (slope) {
      case NONE -> Rational.ZERO;
      case ONE -> Rational.ONE;
      case MINUS_ONE -> Rational.of(-1);
      case OTHER -> other;
      case ONE_OVER_OTHER -> Rational.ONE.dividedBy(other);
      case CURVED -> throw new IllegalArgumentException("has no factor");
    };
  }

  private static Real result(Operation operation, List<Rational> operands) {
    Value result = operation.apply(operands.stream().map(SlopeTest::amount).toList());
    return ((Value.Amount) result).quantity().number();
  }

  private static Value amount(Rational number) {
    return new Value.Amount(new Quantity(number, Dimension.NONE));
  }

  @Test
  void what_stops_an_error_says_so() {
    assertThat(Stream.of("*", "/", "^", "sqrt", "min").map(SlopeTest::obstacle))
        .containsExactly(
            "a product of two values with tolerances",
            "a divisor with a tolerance",
            "a power",
            "a function",
            "a function");
  }

  private static String obstacle(String name) {
    return Operations.find(name).orElseThrow().obstacle();
  }

  @Test
  void a_factor_that_is_the_other_operand_needs_it_exact() {
    assertThat(Arrays.stream(Slope.values()).filter(Slope::needsExactOther))
        .containsExactly(Slope.OTHER, Slope.ONE_OVER_OTHER);
  }

  @Test
  void a_decision_ends_an_error() {
    assertThat(Stream.of("rounded up", "rounded", "=", "<", "and", "not", "±", "pixels down"))
        .allSatisfy(
            name -> assertThat(Operations.find(name).orElseThrow().slope(0)).isEqualTo(Slope.NONE));
  }

  @Test
  void an_order_fails_as_its_left_side_moves_toward_the_right() {
    assertThat(Stream.of("<", "<=", ">", ">=", "=", "<>", "+").map(SlopeTest::worsening))
        .containsExactly("+", "+", "-", "-", "", "", "");
  }

  private static String worsening(String name) {
    Optional<Operation> worsening = Operations.find(name).orElseThrow().worsening();
    return worsening.map(Operation::name).orElse("");
  }
}
