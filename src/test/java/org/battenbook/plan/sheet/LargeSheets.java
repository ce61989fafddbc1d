package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;

/** Jobs of sheets, as large as a plan may be, that keep each part of a search busy. */
final class LargeSheets {
  private final Random random = new Random(20261127);

  private LargeSheets() {}

  /** By what they are large in. */
  static Map<String, SheetJob> jobs() {
    LargeSheets jobs = new LargeSheets();
    Map<String, SheetJob> all = new LinkedHashMap<>();
    all.put("boards", SplitBoards.job(3, 10, 10, 3, true));
    all.put("pieces", jobs.job(200, 50, 2, OptionalInt.empty(), 20));
    all.put("one sheet", jobs.job(200, 50, 1, OptionalInt.of(3), 400));
    all.put("kinds", jobs.job(2_000, 5, 3, OptionalInt.empty(), 20));
    all.put("stocks", jobs.job(40, 100, 300, OptionalInt.empty(), 20));
    return all;
  }

  private SheetJob job(int kinds, int ofEach, int stocks, OptionalInt stages, int side) {
    List<SheetPart> parts = new ArrayList<>();
    for (int kind = 0; kind < kinds; kind++) {
      boolean turns = random.nextBoolean();
      parts.add(new SheetPart("part " + kind, eighths(40, 120), eighths(40, 120), ofEach, turns));
    }
    List<SheetStock> all = new ArrayList<>();
    for (int stock = 0; stock < stocks; stock++) {
      Rational cost = Rational.of(1_000 + random.nextInt(1_000), 100);
      all.add(
          SheetStock.bought(
              "sheet " + stock, eighths(8 * side, 12 * side), eighths(8 * side, 12 * side), cost));
    }
    return new SheetJob(parts, all, Rational.of(1, 8), stages);
  }

  private Rational eighths(int least, int most) {
    return Rational.of(least + random.nextInt(most - least + 1), 8);
  }
}
