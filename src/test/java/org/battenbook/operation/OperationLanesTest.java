package org.battenbook.operation;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The operations on a chunk of rows: they answer, and as for a single row. */
class OperationLanesTest {
  private static final int ROWS = 3;

  /** Their results are not rational, or are not numbers; each row has its own way. */
  private static final Set<String> ROW_BY_ROW =
      Set.of("sqrt", "sin", "cos", "tan", "atan", "pixels across", "pixels down");

  @Test
  void all_other_operations_have_lanes() {
    assertThat(Stream.concat(Operations.operators().stream(), Operations.functions().stream()))
        .allSatisfy(
            operation ->
                assertThat(operation.lanes() == null)
                    .as(operation.name())
                    .isEqualTo(ROW_BY_ROW.contains(operation.name())));
  }

  @TestFactory
  Stream<DynamicTest> lanes_give_what_a_row_gives() {
    return SpecTable.read("operations-values")
        .each(
            cells -> {
              Operation operation = Operations.find(cells.get(0)).orElseThrow();
              LaneKernel kernel = operation.lanes();
              List<Value> operands =
                  Written.all(cells.get(1)).stream().map(Written::value).toList();
              List<Lane> lanes =
                  operands.stream()
                      .map(OperationLanesTest::lane)
                      .flatMap(Optional::stream)
                      .toList();
              if (kernel != null && lanes.size() == operands.size()) {
                Value expected = operation.apply(operands);
                Lane result = run(kernel, lanes);
                if (expected.isKnown()) {
                  assertThat(valueIn(requireNonNull(result, "no answer in lanes")))
                      .isEqualTo(plain(expected));
                } else {
                  assertThat(result).isNull();
                }
              }
            });
  }

  @Test
  void a_kernel_does_not_answer_for_lanes_of_another_kind() {
    Lane bits = BitLane.constant(ROWS, true);
    Lane numbers = NumberLane.constant(Rational.ONE, ROWS);
    for (Operation operation : Operations.operators()) {
      LaneKernel kernel = operation.lanes();
      if (kernel != null && operation.arity().least() == 2) {
        assertThat(run(kernel, List.of(bits, numbers))).as(operation.name()).isNull();
        assertThat(run(kernel, List.of(numbers, bits))).as(operation.name()).isNull();
      }
    }
    Lane rows = new IndexLane(new int[ROWS]);
    assertThat(run(kernel("negate"), List.of(bits))).isNull();
    assertThat(run(kernel("not"), List.of(numbers))).isNull();
    assertThat(run(kernel("="), List.of(rows, numbers))).isNull();
    assertThat(run(kernel("="), List.of(numbers, rows))).isNull();
  }

  @Test
  void rows_are_the_same_or_are_not() {
    Lane left = new IndexLane(new int[] {0, 1, 2});
    Lane right = new IndexLane(new int[] {0, 2, 2});
    assertThat(run(kernel("="), List.of(left, right))).isEqualTo(BitLane.of(ROWS, row -> row != 1));
    assertThat(run(kernel("<>"), List.of(left, right)))
        .isEqualTo(BitLane.of(ROWS, row -> row == 1));
  }

  @Test
  void truths_are_the_same_or_are_not() {
    Lane left = BitLane.of(4, row -> row < 2);
    Lane right = BitLane.of(4, row -> row % 2 == 0);
    assertThat(run(kernel("="), List.of(left, right)))
        .isEqualTo(BitLane.of(4, row -> row == 0 || row == 3));
    assertThat(run(kernel("<>"), List.of(left, right)))
        .isEqualTo(BitLane.of(4, row -> row == 1 || row == 2));
  }

  private static LaneKernel kernel(String name) {
    return requireNonNull(Operations.find(name).orElseThrow().lanes());
  }

  private static @Nullable Lane run(LaneKernel kernel, List<Lane> operands) {
    try {
      return kernel.apply(operands);
    } catch (ArithmeticException aRowHasNone) {
      return null;
    }
  }

  /** The value in each of some rows; nothing for values that no lane holds. */
  private static Optional<Lane> lane(Value value) {
    if (value instanceof Value.Amount amount) {
      Real[] numbers = new Real[ROWS];
      Arrays.fill(numbers, amount.quantity().number());
      return Optional.of(NumberLane.of(numbers));
    }
    return value instanceof Value.YesNo truth
        ? Optional.of(BitLane.constant(ROWS, truth.yes()))
        : Optional.empty();
  }

  private static Object valueIn(Lane lane) {
    return lane instanceof NumberLane numbers
        ? numbers.at(ROWS - 1)
        : ((BitLane) lane).at(ROWS - 1);
  }

  private static Object plain(Value value) {
    return value instanceof Value.Amount amount
        ? amount.quantity().number()
        : ((Value.YesNo) value).yes();
  }
}
