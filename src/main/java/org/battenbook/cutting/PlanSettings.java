package org.battenbook.cutting;

import org.battenbook.bind.Spot;
import org.battenbook.book.Line;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;

/** What a plan is set to. */
final class PlanSettings {
  /** Steps that a machine of no great speed takes in an hour, the base unit of time. */
  private static final Rational STEPS_AN_HOUR = Rational.of(360_000_000_000L);

  private static final Rational USUAL_TIME = Rational.of(10, 3600);

  /** More than a night. */
  private static final Rational MOST_TIME = Rational.of(12);

  private final Results results;
  private final PlanStatement plan;

  PlanSettings(Results results, PlanStatement plan) {
    this.results = results;
    this.plan = plan;
  }

  /**
   * The work that a plan may take, told as the time in which it is done, about. It is counted, not
   * timed, so that the same job has the same plan.
   */
  long steps() throws NotPlannable {
    Rational time = number("planning time", USUAL_TIME);
    if (time.signum() <= 0 || time.compareTo(MOST_TIME) > 0) {
      throw new NotPlannable("a planning time is more than nothing, and no more than 12 h");
    }
    return time.times(STEPS_AN_HOUR).floor().longValueExact();
  }

  /** A setting in the base unit of its dimension. */
  Rational number(String setting, Rational otherwise) throws NotPlannable {
    Line line = plan.settings().get(setting);
    if (line == null) {
      return otherwise;
    }
    Value value = results.value(new Spot(line, 0));
    if (value instanceof Value.Amount amount
        && amount.quantity().number() instanceof Rational exact) {
      return exact;
    }
    throw new NotPlannable("its %s is not known exactly".formatted(setting));
  }
}
