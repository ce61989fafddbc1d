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
 * The stocks of a job, grouped by what they offer: stocks that offer the same size at the same cost
 * are one stock to a search. Groups are numbered from 0 in the order of their offers.
 *
 * @param <O> what a stock offers
 * @param <S> a stock as the job has it
 */
public final class StockGroups<O, S> {
  /** Units of cost stay exact as doubles. */
  private static final long MOST_UNITS = 1L << 40;

  private final TreeMap<O, List<S>> byOffer;
  private final Function<O, Rational> cost;
  private final Function<S, OptionalInt> onHand;

  /**
   * Begins with no stock.
   *
   * @param onHand how many there are of a stock at most
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

  /** What each group offers. */
  public Collection<O> offers() {
    return byOffer.keySet();
  }

  /**
   * The units of cost.
   *
   * @throws Refusal if the costs have no common step that whole numbers can count
   */
  public CommonStep units() {
    return CommonStep.of("costs", MOST_UNITS, offers().stream().map(cost).toList());
  }

  /**
   * How many there are of each group. A count that is at least that of the pieces is no limit,
   * unless the stock is free.
   */
  public int[] limits(long pieces) {
    return byOffer.entrySet().stream()
        .mapToInt(group -> limit(cost.apply(group.getKey()), group.getValue(), pieces))
        .toArray();
  }

  private int limit(Rational costOfOne, List<S> stocks, long pieces) {
    boolean isUnlimited = stocks.stream().anyMatch(stock -> onHand.apply(stock).isEmpty());
    long there = stocks.stream().mapToLong(stock -> onHand.apply(stock).orElse(0)).sum();
    return costOfOne.signum() > 0 && (isUnlimited || there >= pieces)
        ? Offers.UNLIMITED
        : (int) Math.min(there, pieces);
  }

  /**
   * The stocks that a packing takes, each with its label.
   *
   * @param numbers the group of each stick or sheet that is taken
   */
  public Supply<S> supply(IntStream numbers) {
    int[] taken = new int[byOffer.size()];
    numbers.forEach(number -> taken[number]++);
    return new Supply<>(List.copyOf(byOffer.values()), taken, onHand);
  }
}
