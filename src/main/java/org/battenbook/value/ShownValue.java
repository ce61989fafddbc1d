package org.battenbook.value;

import org.battenbook.unit.Form;
import org.battenbook.unit.Shown;
import org.jspecify.annotations.Nullable;

/** Values as people read them. */
public final class ShownValue {
  private ShownValue() {}

  /**
   * Shows a value.
   *
   * @param form how quantities are to be shown; absent for values of other kinds
   * @return its text, and whether the text is only near a quantity's value
   */
  public static Shown of(Value value, @Nullable Form form) {
    if (value instanceof Value.Amount amount) {
      return form == null
          ? new Shown(amount.quantity().number().toString(), !amount.quantity().number().isExact())
          : form.show(amount.quantity());
    }
    return new Shown(words(value), false);
  }

  private static String words(Value value) {
    if (value instanceof Value.Text text) {
      return text.text();
    }
    if (value instanceof Value.YesNo yesNo) {
      return yesNo.yes() ? "yes" : "no";
    }
    if (value instanceof Value.Day day) {
      return day.date().toString();
    }
    if (value instanceof Value.Row row) {
      return row.name();
    }
    if (value instanceof Value.Fault fault) {
      return "fault: " + fault.message();
    }
    Value.Waiting waiting = (Value.Waiting) value;
    return (waiting.atFault() ? "waits: at fault is " : "waits for ") + waiting.on();
  }
}
