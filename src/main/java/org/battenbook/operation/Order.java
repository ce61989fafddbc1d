package org.battenbook.operation;

import java.util.List;
import java.util.Optional;
import org.battenbook.column.Relation;
import org.battenbook.value.Kind;

/** What {@code < <= > >=} share: numbers and dates have an order, texts and rows have none. */
abstract class Order extends Comparison {
  Order(String name, Relation relation) {
    super(name, relation);
  }

  /** Whether it holds where the left side is the smaller one. */
  abstract boolean holdsBelow();

  @Override
  final boolean canCompare(List<Operand> operands, Complaints complaints) {
    for (int i = 0; i < operands.size(); i++) {
      if (!hasOrder(operands.get(i).kind())) {
        complain(operands, i, complaints);
        return false;
      }
    }
    return true;
  }

  private static boolean hasOrder(Kind kind) {
    return kind instanceof Kind.Measured || kind.equals(Kind.DATE);
  }

  private void complain(List<Operand> operands, int at, Complaints complaints) {
    Operand operand = operands.get(at);
    complaints.complain(
        "no-order",
        List.of(at),
        "%s is %s, which cannot be more or less than another"
            .formatted(Mismatch.quote(operand), Mismatch.words(operand)),
        "compare with = or <>");
  }

  @Override
  public final Optional<Operation> worsening() {
    return Optional.of(holdsBelow() ? Operations.ADD : Operations.SUBTRACT);
  }
}
