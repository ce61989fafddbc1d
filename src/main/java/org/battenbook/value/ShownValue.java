package org.battenbook.value;

import org.battenbook.unit.Form;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Shown;
import org.jspecify.annotations.Nullable;

/**
 * Values as people read them.
 *
 * @param form how quantities are shown; absent for values of other kinds
 */
public record ShownValue(@Nullable Form form) implements ValueVisitor<Shown> {

  /**
   * Shows a value.
   *
   * @param form how quantities are shown; absent for values of other kinds
   * @return its text, and whether the text is only near a quantity's value
   */
  public static Shown of(Value value, @Nullable Form form) {
    return value.accept(new ShownValue(form));
  }

  private static Shown exact(String text) {
    return new Shown(text, false);
  }

  @Override
  public Shown amount(Value.Amount amount) {
    Quantity quantity = amount.quantity();
    return form == null
        ? new Shown(quantity.number().toString(), !quantity.number().isExact())
        : form.show(quantity);
  }

  @Override
  public Shown text(Value.Text text) {
    return exact(text.text());
  }

  @Override
  public Shown yesNo(Value.YesNo yesNo) {
    return exact(yesNo.yes() ? "yes" : "no");
  }

  @Override
  public Shown day(Value.Day day) {
    return exact(day.date().toString());
  }

  @Override
  public Shown row(Value.Row row) {
    return exact(row.name());
  }

  @Override
  public Shown fault(Value.Fault fault) {
    return exact("error: " + fault.message());
  }

  @Override
  public Shown waiting(Value.Waiting waiting) {
    return exact((waiting.atFault() ? "error in " : "needs ") + waiting.on());
  }
}
