package org.battenbook.operation;

import java.time.DateTimeException;
import java.time.temporal.ChronoUnit;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** Dates and the times between them; a day is 24 hours, times are in hours. */
final class Days {
  static final long HOURS = 24;

  private Days() {}

  /** A date so many hours later, which have to be whole days, else {@code not-whole-days}. */
  static Value later(Value.Day day, Real hours) {
    boolean whole =
        hours instanceof Rational exact && exact.dividedBy(Rational.of(HOURS)).isWhole();
    if (!whole) {
      return Values.fault("not-whole-days", "only whole days of 24 h can be added to a date");
    }
    try {
      long days = ((Rational) hours).dividedBy(Rational.of(HOURS)).numerator().longValueExact();
      return new Value.Day(day.date().plusDays(days));
    } catch (ArithmeticException | DateTimeException outside) {
      return Values.fault("date-out-of-range", "the date is outside the calendar");
    }
  }

  /** The time from one date to a later one; negative to an earlier one. */
  static Value between(Value.Day from, Value.Day to) {
    long days = ChronoUnit.DAYS.between(from.date(), to.date());
    return Values.of(Dimension.TIME, () -> Rational.of(days).times(Rational.of(HOURS)));
  }
}
