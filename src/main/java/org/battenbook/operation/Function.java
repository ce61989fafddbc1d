package org.battenbook.operation;

import java.util.List;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** What the built-in functions share: numbers in brackets. */
abstract class Function implements Operation {
  private final String name;
  private final Arity arity;

  Function(String name, Arity arity) {
    this.name = name;
    this.arity = arity;
  }

  /** The kind of the result; every operand is a number. */
  abstract Kind checkNumbers(List<Operand> operands, Complaints complaints);

  @Override
  public final String name() {
    return name;
  }

  @Override
  public final Arity arity() {
    return arity;
  }

  @Override
  public final Kind check(List<Operand> operands, Complaints complaints) {
    if (OperandKinds.anyUnknown(operands)) {
      return Kind.UNKNOWN;
    }
    return OperandKinds.allMeasured(operands)
        ? checkNumbers(operands, complaints)
        : Mismatch.ofNoNumber(operands, "'%s' needs numbers".formatted(name), complaints);
  }

  /** Says that an operand is not of the one dimension that the function takes. */
  final Kind complainOfDimension(Operand operand, Dimension wanted, Complaints complaints) {
    complaints.complain(
        "dimension-mismatch",
        List.of(0),
        "%s is %s, but '%s' needs %s"
            .formatted(Mismatch.quote(operand), Mismatch.words(operand), name, wanted.words()),
        repair(operand, wanted));
    return Kind.UNKNOWN;
  }

  private static String repair(Operand operand, Dimension wanted) {
    if (wanted.isNone()) {
      return "divide it by " + Mismatch.words(operand);
    }
    return Mismatch.isBare(operand)
        ? Mismatch.writeUnit(operand, wanted.baseSymbol())
        : "use " + wanted.words();
  }

  @Override
  public final Slope slope(int operand) {
    return Slope.CURVED;
  }

  @Override
  public final String obstacle() {
    return "a function";
  }
}
