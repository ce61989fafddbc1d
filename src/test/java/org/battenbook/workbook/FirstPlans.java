package org.battenbook.workbook;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.book.Loader;
import org.battenbook.book.PlanStatement;
import org.battenbook.cutting.Planning;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.number.Rational;

/** Plans that stay as they were first made, whatever is edited: a spreadsheet cannot plan again. */
public final class FirstPlans implements RowPlanner {
  private final Planning planning = new Planning();
  private final Map<String, Optional<Planned>> planned = new ConcurrentHashMap<>();

  private FirstPlans() {}

  /** A filled job whose plans no edit changes. */
  public static Filled fill(String job, Loader loader) throws Loader.Unreadable {
    return Workbook.open(job, loader, new FirstPlans()).fill();
  }

  @Override
  public Optional<Planned> plan(PlanStatement plan, Results results, Rational hours) {
    return planned.computeIfAbsent(plan.name().key(), key -> planning.plan(plan, results, hours));
  }
}
