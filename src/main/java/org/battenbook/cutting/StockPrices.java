package org.battenbook.cutting;

import java.util.OptionalInt;
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
    this.isPriced = material.stock().stream().anyMatch(this::hasPrice);
  }

  private boolean hasPrice(int row) {
    try {
      return rows.number(row, "price", Rational.ONE).signum() > 0;
    } catch (NotPlannable unknown) {
      return false;
    }
  }

  Rational cost(int row) throws NotPlannable {
    if (rows.yes(row, "offcut", false)) {
      return Rational.ZERO;
    }
    return isPriced ? rows.number(row, "price", Rational.ONE) : size.of(row);
  }

  /** How many there are; empty where any number can be had. */
  OptionalInt onHand(int row) throws NotPlannable {
    return isLimited(row) ? OptionalInt.of(rows.count(row, "on hand")) : OptionalInt.empty();
  }

  boolean isThere(int row) throws NotPlannable {
    return !isLimited(row) || rows.count(row, "on hand") > 0;
  }

  private boolean isLimited(int row) throws NotPlannable {
    return rows.says("on hand") && !rows.yes(row, "any number", false);
  }
}
