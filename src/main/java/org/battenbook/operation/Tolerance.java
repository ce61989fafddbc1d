package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;

import java.util.List;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * {@code ± a}: by how much a value may be off either way, zero or more; {@code negative-tolerance}
 * where it is less.
 */
final class Tolerance implements Operation {
  @Override
  public String name() {
    return "±";
  }

  @Override
  public Arity arity() {
    return new Arity(1, 1);
  }

  @Override
  public Kind check(List<Operand> operands, Complaints complaints) {
    if (OperandKinds.anyUnknown(operands)) {
      return Kind.UNKNOWN;
    }
    return OperandKinds.allMeasured(operands)
        ? OperandKinds.kind(operands, 0)
        : Mismatch.ofNoNumber(operands, "a tolerance is a number", complaints);
  }

  @Override
  public Value apply(List<Value> operands) {
    return Values.number(operands, 0).signum() < 0
        ? Values.fault("negative-tolerance", "a tolerance must be at least 0")
        : operands.get(0);
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    SpreadsheetText off = operands.get(0);
    return choice(off.compared("<", number(0)), call("NA"), off);
  }

  @Override
  public LaneKernel lanes() {
    return LaneKernel.ofNumber(off -> off.negativeRows().isAny() ? null : off);
  }

  @Override
  public boolean isSign() {
    return true;
  }
}
