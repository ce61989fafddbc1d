package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import org.battenbook.number.Rational;
import org.battenbook.plan.CommonStep;
import org.battenbook.plan.StockGroups;

/**
 * Converts a job of sheets to whole numbers: sides to ticks of their greatest common divisor, costs
 * to units of theirs. Parts of one size become one kind. Stocks of one size and cost become one
 * stock. {@link SheetCuts} converts a packing back to parts and stocks with their labels.
 */
final class SheetScale {
  /** Small enough for the total area of all pieces to fit a {@code long}. */
  private static final long MOST_TICKS = 1L << 22;

  private record Size(Rational across, Rational down, boolean turns) {}

  /** The usable width and height of a sheet, and its cost. */
  record Offer(Rational across, Rational down, Rational cost) {}

  private final SheetJob job;
  private final TreeMap<Size, List<SheetPart>> partsBySize =
      new TreeMap<>(
          Comparator.comparing(Size::across)
              .thenComparing(Size::down)
              .reversed()
              .thenComparing(Size::turns));
  private final StockGroups<Offer, SheetStock> stocks =
      new StockGroups<>(
          Comparator.comparing(Offer::across).thenComparing(Offer::down).thenComparing(Offer::cost),
          Offer::cost,
          SheetStock::onHand);
  private final List<SheetPart> tooLarge = new ArrayList<>();
  private final CommonStep ticks;
  private final CommonStep units;
  private final SheetInstance instance;

  private SheetScale(SheetJob job) {
    this.job = job;
    job.stocks().forEach(this::sort);
    job.parts().forEach(this::sort);
    this.ticks = CommonStep.of("sides", MOST_TICKS, sides());
    this.units = stocks.units();
    this.instance = toInstance();
  }

  static SheetScale of(SheetJob job) {
    return new SheetScale(job);
  }

  SheetInstance instance() {
    return instance;
  }

  private void sort(SheetStock stock) {
    Offer offer = new Offer(stock.usableAcross(), stock.usableDown(), stock.cost());
    if (offer.across().signum() > 0 && offer.down().signum() > 0) {
      stocks.add(offer, stock);
    }
  }

  private void sort(SheetPart part) {
    boolean turns = part.mayTurn() && !part.across().equals(part.down());
    Predicate<Offer> fits =
        offer ->
            fits(offer, part.across(), part.down())
                || (turns && fits(offer, part.down(), part.across()));
    if (stocks.offers().stream().noneMatch(fits)) {
      tooLarge.add(part);
    } else if (part.count() > 0) {
      Size size = new Size(part.across(), part.down(), turns);
      partsBySize.computeIfAbsent(size, key -> new ArrayList<>()).add(part);
    }
  }

  private static boolean fits(Offer offer, Rational across, Rational down) {
    return across.compareTo(offer.across()) <= 0 && down.compareTo(offer.down()) <= 0;
  }

  private List<Rational> sides() {
    List<Rational> sides = new ArrayList<>();
    for (Size size : partsBySize.keySet()) {
      sides.add(size.across().plus(job.kerf()));
      sides.add(size.down().plus(job.kerf()));
    }
    for (Offer offer : stocks.offers()) {
      sides.add(offer.across().plus(job.kerf()));
      sides.add(offer.down().plus(job.kerf()));
    }
    return sides;
  }

  private SheetInstance toInstance() {
    List<Size> sizes = List.copyOf(partsBySize.keySet());
    List<Offer> offers = List.copyOf(stocks.offers());
    boolean[] turns = new boolean[sizes.size()];
    for (int kind = 0; kind < turns.length; kind++) {
      turns[kind] = sizes.get(kind).turns();
    }
    return new SheetInstance(
        ticks(sizes, Size::across),
        ticks(sizes, Size::down),
        turns,
        partsBySize.values().stream().mapToInt(SheetScale::pieces).toArray(),
        ticks(offers, Offer::across),
        ticks(offers, Offer::down),
        numbers(offers, o -> units.count(o.cost())),
        stocks.limits(partsBySize.values().stream().mapToLong(SheetScale::pieces).sum()),
        job.stages().orElse(Integer.MAX_VALUE));
  }

  private <T> long[] ticks(Collection<T> all, Function<T, Rational> side) {
    return numbers(all, t -> ticks.count(side.apply(t).plus(job.kerf())));
  }

  private static <T> long[] numbers(Collection<T> all, ToLongFunction<T> number) {
    return all.stream().mapToLong(number).toArray();
  }

  private static int pieces(List<SheetPart> parts) {
    return parts.stream().mapToInt(SheetPart::count).sum();
  }

  /** The unit of cost. */
  CommonStep units() {
    return units;
  }

  /** The exact length of some ticks. */
  Rational length(long count) {
    return ticks.times(count);
  }

  Rational kerf() {
    return job.kerf();
  }

  /** The parts of each kind, in the instance's order of kinds. */
  List<List<SheetPart>> parts() {
    return List.copyOf(partsBySize.values());
  }

  /** The stocks, in groups in the instance's order of stocks. */
  StockGroups<Offer, SheetStock> stocks() {
    return stocks;
  }

  List<SheetPart> tooLarge() {
    return tooLarge;
  }
}
