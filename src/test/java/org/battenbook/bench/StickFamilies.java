package org.battenbook.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.Part;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickRules;
import org.battenbook.plan.stick.Stock;

/** Five families of jobs to measure stick plans by; a seed gives one job of each. */
final class StickFamilies {
  private static final StickRules SAW = StickRules.ofKerf(Rational.parse("0.176777"));
  private static final Rational TRIM = Rational.of(1, 4);

  private final Random random;

  private StickFamilies(long seed) {
    this.random = new Random(seed);
  }

  /** By name. */
  static Map<String, StickJob> of(long seed) {
    StickFamilies families = new StickFamilies(seed);
    Map<String, StickJob> jobs = new LinkedHashMap<>();
    jobs.put("30 lengths, 2 to 20 each, 8 and 12 ft", families.rails(30, 2, 20, twoLengths()));
    jobs.put("10 lengths, up to 200 each, 12 ft", families.rails(10, 1, 200, twelveFeet()));
    jobs.put("200 different lengths, 12 ft", families.rails(200, 1, 1, twelveFeet()));
    jobs.put("rolls, 13 widths, up to 30 each", families.rolls());
    jobs.put("30 lengths, 2 to 20 each, 8, 10 and 12 ft", families.rails(30, 2, 20, threePrices()));
    return jobs;
  }

  private static List<Stock> twoLengths() {
    return List.of(bought("8 ft", 96, "8"), bought("12 ft", 144, "12"));
  }

  private static List<Stock> twelveFeet() {
    return List.of(bought("12 ft", 144, "1"));
  }

  private static List<Stock> threePrices() {
    return List.of(
        bought("8 ft", 96, "11.45"), bought("10 ft", 120, "14.30"), bought("12 ft", 144, "17.85"));
  }

  private static Stock bought(String label, long length, String cost) {
    return Stock.bought(label, Rational.of(length), Rational.parse(cost))
        .trimmed(TRIM, TRIM)
        .keeping(Rational.of(12));
  }

  /** From 8 to 40 in by sixteenths, all different. */
  private StickJob rails(int kinds, int least, int most, List<Stock> stocks) {
    TreeSet<Integer> sixteenths = new TreeSet<>();
    while (sixteenths.size() < kinds) {
      sixteenths.add(128 + random.nextInt(513));
    }
    List<Part> parts = new ArrayList<>();
    for (int length : sixteenths) {
      parts.add(part(Rational.of(length, 16), least + random.nextInt(most - least + 1)));
    }
    return new StickJob(parts, stocks, SAW);
  }

  private StickJob rolls() {
    TreeSet<Integer> widths = new TreeSet<>();
    while (widths.size() < 13) {
      widths.add(1380 + 10 * random.nextInt(83));
    }
    List<Part> parts = new ArrayList<>();
    for (int width : widths) {
      parts.add(part(Rational.of(width), 1 + random.nextInt(30)));
    }
    return new StickJob(
        parts, List.of(Stock.bought("roll", Rational.of(5600), Rational.ONE)), StickRules.bare());
  }

  private static Part part(Rational length, int count) {
    return new Part("part " + length, length, count);
  }
}
