package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;

/** Small jobs of sticks with all that a job can have, one after the other. */
public final class RandomSticks {
  private final Random random;

  public RandomSticks(Random random) {
    this.random = random;
  }

  public StickJob next() {
    List<Part> parts = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(4); kind++) {
      parts.add(new Part("part " + kind, sixteenths(40, 200), 1 + random.nextInt(2)));
    }
    List<MatchedSet> sets = new ArrayList<>();
    for (int kind = 0; kind < random.nextInt(3); kind++) {
      sets.add(anySet(kind));
    }
    List<Stock> stocks = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
      Rational cost = Rational.of(100 + random.nextInt(900), 100);
      Stretch stretch =
          new Stretch(sixteenths(0, 99), sixteenths(220, 500), sixteenths(0, 8), sixteenths(0, 8));
      stocks.add(new Stock("stock " + kind, stretch, sixteenths(0, 40), cost, anyOnHand()));
    }
    if (random.nextBoolean()) {
      stocks.add(Stock.kept("offcut", sixteenths(100, 300), 1));
    }
    Rational nest = random.nextInt(3) == 0 ? sixteenths(1, 20) : Rational.ZERO;
    return new StickJob(parts, sets, stocks, new StickRules(sixteenths(0, 4), nest));
  }

  private MatchedSet anySet(int kind) {
    List<Part> inOrder = new ArrayList<>();
    for (int cut = 0; cut < 1 + random.nextInt(3); cut++) {
      inOrder.add(new Part("side " + cut, sixteenths(40, 150), 1));
    }
    return new MatchedSet("set " + kind, inOrder, 1);
  }

  private OptionalInt anyOnHand() {
    return random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(3)) : OptionalInt.empty();
  }

  private Rational sixteenths(int least, int most) {
    return Rational.of(least + random.nextInt(most - least + 1), 16);
  }
}
