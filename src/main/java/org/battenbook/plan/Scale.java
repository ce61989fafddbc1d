package org.battenbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.battenbook.number.Rational;

/**
 * A job in whole numbers, and back: ticks of the greatest common divisor of all lengths, units of
 * that of all costs. Parts of one length are one kind, stocks of one length and cost are one stock,
 * until {@link CutList} gives pieces and sticks their labels again.
 */
final class Scale {
  /** Ticks of a stick, and units of a cost, stay exact as doubles. */
  private static final long MOST_TICKS = 1L << 40;

  /** What a stick offers and costs. */
  private record Offer(Rational usable, Rational cost) {}

  private final StickJob job;
  private final TreeMap<Rational, List<Part>> partsByLength =
      new TreeMap<>(Comparator.reverseOrder());
  private final Map<Offer, List<Stock>> stocksByOffer =
      new TreeMap<>(Comparator.comparing(Offer::usable).thenComparing(Offer::cost));
  private final List<Part> tooLong = new ArrayList<>();
  private final Rational tick;
  private final Rational unit;
  private final Instance instance;

  private Scale(StickJob job) {
    this.job = job;
    for (Stock stock : job.stocks()) {
      Rational usable = job.rules().usable(stock);
      if (usable.signum() > 0) {
        stocksByOffer
            .computeIfAbsent(new Offer(usable, stock.cost()), offer -> new ArrayList<>())
            .add(stock);
      }
    }
    for (Part part : job.parts()) {
      sort(part);
    }
    this.tick = tick();
    this.unit = unit();
    this.instance = bare();
  }

  static Scale of(StickJob job) {
    return new Scale(job);
  }

  Instance instance() {
    return instance;
  }

  private void sort(Part part) {
    boolean fits =
        stocksByOffer.keySet().stream().anyMatch(o -> part.length().compareTo(o.usable()) <= 0);
    if (!fits) {
      tooLong.add(part);
    } else if (part.count() > 0) {
      partsByLength.computeIfAbsent(part.length(), length -> new ArrayList<>()).add(part);
    }
  }

  private Rational tick() {
    Rational kerf = job.rules().kerf();
    Rational tick = Rational.ZERO;
    for (Rational length : partsByLength.keySet()) {
      tick = Rational.gcd(tick, length.plus(kerf));
    }
    for (Offer offer : stocksByOffer.keySet()) {
      tick = Rational.gcd(tick, offer.usable().plus(kerf));
    }
    return tick.signum() == 0 ? Rational.ONE : tick;
  }

  private Rational unit() {
    Rational unit = Rational.ZERO;
    for (Offer offer : stocksByOffer.keySet()) {
      unit = Rational.gcd(unit, offer.cost());
    }
    return unit.signum() == 0 ? Rational.ONE : unit;
  }

  private Instance bare() {
    Rational kerf = job.rules().kerf();
    List<Offer> offers = List.copyOf(stocksByOffer.keySet());
    return new Instance(
        partsByLength.keySet().stream().mapToLong(l -> ticks(l.plus(kerf))).toArray(),
        partsByLength.values().stream().mapToInt(Scale::pieces).toArray(),
        offers.stream().mapToLong(o -> ticks(o.usable().plus(kerf))).toArray(),
        offers.stream().mapToLong(o -> whole(o.cost().dividedBy(unit), "costs")).toArray(),
        offers.stream().mapToInt(this::limit).toArray());
  }

  private long ticks(Rational length) {
    return whole(length.dividedBy(tick), "lengths");
  }

  private static long whole(Rational number, String what) {
    Refusal.unless(
        number.isSmall() && number.longNumerator() <= MOST_TICKS,
        "the "
            + what
            + " have no common step that is not too fine: round them to one, such as 1/1000");
    return number.longNumerator();
  }

  private static int pieces(List<Part> parts) {
    return parts.stream().mapToInt(Part::count).sum();
  }

  /** More sticks than pieces are no limit, unless they cost nothing. */
  private int limit(Offer offer) {
    long onHand = 0;
    for (Stock stock : stocksByOffer.getOrDefault(offer, List.of())) {
      onHand += stock.onHand().orElse(StickJob.MOST_PIECES);
    }
    long pieces = partsByLength.values().stream().mapToLong(Scale::pieces).sum();
    return onHand >= pieces && offer.cost().signum() > 0
        ? Instance.UNLIMITED
        : (int) Math.min(onHand, pieces);
  }

  Rational cost(long units) {
    return unit.times(Rational.of(units));
  }

  /** The parts of each kind, kinds as numbered in the instance. */
  List<List<Part>> parts() {
    return List.copyOf(partsByLength.values());
  }

  /** The stocks of each number in the instance. */
  List<List<Stock>> stocks() {
    return List.copyOf(stocksByOffer.values());
  }

  List<Part> tooLong() {
    return tooLong;
  }

  StickRules rules() {
    return job.rules();
  }
}
