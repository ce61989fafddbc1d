package org.battenbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;

/** Jobs that keep each part of a search busy, as large as a plan may be. */
final class LargeJobs {
  private final Random random = new Random(20261127);

  /** By what they are large in. */
  static Map<String, StickJob> ofSticks() {
    LargeJobs jobs = new LargeJobs();
    Map<String, StickJob> all = new LinkedHashMap<>();
    all.put("bins", jobs.sticks(76, 1, 3));
    all.put("lengths", jobs.sticks(200, 3, 3));
    all.put("pieces", jobs.sticks(1_000, 100, 2));
    all.put("stocks", jobs.sticks(100, 20, 500));
    all.put("kinds", jobs.sticks(2_000, 10, 3));
    return all;
  }

  static Map<String, SheetJob> ofSheets() {
    LargeJobs jobs = new LargeJobs();
    Map<String, SheetJob> all = new LinkedHashMap<>();
    all.put("boards", SplitBoards.job(3, 10, 10, 3, true));
    all.put("pieces", jobs.sheets(200, 50, 2, OptionalInt.empty(), 20));
    all.put("one sheet", jobs.sheets(200, 50, 1, OptionalInt.of(3), 400));
    all.put("kinds", jobs.sheets(2_000, 5, 3, OptionalInt.empty(), 20));
    all.put("stocks", jobs.sheets(40, 100, 300, OptionalInt.empty(), 20));
    return all;
  }

  private StickJob sticks(int kinds, int ofEach, int stocks) {
    List<Part> parts = new ArrayList<>();
    for (int kind = 0; kind < kinds; kind++) {
      parts.add(new Part("part " + kind, Rational.of(1_000 + random.nextInt(6_000), 16), ofEach));
    }
    List<Stock> all = new ArrayList<>();
    for (int stock = 0; stock < stocks; stock++) {
      Rational length = Rational.of(16_000 + random.nextInt(16_000), 16);
      all.add(
          Stock.bought("stock " + stock, length, Rational.of(1_000 + random.nextInt(1_000), 100)));
    }
    return new StickJob(parts, all, StickRules.ofKerf(Rational.of(1, 8)));
  }

  private SheetJob sheets(int kinds, int ofEach, int stocks, OptionalInt stages, int side) {
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
