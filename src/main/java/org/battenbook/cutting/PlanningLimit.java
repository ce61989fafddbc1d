package org.battenbook.cutting;

import org.battenbook.number.Rational;

/**
 * How long the plans of one job may take.
 *
 * @param most what all of them may take together, and what a workbook may ask for
 * @param materials how many there are to be planned
 */
record PlanningLimit(PlanningTime most, int materials) {

  /**
   * What a material may take of the time that its plan asks for: all of it, unless each material of
   * the job has less to itself.
   *
   * @param hours more than nothing
   */
  Rational allowed(Rational hours) throws NotPlannable {
    if (hours.compareTo(most.hours()) > 0) {
      throw new NotPlannable(
          "a workbook may ask for a planning time of at most %s: write a shorter one, or allow it"
                  .formatted(most)
              + " with --planning-time \"%s\"".formatted(new PlanningTime(hours)));
    }
    Rational share = most.hours().dividedBy(Rational.of(Math.max(1, materials)));
    return share.compareTo(hours) < 0 ? share : hours;
  }
}
