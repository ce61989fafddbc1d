package org.battenbook.plan.sheet;

import java.math.BigInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The loss of each sheet: its cost less the value of the area cut from it. The price of area is
 * that of the unlimited stock that is cheapest per area. So the losses of all sheets of a plan add
 * up to its cost less the value of all pieces, and a plan within a cost has a limited total loss.
 *
 * <p>Limited stock can be cheaper than that price. It then counts at that price, and all it can
 * save is added to the total loss allowed. So no loss is negative.
 *
 * <p>Losses are whole numbers: units of cost times {@code priceArea}.
 */
final class SheetLosses {
  private static final int MOST_BITS = 60;

  private final SheetInstance instance;

  /** The price of area: {@code priceCost} for each {@code priceArea}, in lowest terms. */
  private final long priceArea;

  private final long priceCost;

  private SheetLosses(SheetInstance instance, long priceArea, long priceCost) {
    this.instance = instance;
    this.priceArea = priceArea;
    this.priceCost = priceCost;
  }

  /**
   * The losses of plans up to a cost.
   *
   * @return null if a loss could be too large for a {@code long}
   */
  static @Nullable SheetLosses of(SheetInstance instance, long cost) {
    int cheapest = -1;
    for (int stock = 0; stock < instance.stocks(); stock++) {
      if (!instance.isLimited(stock)
          && (cheapest < 0 || instance.isCheaperByArea(stock, cheapest))) {
        cheapest = stock;
      }
    }
    long area = cheapest < 0 ? 1 : instance.sheetArea(cheapest);
    long price = cheapest < 0 ? 0 : instance.costs[cheapest];
    long common = BigInteger.valueOf(area).gcd(BigInteger.valueOf(price)).longValueExact();
    SheetLosses losses = new SheetLosses(instance, area / common, price / common);
    return losses.isSmall(cost) ? losses : null;
  }

  private boolean isSmall(long cost) {
    BigInteger most =
        BigInteger.valueOf(priceArea)
            .multiply(BigInteger.valueOf(cost + 1))
            .add(BigInteger.valueOf(priceCost).multiply(BigInteger.valueOf(instance.demandArea())));
    for (int stock = 0; stock < instance.stocks(); stock++) {
      int sheets = instance.isLimited(stock) ? instance.limits[stock] : 1;
      most =
          most.add(
              BigInteger.valueOf(priceArea)
                  .multiply(BigInteger.valueOf(instance.costs[stock]))
                  .add(
                      BigInteger.valueOf(priceCost)
                          .multiply(BigInteger.valueOf(instance.sheetArea(stock))))
                  .multiply(BigInteger.valueOf(sheets)));
    }
    return most.bitLength() <= MOST_BITS;
  }

  /**
   * The loss of one sheet, at least 0.
   *
   * @param area the total area of the pieces on it
   */
  long of(int stock, long area) {
    return raisedCost(stock) - area * priceCost;
  }

  /** The cost of a sheet, or the price of its area if that is higher. */
  private long raisedCost(int stock) {
    return Math.max(instance.costs[stock] * priceArea, instance.sheetArea(stock) * priceCost);
  }

  /** The highest total loss of a plan within a cost; negative if there is no such plan. */
  long allowed(long cost) {
    long saved =
        IntStream.range(0, instance.stocks())
            .filter(instance::isLimited)
            .mapToLong(s -> instance.limits[s] * (raisedCost(s) - instance.costs[s] * priceArea))
            .sum();
    return cost * priceArea + saved - instance.demandArea() * priceCost;
  }

  /** The largest area that one sheet of a plan within a cost can waste. */
  long mostWaste(long cost) {
    return priceCost == 0 ? Long.MAX_VALUE : allowed(cost) / priceCost;
  }
}
