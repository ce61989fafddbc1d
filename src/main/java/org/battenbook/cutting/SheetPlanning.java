package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.plan.SheetJob;
import org.battenbook.plan.SheetPart;
import org.battenbook.plan.SheetPlan;
import org.battenbook.plan.SheetPlanner;
import org.battenbook.plan.SheetStock;
import org.battenbook.plan.SheetTrims;
import org.battenbook.unit.Dimension;

/** Works out one sheet plan, material by material, as rows of its tables. */
final class SheetPlanning {
  private final Planning planning;
  private final PlanStatement plan;
  private final PlanSettings settings;
  private final SourceRows parts;
  private final SourceRows stock;
  private final TotalRows totals;
  private final SheetRows rows;

  SheetPlanning(Planning planning, PlanStatement plan, Results results) {
    this.planning = planning;
    this.plan = plan;
    this.settings = new PlanSettings(results, plan);
    this.parts = new SourceRows(results, plan.parts());
    this.stock = new SourceRows(results, plan.stock());
    this.totals = new TotalRows(plan, parts, row -> area(parts, row), Dimension.AREA);
    this.rows = new SheetRows(plan);
  }

  List<PlannedRows> rows() {
    Material.of(plan, parts, stock).forEach(this::plan);
    List<PlannedRows> all = new ArrayList<>();
    all.add(totals.rows());
    all.addAll(rows.rows());
    return all;
  }

  private static Rational area(SourceRows rows, int row) throws NotPlannable {
    return length(rows, row, "across").times(length(rows, row, "down"));
  }

  private static Rational length(SourceRows rows, int row, String role) throws NotPlannable {
    return rows.number(row, role, Rational.ZERO);
  }

  private void plan(Material material) {
    Remarks remarks = new Remarks();
    Map<String, String> called = new HashMap<>();
    List<SheetPart> asked = asked(material, remarks, called);
    try {
      if (!asked.isEmpty()) {
        SheetJob job = new SheetJob(asked, stocks(material, remarks), kerf(material), stages());
        SheetPlan planned =
            planning.plan(job, settings.steps(SheetPlanner.USUAL_STEPS), plan, material);
        planned.tooLarge().forEach(p -> remarks.tooLarge(called.getOrDefault(p.label(), "")));
        planned
            .missing()
            .forEach(p -> remarkMissing(job, p, called.getOrDefault(p.label(), ""), remarks));
        totals.add(material, remarks, planned.proven(), planned.used(), planned.bound());
        rows.add(material, planned);
      } else if (!remarks.isEmpty()) {
        totals.addNone(material, remarks);
      }
    } catch (NotPlannable refusal) {
      remarks.refused(refusal.reason());
      totals.addNone(material, remarks);
    } catch (IllegalArgumentException refusal) {
      remarks.refused(String.valueOf(refusal.getMessage()));
      totals.addNone(material, remarks);
    }
  }

  /** Where there is any number of a sheet that holds a part, only rounds of cuts can be missing. */
  private static void remarkMissing(SheetJob job, SheetPart part, String called, Remarks remarks) {
    boolean enough =
        job.stocks().stream().anyMatch(one -> one.onHand().isEmpty() && one.holds(part));
    if (enough && job.stages().isPresent()) {
      int rounds = job.stages().getAsInt();
      remarks.refused(
          called,
          "no sheet has room for it in %d round%s of parallel cuts: allow more"
              .formatted(rounds, rounds == 1 ? "" : "s"));
    } else {
      remarks.missing(called, part.count());
    }
  }

  private List<SheetPart> asked(Material material, Remarks remarks, Map<String, String> called) {
    List<SheetPart> asked = new ArrayList<>();
    for (int row : material.parts()) {
      try {
        int count = parts.count(row, "quantity");
        if (count > 0) {
          called.put(parts.name(row), parts.called(row));
          asked.add(
              new SheetPart(
                  parts.name(row),
                  length(parts, row, "across"),
                  length(parts, row, "down"),
                  count,
                  parts.yes(row, "may turn", true)));
        }
      } catch (NotPlannable unknown) {
        remarks.refused(parts.called(row), unknown.reason());
      } catch (IllegalArgumentException refusal) {
        remarks.refused(String.valueOf(refusal.getMessage()));
      }
    }
    return asked;
  }

  private List<SheetStock> stocks(Material material, Remarks remarks) throws NotPlannable {
    StockPrices prices = new StockPrices(stock, material, row -> area(stock, row));
    List<SheetStock> stocks = new ArrayList<>();
    for (int row : material.stock()) {
      try {
        if (prices.isThere(row)) {
          Rational trim = length(stock, row, "trim");
          stocks.add(
              new SheetStock(
                  stock.name(row),
                  length(stock, row, "across"),
                  length(stock, row, "down"),
                  prices.cost(row),
                  prices.onHand(row),
                  new SheetTrims(trim, trim, trim, trim),
                  length(stock, row, "least offcut")));
        }
      } catch (NotPlannable unknown) {
        remarks.refused("stock '%s'".formatted(stock.name(row)), unknown.reason());
      } catch (IllegalArgumentException refusal) {
        remarks.refused(String.valueOf(refusal.getMessage()));
      }
    }
    prices.refuseNone(stocks);
    return stocks;
  }

  /** The widest kerf of all stock serves every sheet. */
  private Rational kerf(Material material) throws NotPlannable {
    Rational widest = Rational.ZERO;
    for (int row : material.stock()) {
      Rational kerf = kerf(row);
      widest = kerf.compareTo(widest) > 0 ? kerf : widest;
    }
    return widest;
  }

  private Rational kerf(int row) throws NotPlannable {
    try {
      return stock.notNegative(row, "kerf");
    } catch (NotPlannable refusal) {
      throw new NotPlannable("stock '%s': %s".formatted(stock.name(row), refusal.reason()));
    }
  }

  /** How many rounds of parallel cuts there may be; none said, or 0, is any number. */
  private OptionalInt stages() throws NotPlannable {
    Rational stages = settings.number("stages", Rational.ZERO);
    if (stages.signum() < 0 || !stages.isWhole()) {
      throw new NotPlannable(
          "%s stages are none: say how many rounds of cuts there may be, or 0 for any number"
              .formatted(stages));
    }
    boolean isAny = stages.signum() == 0 || stages.compareTo(Rational.of(Integer.MAX_VALUE)) > 0;
    return isAny ? OptionalInt.empty() : OptionalInt.of((int) stages.longNumerator());
  }
}
