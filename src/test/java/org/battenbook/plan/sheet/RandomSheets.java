package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;

/** Small jobs of sheets with all that a job can have, one after the other. */
public final class RandomSheets {
  private final Random random;

  public RandomSheets(Random random) {
    this.random = random;
  }

  public SheetJob next() {
    List<SheetPart> parts = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(5); kind++) {
      boolean turns = random.nextBoolean();
      parts.add(new SheetPart("part " + kind, eighths(8, 60), eighths(8, 60), anyCount(), turns));
    }
    List<SheetStock> stocks = new ArrayList<>();
    for (int kind = 0; kind < 1 + random.nextInt(3); kind++) {
      stocks.add(anyStock("sheet " + kind));
    }
    OptionalInt stages =
        random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(4)) : OptionalInt.empty();
    return new SheetJob(parts, stocks, eighths(0, 2), stages);
  }

  private int anyCount() {
    return random.nextInt(5);
  }

  private SheetStock anyStock(String label) {
    SheetTrims trims =
        random.nextBoolean()
            ? SheetTrims.NONE
            : new SheetTrims(eighths(0, 4), eighths(0, 4), eighths(0, 4), eighths(0, 4));
    OptionalInt onHand =
        random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(4)) : OptionalInt.empty();
    Rational cost = Rational.of(100 + random.nextInt(900), 100);
    return new SheetStock(
        label, eighths(40, 120), eighths(40, 120), cost, onHand, trims, eighths(0, 16));
  }

  private Rational eighths(int least, int most) {
    return Rational.of(least + random.nextInt(most - least + 1), 8);
  }
}
