package org.battenbook.plan.stick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Chooses the settings of the saw stop for some parts. Lengths within a tolerance of each other can
 * share a stop at the longest of them. A greedy choice gives the fewest stops: each stop takes the
 * longest remaining part and all parts within the tolerance of it.
 */
public final class SawStops {
  private SawStops() {}

  /**
   * The stops, the longest first.
   *
   * @param tolerance how much longer a piece may be than its part's length, at least 0
   * @throws Refusal if the tolerance is below zero
   */
  public static List<SawStop> of(List<Part> parts, Rational tolerance) {
    Refusal.unless(tolerance.signum() >= 0, "the stop tolerance must be at least 0");
    List<Part> longestFirst = new ArrayList<>(parts);
    longestFirst.removeIf(part -> part.count() == 0);
    longestFirst.sort(Comparator.comparing(Part::length).reversed());
    List<SawStop> stops = new ArrayList<>();
    int next = 0;
    while (next < longestFirst.size()) {
      Rational length = longestFirst.get(next).length();
      int end = firstShorterThan(length.minus(tolerance), longestFirst, next);
      stops.add(new SawStop(length, longestFirst.subList(next, end)));
      next = end;
    }
    return stops;
  }

  private static int firstShorterThan(Rational least, List<Part> longestFirst, int from) {
    int at = from;
    while (at < longestFirst.size() && longestFirst.get(at).length().compareTo(least) >= 0) {
      at++;
    }
    return at;
  }
}
