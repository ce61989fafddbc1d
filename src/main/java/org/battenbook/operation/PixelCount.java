package org.battenbook.operation;

import java.util.List;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/**
 * {@code pixels across("heron.png")} and {@code pixels down(…)}: a count, 0 where no image of that
 * name is found. Who compiles it knows where images are; by itself it knows none.
 */
public final class PixelCount implements Operation {
  private final boolean across;

  PixelCount(boolean across) {
    this.across = across;
  }

  /** Whether it counts across, rather than down. */
  public boolean isAcross() {
    return across;
  }

  @Override
  public String name() {
    return across ? "pixels across" : "pixels down";
  }

  @Override
  public Arity arity() {
    return new Arity(1, 1);
  }

  @Override
  public Kind check(List<Operand> operands, Complaints complaints) {
    if (!OperandKinds.anyUnknown(operands) && !OperandKinds.kind(operands, 0).equals(Kind.TEXT)) {
      complaints.complain(
          "not-a-text",
          List.of(0),
          "'%s' needs the name of an image file, but %s is %s"
              .formatted(name(), Mismatch.quote(operands.get(0)), Mismatch.words(operands.get(0))),
          "write the name in quotes, or a column of texts");
    }
    return Kind.NUMBER;
  }

  @Override
  public Value apply(List<Value> operands) {
    throw new IllegalStateException("pixels are counted where images are known");
  }

  @Override
  public SpreadsheetText spreadsheet(List<SpreadsheetText> operands) {
    return SpreadsheetText.call("NA");
  }
}
