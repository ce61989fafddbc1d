package org.battenbook.plan.stick;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.battenbook.number.Rational;
import org.battenbook.plan.CommonStep;
import org.battenbook.plan.StockGroups;

/**
 * Converts a job to whole numbers: lengths to ticks of their greatest common divisor, costs to
 * units of theirs. Pieces and sets that take the same length of a stick become one kind. Stocks of
 * the same length, cost and minimum offcut become one stock. {@link StickCuts} converts a packing
 * back to parts and stocks with their labels.
 */
final class StickScale {
  /** The longest stick in ticks; such numbers are exact as doubles. */
  private static final long MOST_TICKS = 1L << 40;

  /** What a search needs to know of a stock; {@code room} is from {@link StickRules#room}. */
  record Offer(Rational room, Rational cost, Rational leastOffcut) {}

  private final StickJob job;
  private final TreeMap<Rational, List<Demand>> demandsByPace =
      new TreeMap<>(Comparator.reverseOrder());
  private final StockGroups<Offer, Stock> stocks =
      new StockGroups<>(
          Comparator.comparing(Offer::room)
              .reversed()
              .thenComparing(Offer::cost)
              .thenComparing(Offer::leastOffcut),
          Offer::cost,
          Stock::onHand);
  private final List<Demand> tooLong = new ArrayList<>();
  private final CommonStep ticks;
  private final CommonStep units;
  private final StickInstance instance;

  private StickScale(StickJob job) {
    this.job = job;
    job.stocks().forEach(this::sort);
    job.demands().forEach(this::sort);
    this.ticks = CommonStep.of("lengths", MOST_TICKS, lengths());
    this.units = stocks.units();
    this.instance = toInstance();
  }

  static StickScale of(StickJob job) {
    return new StickScale(job);
  }

  StickInstance instance() {
    return instance;
  }

  private void sort(Stock stock) {
    Offer offer = new Offer(job.rules().room(stock), stock.cost(), stock.leastOffcut());
    if (stock.stretch().usable().signum() > 0 && offer.room().signum() > 0) {
      stocks.add(offer, stock);
    }
  }

  private void sort(Demand demand) {
    Rational pace = job.rules().pace(demand);
    if (stocks.offers().stream().noneMatch(o -> pace.compareTo(o.room()) <= 0)) {
      tooLong.add(demand);
    } else if (demand.count() > 0) {
      demandsByPace.computeIfAbsent(pace, first -> new ArrayList<>()).add(demand);
    }
  }

  private List<Rational> lengths() {
    List<Rational> lengths = new ArrayList<>(demandsByPace.keySet());
    stocks.offers().forEach(offer -> lengths.add(offer.room()));
    return lengths;
  }

  private StickInstance toInstance() {
    Collection<Offer> offers = stocks.offers();
    return new StickInstance(
        demandsByPace.keySet().stream().mapToLong(ticks::count).toArray(),
        demandsByPace.values().stream().mapToInt(StickScale::copies).toArray(),
        offers.stream().mapToLong(o -> ticks.count(o.room())).toArray(),
        offers.stream().mapToLong(o -> units.count(o.cost())).toArray(),
        stocks.limits(demandsByPace.values().stream().mapToLong(StickScale::copies).sum()),
        offers.stream().mapToLong(this::leastSpare).toArray());
  }

  /**
   * The least spare length that gives an offcut to keep. The offcut is one kerf shorter, and must
   * be longer than 0. The result is at most one tick more than the stick, which is never reached.
   */
  private long leastSpare(Offer offer) {
    Rational kerf = job.rules().kerf();
    BigInteger least =
        offer.leastOffcut().signum() > 0
            ? offer.leastOffcut().plus(kerf).dividedBy(ticks.step()).ceiling()
            : kerf.dividedBy(ticks.step()).floor().add(BigInteger.ONE);
    return least.min(BigInteger.valueOf(ticks.count(offer.room()) + 1)).longValueExact();
  }

  private static int copies(List<Demand> demands) {
    return demands.stream().mapToInt(Demand::count).sum();
  }

  /** The unit of cost. */
  CommonStep units() {
    return units;
  }

  /** The parts and sets of each kind, in the instance's order of kinds. */
  List<List<Demand>> demands() {
    return List.copyOf(demandsByPace.values());
  }

  /** The stocks, in groups in the instance's order of stocks. */
  StockGroups<Offer, Stock> stocks() {
    return stocks;
  }

  List<Demand> tooLong() {
    return tooLong;
  }

  StickRules rules() {
    return job.rules();
  }
}
