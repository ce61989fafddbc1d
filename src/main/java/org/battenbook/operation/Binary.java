package org.battenbook.operation;

import java.util.List;
import org.battenbook.value.Kind;

/** Base of binary operators. If the kind of an operand is unknown, so is that of the result. */
abstract class Binary implements Operation {
  private final String name;

  Binary(String name) {
    this.name = name;
  }

  /** The kind of the result, both operands being of a known kind. */
  abstract Kind checkKnown(List<Operand> operands, Complaints complaints);

  @Override
  public final String name() {
    return name;
  }

  @Override
  public final Arity arity() {
    return new Arity(2, 2);
  }

  @Override
  public final Kind check(List<Operand> operands, Complaints complaints) {
    return OperandKinds.anyUnknown(operands) ? Kind.UNKNOWN : checkKnown(operands, complaints);
  }
}
