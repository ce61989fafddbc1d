package org.battenbook.cutting;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.unit.Units;

/**
 * The most time that the plans of a job may take together, and that a workbook may ask for.
 *
 * @param hours more than nothing
 */
public record PlanningTime(Rational hours) {
  private static final Rational MOST_HOURS = Rational.of(100);

  /** What a workbook may ask for where nobody allows more. */
  public static final PlanningTime USUAL = of(Bound.PLANNING_TIME.shown());

  /**
   * A time as people write it: {@code 20 min}, {@code 2 h}.
   *
   * @throws IllegalArgumentException for anything else, with what to write
   */
  public static PlanningTime of(String written) {
    Matcher parts = Pattern.compile("(\\d{1,6}) *(s|min|h)").matcher(written.strip());
    if (!parts.matches()) {
      throw notATime(written);
    }
    Rational number = Rational.of(Long.parseLong(parts.group(1)));
    Rational hours = number.times(Units.find(parts.group(2)).orElseThrow().factor());
    if (hours.signum() == 0 || hours.compareTo(MOST_HOURS) > 0) {
      throw notATime(written);
    }
    return new PlanningTime(hours);
  }

  private static IllegalArgumentException notATime(String written) {
    return new IllegalArgumentException(
        "'%s' is not a planning time; write for example \"20 min\" or \"2 h\", at most %s h"
            .formatted(written, MOST_HOURS));
  }

  /** In hours from one hour on, else in minutes or seconds. */
  @Override
  public String toString() {
    for (String unit : new String[] {"h", "min", "s"}) {
      Rational number = hours.dividedBy(Units.find(unit).orElseThrow().factor());
      if (number.isWhole()) {
        return number + " " + unit;
      }
    }
    return hours + " h";
  }
}
