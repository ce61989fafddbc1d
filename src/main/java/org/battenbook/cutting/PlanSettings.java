package org.battenbook.cutting;

import org.battenbook.bind.Spot;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Setting;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;

/** The settings of a plan. */
final class PlanSettings {
  private static final Rational USUAL_TIME = Rational.of(10, 3600);

  private final Results results;
  private final PlanStatement plan;
  private final PlanningLimit limit;

  PlanSettings(Results results, PlanStatement plan, PlanningLimit limit) {
    this.results = results;
    this.plan = plan;
    this.limit = limit;
  }

  /**
   * The work that a plan may take, told as the time in which it is done, about. It is counted, not
   * timed, so that the same job has the same plan.
   *
   * @param inUsualTime how many steps are done in ten seconds by a machine of no great speed
   */
  long steps(long inUsualTime) throws NotPlannable {
    Rational time = number(PlanRole.PLANNING_TIME, USUAL_TIME);
    if (time.signum() <= 0) {
      throw new NotPlannable("the planning time must be more than 0 s");
    }
    return limit
        .allowed(time)
        .dividedBy(USUAL_TIME)
        .times(Rational.of(inUsualTime))
        .floor()
        .longValueExact();
  }

  /** A setting in the base unit of its dimension. */
  Rational number(PlanRole setting, Rational otherwise) throws NotPlannable {
    Setting set = plan.settings().get(setting);
    if (set == null) {
      return otherwise;
    }
    Value value = results.value(new Spot(set, 0));
    if (value instanceof Value.Amount amount
        && amount.quantity().number() instanceof Rational exact) {
      return DigitLimit.writable(exact, "its " + setting.words());
    }
    String why =
        value instanceof Value.Fault fault
            ? "its %s has an error: %s".formatted(setting.words(), fault.message())
            : "its %s is approximate; write it as a number".formatted(setting.words());
    throw new NotPlannable(why);
  }
}
