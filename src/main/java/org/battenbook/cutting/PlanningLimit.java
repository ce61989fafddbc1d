package org.battenbook.cutting;

import org.battenbook.number.Rational;

/** How long the materials of a plan may be planned, so that all plans of a job end in time. */
final class PlanningLimit {
  /** What is left for a plan at least, as a share of what all may take. */
  private static final Rational LEAST_SHARE = Rational.of(1, 100);

  private final PlanningTime most;
  private final Rational share;
  private Rational allowed = Rational.ZERO;

  /**
   * The limit of one plan.
   *
   * @param most what all plans of the job may take together, and what a workbook may ask for
   * @param before the hours that the plans before this one were allowed
   * @param materials how many of this plan there are
   */
  PlanningLimit(PlanningTime most, Rational before, int materials) {
    this.most = most;
    Rational left = most.hours().minus(before);
    Rational least = most.hours().times(LEAST_SHARE);
    Rational ofPlan = left.compareTo(least) < 0 ? least : left;
    this.share = ofPlan.dividedBy(Rational.of(Math.max(1, materials)));
  }

  /**
   * What a material may take of the time that its plan asks for: all of it, unless its even share
   * of what is left is less.
   *
   * @param hours more than nothing
   */
  Rational allowed(Rational hours) throws NotPlannable {
    if (hours.compareTo(most.hours()) > 0) {
      throw new NotPlannable(
          "the planning time of a workbook must be at most %s; write a shorter one, or allow it"
                  .formatted(most)
              + " with --planning-time \"%s\"".formatted(new PlanningTime(hours)));
    }
    Rational mine = share.compareTo(hours) < 0 ? share : hours;
    allowed = allowed.plus(mine);
    return mine;
  }

  /** What all materials were allowed so far, in hours. */
  Rational allowedInAll() {
    return allowed;
  }
}
