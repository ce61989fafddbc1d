package org.battenbook.operation;

import java.util.List;
import org.battenbook.value.Kind;

/** What the operators between two operands share, whose result is of no kind where one has none. */
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
    return Check.anyUnknown(operands) ? Kind.UNKNOWN : checkKnown(operands, complaints);
  }
}
