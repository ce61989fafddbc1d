package org.battenbook.workbook;

import java.util.List;
import java.util.Map;
import org.battenbook.book.Loader;
import org.battenbook.book.PlannedRows;
import org.battenbook.cutting.Planning;
import org.battenbook.cutting.RowPlanner;
import org.battenbook.evaluate.Results;

/** Plans that stay as they were first made, whatever is edited: a spreadsheet cannot plan anew. */
public final class FirstPlans implements RowPlanner {
  private final Planning planning = new Planning();
  private Map<String, List<PlannedRows>> planned = Map.of();
  private boolean isFilled;

  private FirstPlans() {}

  /** A filled job whose plans no edit changes. */
  public static Filled fill(String job, Loader loader) throws Loader.Unreadable {
    FirstPlans plans = new FirstPlans();
    Filled filled = Workbook.open(job, loader, plans).fill();
    plans.isFilled = true;
    return filled;
  }

  @Override
  public Map<String, List<PlannedRows>> plan(Results results) {
    planned = isFilled ? planned : planning.plan(results);
    return planned;
  }
}
