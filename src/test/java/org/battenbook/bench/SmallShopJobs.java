package org.battenbook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.MatchedSet;
import org.battenbook.plan.stick.Part;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickRules;
import org.battenbook.plan.stick.Stock;

/** Jobs as small shops have them: 5 to 30 pieces, one to three stocks, an offcut, a few sets. */
public final class SmallShopJobs {
  private static final Rational TRIM = Rational.of(1, 4);

  private final Random random;

  private SmallShopJobs(long seed) {
    this.random = new Random(seed);
  }

  /** The same seed gives the same job. */
  public static StickJob of(long seed) {
    return new SmallShopJobs(seed).any();
  }

  private StickJob any() {
    List<Part> parts = new ArrayList<>();
    List<MatchedSet> sets = new ArrayList<>();
    int pieces = 5 + random.nextInt(26);
    while (pieces > 0) {
      Part across = part("across " + pieces);
      Part down = part("down " + pieces);
      if (random.nextInt(4) == 0) {
        sets.add(new MatchedSet("set " + pieces, List.of(across, down, across, down), 1));
      } else {
        parts.add(across.times(2));
        parts.add(down.times(2));
      }
      pieces -= 4;
    }
    return new StickJob(parts, sets, stocks(), StickRules.ofKerf(Rational.parse("0.176777")));
  }

  /** From 8 to 30 in by sixteenths. */
  private Part part(String label) {
    return new Part(label, Rational.of(128 + random.nextInt(353), 16), 1);
  }

  private List<Stock> stocks() {
    List<Stock> stocks = new ArrayList<>();
    stocks.add(bought(144, "17.85"));
    if (random.nextBoolean()) {
      stocks.add(bought(96, "11.45"));
    }
    if (random.nextBoolean()) {
      Stock some = bought(120, "14.30");
      OptionalInt onHand = OptionalInt.of(1 + random.nextInt(3));
      stocks.add(new Stock(some.label(), some.stretch(), some.leastOffcut(), some.cost(), onHand));
    }
    if (random.nextBoolean()) {
      stocks.add(Stock.kept("offcut", Rational.of(20 + random.nextInt(40)), 1));
    }
    return stocks;
  }

  private static Stock bought(long length, String cost) {
    return Stock.bought(length + " in", Rational.of(length), Rational.parse(cost))
        .trimmed(TRIM, TRIM)
        .keeping(Rational.of(12));
  }
}
