package org.battenbook.operation;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.battenbook.operation.Operation.Complaints;
import org.battenbook.operation.Operation.Operand;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** The kinds of operands, as the rules for the kind of a result need them. */
final class OperandKinds {
  private OperandKinds() {}

  /**
   * Whether the kind of an operand is unknown. It is at fault elsewhere, and is not reported again.
   */
  static boolean anyUnknown(List<Operand> operands) {
    return operands.stream().anyMatch(o -> o.kind().equals(Kind.UNKNOWN));
  }

  static boolean allMeasured(List<Operand> operands) {
    return operands.stream().allMatch(o -> o.kind() instanceof Kind.Measured);
  }

  static Kind kind(List<Operand> operands, int index) {
    return operands.get(index).kind();
  }

  /** The dimension of an operand that is known to be a number. */
  static Dimension dimension(List<Operand> operands, int index) {
    return ((Kind.Measured) kind(operands, index)).dimension();
  }

  /** A number of a dimension worked out from others'; past all measure it is no kind. */
  static Kind derived(
      List<Operand> operands, Complaints complaints, Supplier<Dimension> dimension) {
    try {
      return new Kind.Measured(dimension.get());
    } catch (ArithmeticException tooLarge) {
      complaints.complain(
          "dimension-too-large",
          IntStream.range(0, operands.size()).boxed().toList(),
          "the powers of these units are too large",
          "calculate it in smaller steps");
      return Kind.UNKNOWN;
    }
  }

  static boolean sameKind(List<Operand> operands) {
    return kind(operands, 0).equals(kind(operands, 1));
  }
}
