package org.battenbook.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;

/**
 * The stocks of a job in groups. Stocks with the same offer, such as the same size at the same
 * cost, are one stock for a search. Groups are numbered from 0 in the order of their offers.
 *
 * @param <O> the offer of a stock: all that a search needs to know of it
 * @param <S> a stock of the job
 */
public final class StockGroups<O, S> {
  /** The highest cost in units; such numbers are exact as doubles. */
  private static final long MOST_UNITS = 1L << 40;

  private final TreeMap<O, List<S>> byOffer;
  private final Function<O, Rational> cost;
  private final Function<S, OptionalInt> onHand;

  /**
   * Begins with no stocks.
   *
   * @param order the order of groups
   * @param cost the cost of one stick or sheet of an offer
   * @param onHand the number available of a stock; empty for any number
   */
  public StockGroups(
      Comparator<O> order, Function<O, Rational> cost, Function<S, OptionalInt> onHand) {
    this.byOffer = new TreeMap<>(order);
    this.cost = cost;
    this.onHand = onHand;
  }

  public void add(O offer, S stock) {
    byOffer.computeIfAbsent(offer, first -> new ArrayList<>()).add(stock);
  }

  /** The offer of each group, in order. */
  public Collection<O> offers() {
    return byOffer.keySet();
  }

  /**
   * The unit of cost.
   *
   * @throws Refusal if the costs have no common step that whole numbers can count
   */
  public CommonStep units() {
    return CommonStep.of("costs", MOST_UNITS, offers().stream().map(cost).toList());
  }

  /**
   * The number available of each group, or {@link Offers#UNLIMITED}. Stock that is not free counts
   * as unlimited if there is one stick or sheet for each piece. Free stock stays limited; the
   * bounds rely on that.
   *
   * @param pieces the number of all pieces
   */
  public int[] limits(long pieces) {
    return byOffer.entrySet().stream()
        .mapToInt(group -> limit(cost.apply(group.getKey()), group.getValue(), pieces))
        .toArray();
  }

  private int limit(Rational costOfOne, List<S> stocks, long pieces) {
    boolean isUnlimited = stocks.stream().anyMatch(stock -> onHand.apply(stock).isEmpty());
    long available = stocks.stream().mapToLong(stock -> onHand.apply(stock).orElse(0)).sum();
    return costOfOne.signum() > 0 && (isUnlimited || available >= pieces)
        ? Offers.UNLIMITED
        : (int) Math.min(available, pieces);
  }

  /**
   * The stocks that a packing uses, each with its label.
   *
   * @param numbers the group of each stick or sheet used
   */
  public Supply<S> supply(IntStream numbers) {
    int[] taken = new int[byOffer.size()];
    numbers.forEach(number -> taken[number]++);
    return new Supply<>(List.copyOf(byOffer.values()), taken, onHand);
  }
}
