package org.battenbook.cutting;

import java.util.List;
import java.util.OptionalInt;
import org.battenbook.book.PlanRole;
import org.battenbook.number.Rational;

/**
 * What stock of one material costs a plan, and how much there is of it. Offcuts that were kept cost
 * nothing; where no stock has a price, the plan goes by its size; where the workbook speaks of no
 * price, by its number.
 */
final class StockPrices {
  private final SourceRows rows;
  private final Size size;
  private final boolean isPriced;

  /** How much of the material one stick or sheet is. */
  interface Size {
    Rational of(int row) throws NotPlannable;
  }

  StockPrices(SourceRows rows, Material material, Size size) {
    this.rows = rows;
    this.size = size;
    this.isPriced = material.stock().stream().anyMatch(row -> sign(row) > 0);
  }

  /** Of its price; none that is known is 0. */
  private int sign(int row) {
    try {
      return rows.number(row, PlanRole.PRICE, Rational.ONE).signum();
    } catch (NotPlannable unknown) {
      return 0;
    }
  }

  Rational cost(int row) throws NotPlannable {
    if (sign(row) < 0) {
      throw new NotPlannable("its price must be at least 0");
    }
    if (rows.yes(row, PlanRole.OFFCUT, false)) {
      return Rational.ZERO;
    }
    if (!isPriced) {
      return size.of(row);
    }
    Rational price = rows.number(row, PlanRole.PRICE, Rational.ONE);
    if (price.signum() == 0 && !isLimited(row)) {
      throw new NotPlannable(
          "it has no price, but other stock has; enter its price, or how many are on hand");
    }
    return price;
  }

  /** Without any stock, that is what is wrong, whatever the size of the parts. */
  void refuseNone(List<?> stocks) throws NotPlannable {
    if (stocks.isEmpty()) {
      throw new NotPlannable(
          "there is no stock for it; enter stock in '%s'".formatted(rows.table()));
    }
  }

  /** How many there are; empty where any number can be had. */
  OptionalInt onHand(int row) throws NotPlannable {
    return isLimited(row) ? OptionalInt.of(rows.count(row, PlanRole.ON_HAND)) : OptionalInt.empty();
  }

  boolean isThere(int row) throws NotPlannable {
    return !isLimited(row) || rows.count(row, PlanRole.ON_HAND) > 0;
  }

  private boolean isLimited(int row) throws NotPlannable {
    return rows.says(PlanRole.ON_HAND) && !rows.yes(row, PlanRole.CAN_BUY_MORE, false);
  }
}
