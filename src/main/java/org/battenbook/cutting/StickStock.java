package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.PlanRole;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.Stock;
import org.battenbook.plan.stick.Stretch;

/** Reads the sticks of a material that are in stock. */
final class StickStock {
  private final SourceRows rows;
  private final StockPrices prices;

  StickStock(SourceRows rows, Material material) {
    this.rows = rows;
    this.prices =
        new StockPrices(rows, material, row -> rows.number(row, PlanRole.LENGTH, Rational.ZERO));
  }

  /**
   * All stock of a material; rows that cannot be planned with are remarked on.
   *
   * @throws NotPlannable where there is none
   */
  List<Stock> of(Material material, Remarks remarks) throws NotPlannable {
    List<Stock> stocks = new ArrayList<>();
    for (int row : material.stock()) {
      String name = "stock '%s'".formatted(rows.name(row));
      if (remarks.read(name, () -> prices.isThere(row)).orElse(false)) {
        remarks.read(name, () -> stock(row)).ifPresent(stocks::add);
      }
    }
    prices.refuseNone(stocks);
    return stocks;
  }

  private Stock stock(int row) throws NotPlannable {
    Stretch stretch =
        new Stretch(
            rows.number(row, PlanRole.STARTS_AT, Rational.ZERO),
            rows.number(row, PlanRole.LENGTH, Rational.ZERO),
            rows.number(row, PlanRole.LEFT_TRIM, Rational.ZERO),
            rows.number(row, PlanRole.RIGHT_TRIM, Rational.ZERO));
    return new Stock(
        rows.name(row),
        stretch,
        rows.number(row, PlanRole.MINIMUM_OFFCUT, Rational.ZERO),
        prices.cost(row),
        prices.onHand(row));
  }
}
