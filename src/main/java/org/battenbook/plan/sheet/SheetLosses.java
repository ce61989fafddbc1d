package org.battenbook.plan.sheet;

import java.math.BigInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What sheets cost more than the area cut from them is worth at the price of the cheapest sheet of
 * which any number can be had. Sheets that are limited in number and cheaper than that count as
 * dear as it; what they save is all allowed for beforehand. So no loss is negative.
 */
final class SheetLosses {
  private static final int MOST_BITS = 60;

  private final SheetInstance instance;

  /** An area, and what that area costs. */
  private final long priceArea;

  private final long priceCost;

  private SheetLosses(SheetInstance instance, long priceArea, long priceCost) {
    this.instance = instance;
    this.priceArea = priceArea;
    this.priceCost = priceCost;
  }

  /** Null where a loss could be more than a {@code long} holds. */
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

  /** What a sheet loses of which an area is cut; never negative. */
  long of(int stock, long area) {
    return asDear(stock) - area * priceCost;
  }

  private long asDear(int stock) {
    return Math.max(instance.costs[stock] * priceArea, instance.sheetArea(stock) * priceCost);
  }

  /** What all sheets of a plan of some cost may lose together; negative where there is none. */
  long allowed(long cost) {
    long saved =
        IntStream.range(0, instance.stocks())
            .filter(instance::isLimited)
            .mapToLong(s -> instance.limits[s] * (asDear(s) - instance.costs[s] * priceArea))
            .sum();
    return cost * priceArea + saved - instance.demandArea() * priceCost;
  }

  /** The most that one sheet of such a plan may waste, an area. */
  long mostWaste(long cost) {
    return priceCost == 0 ? Long.MAX_VALUE : allowed(cost) / priceCost;
  }
}
