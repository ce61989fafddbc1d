package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPart;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.plan.sheet.SheetPlanner;
import org.battenbook.plan.sheet.SheetStock;
import org.battenbook.plan.sheet.SheetTrims;
import org.battenbook.planstore.Request;

/** Reads what a sheet plan asks for of each material. */
final class SheetOrders extends OrderReader<SheetJob, SheetPlan> {
  SheetOrders(PlanStatement plan, Results results, PlanningLimit limit) {
    super(plan, results, limit);
  }

  @Override
  Rational size(int part) throws NotPlannable {
    return area(parts, part);
  }

  private static Rational area(SourceRows rows, int row) throws NotPlannable {
    return length(rows, row, PlanRole.WIDTH).times(length(rows, row, PlanRole.HEIGHT));
  }

  private static Rational length(SourceRows rows, int row, PlanRole role) throws NotPlannable {
    return rows.number(row, role, Rational.ZERO);
  }

  @Override
  Optional<Request<SheetJob, SheetPlan>> request(Material material, Draft draft)
      throws NotPlannable {
    List<SheetPart> asked = asked(material, draft);
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    SheetJob job = new SheetJob(asked, stocks(material, draft.remarks), kerf(material), stages());
    return Optional.of(Request.of(job, settings.steps(SheetPlanner.USUAL_STEPS)));
  }

  private List<SheetPart> asked(Material material, Draft draft) {
    List<SheetPart> asked = new ArrayList<>();
    for (int row : material.parts()) {
      draft.called.put(parts.name(row), parts.called(row));
      draft
          .remarks
          .read(parts.called(row), () -> part(row))
          .ifPresent(part -> part.ifPresent(asked::add));
    }
    return asked;
  }

  /** What is asked for of one row; absent where it is none. */
  private Optional<SheetPart> part(int row) throws NotPlannable {
    int count = parts.count(row, PlanRole.QUANTITY);
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new SheetPart(
                parts.name(row),
                length(parts, row, PlanRole.WIDTH),
                length(parts, row, PlanRole.HEIGHT),
                count,
                parts.yes(row, PlanRole.CAN_ROTATE, true)));
  }

  private List<SheetStock> stocks(Material material, Remarks remarks) throws NotPlannable {
    StockPrices prices = new StockPrices(stock, material, row -> area(stock, row));
    List<SheetStock> stocks = new ArrayList<>();
    for (int row : material.stock()) {
      if (remarks.read(stockName(row), () -> prices.isThere(row)).orElse(false)) {
        remarks.read(stockName(row), () -> stock(row, prices)).ifPresent(stocks::add);
      }
    }
    prices.refuseNone(stocks);
    return stocks;
  }

  private SheetStock stock(int row, StockPrices prices) throws NotPlannable {
    Rational trim = length(stock, row, PlanRole.TRIM);
    return new SheetStock(
        stock.name(row),
        length(stock, row, PlanRole.WIDTH),
        length(stock, row, PlanRole.HEIGHT),
        prices.cost(row),
        prices.onHand(row),
        new SheetTrims(trim, trim, trim, trim),
        length(stock, row, PlanRole.MINIMUM_OFFCUT));
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
      return stock.notNegative(row, PlanRole.KERF);
    } catch (NotPlannable refusal) {
      throw new NotPlannable("%s: %s".formatted(stockName(row), refusal.reason()));
    }
  }

  /** The most rounds of parallel cuts. A plan that says none, or 0, allows any number. */
  private OptionalInt stages() throws NotPlannable {
    Rational stages = settings.number(PlanRole.STAGES, Rational.ZERO);
    boolean isAny = stages.signum() == 0 || stages.compareTo(Rational.of(Integer.MAX_VALUE)) > 0;
    return isAny ? OptionalInt.empty() : OptionalInt.of((int) stages.longNumerator());
  }
}
