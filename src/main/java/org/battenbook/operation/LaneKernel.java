package org.battenbook.operation;

import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import org.battenbook.column.BitLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.jspecify.annotations.Nullable;

/**
 * An operation on a chunk of rows at once. In each row the result is what {@link Operation#apply}
 * gives for that row's operands.
 */
@FunctionalInterface
public interface LaneKernel {

  /**
   * The results in all rows.
   *
   * @param operands of the same number of rows
   * @return absent where a row has no result that a lane can hold
   * @throws ArithmeticException likewise
   */
  @Nullable Lane apply(List<Lane> operands);

  /** Of one number. */
  static LaneKernel ofNumber(UnaryOperator<@Nullable NumberLane> kernel) {
    return operands -> operands.get(0) instanceof NumberLane number ? kernel.apply(number) : null;
  }

  /** Of two or more numbers, from the first to the last. */
  static LaneKernel ofNumbers(BinaryOperator<NumberLane> kernel) {
    return folded(
        (a, b) ->
            a instanceof NumberLane x && b instanceof NumberLane y ? kernel.apply(x, y) : null);
  }

  /** Of two or more lanes of yes or no, from the first to the last. */
  static LaneKernel ofBits(BinaryOperator<BitLane> kernel) {
    return folded(
        (a, b) -> a instanceof BitLane x && b instanceof BitLane y ? kernel.apply(x, y) : null);
  }

  private static LaneKernel folded(BinaryOperator<@Nullable Lane> kernel) {
    return operands -> {
      Lane result = operands.get(0);
      for (Lane next : operands.subList(1, operands.size())) {
        result = kernel.apply(result, next);
      }
      return result;
    };
  }
}
