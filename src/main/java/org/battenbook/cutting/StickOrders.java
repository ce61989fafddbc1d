package org.battenbook.cutting;

import java.util.Optional;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.plan.stick.StickPlanner;
import org.battenbook.planstore.Request;

/** Reads what a stick plan asks for of each material. */
final class StickOrders extends OrderReader<StickJob, StickPlan> {
  private final boolean mergesStops;

  StickOrders(PlanStatement plan, Results results, PlanningLimit limit, boolean mergesStops) {
    super(plan, results, limit);
    this.mergesStops = mergesStops;
  }

  @Override
  Rational size(int part) throws NotPlannable {
    return parts.number(part, PlanRole.LENGTH, Rational.ZERO);
  }

  @Override
  Optional<Request<StickJob, StickPlan>> request(Material material, Draft draft)
      throws NotPlannable {
    StickParts asked = new StickParts(parts, material, tolerance(), draft);
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    StickJob job =
        new StickJob(
            asked.loose(),
            asked.sets(),
            new StickStock(stock, material).of(material, draft.remarks),
            asked.rules());
    return Optional.of(Request.of(job, settings.steps(StickPlanner.USUAL_STEPS)));
  }

  /** Within what stops are merged; not at all unless that is asked for. */
  private Rational tolerance() throws NotPlannable {
    return mergesStops ? settings.number(PlanRole.STOP_TOLERANCE, Rational.ZERO) : Rational.ZERO;
  }
}
