package org.battenbook.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.Supplier;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every kernel gives what is given row by row, for lanes of every form. */
class LaneLawsTest {
  private static final int TIMES = 500;

  private final LaneSamples lanes = new LaneSamples();

  @Test
  void sums_are_those_of_the_rows() {
    same(NumberLane::plus, Real::plus);
  }

  @Test
  void differences_are_those_of_the_rows() {
    same(NumberLane::minus, Real::minus);
  }

  @Test
  void products_are_those_of_the_rows() {
    same(NumberLane::times, Real::times);
  }

  @Test
  void quotients_are_those_of_the_rows() {
    same(NumberLane::dividedBy, Real::dividedBy);
  }

  @Test
  void least_and_greatest_are_those_of_the_rows() {
    same(NumberLane::least, RealFunctions::least);
    same(NumberLane::greatest, RealFunctions::greatest);
  }

  @Test
  void what_follows_a_kernel_is_that_of_the_rows_too() {
    NumberLane factor = new Constant(Rational.of(-7, 3), 1);
    same(
        (a, b) -> a.minus(b).plus(a).minus(b.negate()),
        (a, b) -> a.minus(b).plus(a).minus(b.negate()));
    same(
        (a, b) -> a.times(b).plus(a.abs()).times(NumberLane.constant(factor.at(0), a.rows())),
        (a, b) -> a.times(b).plus(a.abs()).times(factor.at(0)));
  }

  @Test
  void powers_are_those_of_the_rows() {
    for (int i = 0; i < TIMES; i++) {
      NumberLane lane = lanes.any(lanes.anyRows());
      int power = i % 19 - 9;
      same(() -> lane.pow(power), () -> rowByRow(lane, lane, (a, b) -> a.pow(power)), lane);
    }
  }

  private void same(BinaryOperator<NumberLane> kernel, BinaryOperator<Real> operation) {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      NumberLane a = lanes.any(rows);
      NumberLane b = lanes.any(rows);
      same(() -> kernel.apply(a, b), () -> rowByRow(a, b, operation), a, b);
    }
  }

  private static List<Real> rowByRow(NumberLane a, NumberLane b, BinaryOperator<Real> operation) {
    List<Real> results = new ArrayList<>();
    for (int row = 0; row < a.rows(); row++) {
      results.add(operation.apply(a.at(row), b.at(row)));
    }
    return results;
  }

  private void same(Supplier<NumberLane> kernel, Supplier<List<Real>> rowByRow, NumberLane... of) {
    List<Real> expected = orNull(rowByRow);
    if (expected == null) {
      assertThatThrownBy(kernel::get).as(() -> say(of)).isInstanceOf(ArithmeticException.class);
    } else {
      assertThat(List.of(kernel.get().reals())).as(() -> say(of)).isEqualTo(expected);
    }
  }

  private static @Nullable List<Real> orNull(Supplier<List<Real>> rowByRow) {
    try {
      return rowByRow.get();
    } catch (ArithmeticException rowWithoutResult) {
      return null;
    }
  }

  @Test
  void rounding_to_one_step_is_that_of_the_rows() {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      NumberLane lane = lanes.any(rows);
      Constant step = new Constant(lanes.anySteps(1).at(0), rows);
      rounds(lane, step);
      rounds(lane, new Constant(Rational.of(1, 16), rows));
      rounds(lane, new Constant(Rational.of(10), rows));
    }
  }

  @Test
  void rounding_to_a_step_for_each_row_is_that_of_the_rows() {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      rounds(lanes.any(rows), lanes.anySteps(rows));
    }
  }

  @Test
  void rounding_to_a_step_of_zero_or_less_is_refused() {
    NumberLane lane = lanes.lengths(3);
    for (Rational step : List.of(Rational.ZERO, Rational.of(-1))) {
      Real[] steps = {Rational.ONE, step, Rational.ONE};
      for (NumberLane refused : List.of(NumberLane.of(steps), NumberLane.constant(step, 3))) {
        assertThatThrownBy(() -> lane.rounded(Rounding.UP, refused))
            .isInstanceOf(ArithmeticException.class)
            .hasMessage("a rounding step is greater than zero");
      }
    }
  }

  private void rounds(NumberLane lane, NumberLane step) {
    for (Rounding rounding : Rounding.values()) {
      same(
          () -> lane.rounded(rounding, step),
          () -> rowByRow(lane, step, rounding::toStep),
          lane,
          step);
    }
  }

  @Test
  void comparisons_are_those_of_the_rows() {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      NumberLane a = lanes.any(rows);
      NumberLane b = i % 5 == 0 ? lanes.lengths(rows).minus(a).plus(a) : lanes.any(rows);
      for (Relation relation : Relation.values()) {
        BitLane expected = BitLane.of(rows, row -> holds(relation, a.at(row).compareTo(b.at(row))));
        assertThat(a.is(relation, b)).as(() -> relation + " " + say(a, b)).isEqualTo(expected);
      }
    }
  }

  private static boolean holds(Relation relation, int order) {
    return switch (relation) {
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case EQUAL -> order == 0;
      case UNEQUAL -> order != 0;
      case AT_LEAST -> order >= 0;
      case GREATER -> order > 0;
    };
  }

  @Test
  void a_choice_takes_each_row_from_its_lane() {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      NumberLane yes = lanes.any(rows);
      NumberLane no = lanes.any(rows);
      BitLane choice = lanes.bits(rows);
      List<Real> expected = new ArrayList<>();
      for (int row = 0; row < rows; row++) {
        expected.add(choice.at(row) ? yes.at(row) : no.at(row));
      }
      assertThat(List.of(yes.orElse(choice, no).reals()))
          .as(() -> say(yes, no))
          .isEqualTo(expected);
    }
  }

  @Test
  void signs_are_those_of_the_rows() {
    for (int i = 0; i < TIMES; i++) {
      NumberLane lane = lanes.any(lanes.anyRows());
      same(lane::negate, () -> rowByRow(lane, lane, (number, same) -> number.negate()), lane);
      same(lane::abs, () -> rowByRow(lane, lane, (number, same) -> number.abs()), lane);
      assertThat(lane.negativeRows())
          .as(() -> say(lane))
          .isEqualTo(BitLane.of(lane.rows(), row -> lane.at(row).signum() < 0));
      assertThat(lane.zeroRows())
          .as(() -> say(lane))
          .isEqualTo(BitLane.of(lane.rows(), row -> lane.at(row).signum() == 0));
    }
  }

  @Test
  void totals_are_those_of_the_rows_chosen() {
    for (int i = 0; i < TIMES; i++) {
      NumberLane lane = lanes.any(lanes.anyRows());
      BitLane chosen = i % 3 == 0 ? null : lanes.bits(lane.rows());
      Real sum = Rational.ZERO;
      int least = -1;
      int greatest = -1;
      for (int row = 0; row < lane.rows(); row++) {
        if (chosen == null || chosen.at(row)) {
          Real number = lane.at(row);
          sum = sum.plus(number);
          least = least < 0 || number.compareTo(lane.at(least)) < 0 ? row : least;
          greatest = greatest < 0 || number.compareTo(lane.at(greatest)) > 0 ? row : greatest;
        }
      }
      assertThat(lane.sum(chosen)).as(() -> say(lane)).isEqualTo(sum);
      assertThat(lane.rowOfLeast(chosen)).as(() -> say(lane)).isEqualTo(least);
      assertThat(lane.rowOfGreatest(chosen)).as(() -> say(lane)).isEqualTo(greatest);
    }
  }

  @Test
  void lanes_are_equal_by_the_numbers_of_their_rows_however_they_are_held() {
    for (int i = 0; i < TIMES; i++) {
      int rows = lanes.anyRows();
      NumberLane lane = lanes.any(rows);
      NumberLane other = i % 2 == 0 ? new RealLane(lane.reals()) : NumberLane.of(lane.reals());
      assertThat(lane).as(() -> say(lane)).isEqualTo(other).hasSameHashCodeAs(other);
      int changed = lanes.samples.random().nextInt(rows);
      NumberLane edited = lane.with(changed, lane.at(changed).plus(Rational.of(1, 1_000)));
      assertThat(edited.differing(lane))
          .as(() -> say(lane))
          .isEqualTo(BitLane.of(rows, row -> row == changed));
      assertThat(edited).as(() -> say(lane)).isNotEqualTo(lane);
    }
  }

  @Test
  void looking_up_takes_each_number_from_the_row_named() {
    for (int i = 0; i < 60; i++) {
      List<Real> numbers = new ArrayList<>();
      List<NumberLane> chunks = new ArrayList<>();
      for (int chunk = lanes.samples.random().nextInt(3); chunk >= 0; chunk--) {
        NumberLane lane = i % 2 == 0 ? lanes.lengths(Lane.CHUNK) : lanes.any(Lane.CHUNK);
        numbers.addAll(List.of(lane.reals()));
        chunks.add(lane);
      }
      int[] rows = new int[50];
      List<Real> expected = new ArrayList<>();
      for (int row = 0; row < rows.length; row++) {
        rows[row] = lanes.samples.random().nextInt(numbers.size() + 1) - 1;
        expected.add(rows[row] < 0 ? Rational.ZERO : numbers.get(rows[row]));
      }
      NumberLane found = new Lookup(new Column<>(chunks)).at(new IndexLane(rows));
      assertThat(List.of(found.reals())).as("seed %d", lanes.samples.seed).isEqualTo(expected);
    }
  }

  private String say(NumberLane... of) {
    StringBuilder said = new StringBuilder("seed " + lanes.samples.seed);
    for (NumberLane lane : of) {
      said.append(", ").append(lane.getClass().getSimpleName()).append(List.of(lane.reals()));
    }
    return said.toString();
  }
}
