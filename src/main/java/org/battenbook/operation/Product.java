package org.battenbook.operation;

import java.util.List;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** What times and divided by share: any two numbers, whose dimensions go along. */
abstract class Product extends Binary {
  private final String consequence;

  Product(String name, String consequence) {
    super(name);
    this.consequence = consequence;
  }

  abstract Dimension dimension(Dimension left, Dimension right);

  @Override
  final Kind checkKnown(List<Operand> operands, Complaints complaints) {
    if (!OperandKinds.allMeasured(operands)) {
      return Mismatch.ofNoNumber(operands, consequence, complaints);
    }
    return OperandKinds.derived(
        operands,
        complaints,
        () -> dimension(OperandKinds.dimension(operands, 0), OperandKinds.dimension(operands, 1)));
  }

  /** The dimension of a product of values. */
  final Dimension dimensionOf(List<Value> operands) {
    return dimension(
        Values.quantity(operands, 0).dimension(), Values.quantity(operands, 1).dimension());
  }
}
