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
 * Turns a job into whole numbers: lengths into ticks of their greatest common divisor, costs into
 * units of theirs. Pieces that take the same length of a stick become one kind. Stocks of the same
 * length, cost and least offcut become one stock. {@link StickCuts} gives the labels back.
 */
final class StickScale {
  /** Ticks of a stick stay exact as doubles. */
  private static final long MOST_TICKS = 1L << 40;

  /** What a stick offers and costs. */
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
    this.instance = bare();
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

  private StickInstance bare() {
    Collection<Offer> offers = stocks.offers();
    return new StickInstance(
        demandsByPace.keySet().stream().mapToLong(ticks::count).toArray(),
        demandsByPace.values().stream().mapToInt(StickScale::copies).toArray(),
        offers.stream().mapToLong(o -> ticks.count(o.room())).toArray(),
        offers.stream().mapToLong(o -> units.count(o.cost())).toArray(),
        stocks.limits(demandsByPace.values().stream().mapToLong(StickScale::copies).sum()),
        offers.stream().mapToLong(this::leastSpare).toArray());
  }

  /** An offcut is what is left less one kerf, and longer than nothing; never more than all. */
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

  /** The units of cost. */
  CommonStep units() {
    return units;
  }

  /** What each kind is, kinds as numbered in the instance. */
  List<List<Demand>> demands() {
    return List.copyOf(demandsByPace.values());
  }

  /** The stocks, grouped as numbered in the instance. */
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
