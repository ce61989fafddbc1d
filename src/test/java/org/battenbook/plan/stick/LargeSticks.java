package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.battenbook.number.Rational;

/** Jobs of sticks, as large as a plan may be, that keep each part of a search busy. */
final class LargeSticks {
  private final Random random = new Random(20261127);

  private LargeSticks() {}

  /** By what they are large in. */
  static Map<String, StickJob> jobs() {
    LargeSticks jobs = new LargeSticks();
    Map<String, StickJob> all = new LinkedHashMap<>();
    all.put("bins", jobs.job(76, 1, 3));
    all.put("lengths", jobs.job(200, 3, 3));
    all.put("pieces", jobs.job(1_000, 100, 2));
    all.put("stocks", jobs.job(100, 20, 500));
    all.put("kinds", jobs.job(2_000, 10, 3));
    return all;
  }

  private StickJob job(int kinds, int ofEach, int stocks) {
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
}
