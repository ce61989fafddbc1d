package org.battenbook.answer;

import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** A value in full with its base unit: {@code 19/508 in}, {@code 3/2}. */
public final class ExactText {
  private ExactText() {}

  public static String of(Value value) {
    if (!(value instanceof Value.Amount amount)) {
      return ShownValue.of(value, null).text();
    }
    String unit = amount.quantity().dimension().baseSymbol();
    String number = amount.quantity().number().toString();
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
