package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SawStopsTest {
  private static final long SEED = 20261126;

  /** Worked by hand. Lengths, tolerance, and the lengths of each stop. */
  @ParameterizedTest
  @CsvSource({
    "'', 0, ''",
    "12 10 12 11, 0, 12 12 | 11 | 10",
    "12 10 12 11, 1, 12 12 11 | 10",
    "12 10 12 11, 2, 12 12 11 10",
    "15.9 15.8 15.7, 0.1, 15.9 15.8 | 15.7",
  })
  void lengths_share_a_stop(String lengths, String tolerance, String stops) {
    String found =
        String.join(
            " | ",
            SawStops.of(parts(lengths), Rational.parse(tolerance)).stream()
                .map(stop -> String.join(" ", stop.parts().stream().map(Part::label).toList()))
                .toList());
    assertThat(found).isEqualTo(stops);
  }

  private static List<Part> parts(String lengths) {
    List<Part> parts = new ArrayList<>();
    for (String length : lengths.isEmpty() ? new String[0] : lengths.split(" ", -1)) {
      parts.add(new Part(length, Rational.parse(length), 1));
    }
    return parts;
  }

  @Test
  void a_stop_says_how_many_and_how_much_longer() {
    Part rail = new Part("rail", Rational.parse("15 7/8"), 10);
    Part slat = new Part("slat", Rational.parse("15 13/16"), 4);
    Part none = new Part("none", Rational.parse("99"), 0);
    SawStop stop = SawStops.of(List.of(slat, none, rail), Rational.of(1, 16)).get(0);
    assertThat(stop.length()).isEqualTo(rail.length());
    assertThat(stop.count()).isEqualTo(14);
    assertThat(stop.added(rail)).isEqualTo(Rational.ZERO);
    assertThat(stop.added(slat)).isEqualTo(Rational.of(1, 16));
  }

  /** However lengths in a row are told apart, no fewer stops hold them all. */
  @Test
  void no_fewer_stops_are_within_the_tolerance() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      List<Part> parts = new ArrayList<>();
      for (int part = 0; part < 1 + random.nextInt(9); part++) {
        Rational length = Rational.of(10 + random.nextInt(30));
        parts.add(new Part("part " + part, length, 1 + random.nextInt(3)));
      }
      Rational tolerance = Rational.of(random.nextInt(8));
      List<SawStop> stops = SawStops.of(parts, tolerance);
      String told = "seed " + SEED + ", " + parts + " within " + tolerance;
      assertThat(stops).as(told).hasSize(fewest(parts, tolerance));
      assertThat(stops.stream().flatMap(stop -> stop.parts().stream()))
          .as(told)
          .containsExactlyInAnyOrderElementsOf(parts);
      assertThat(stops)
          .as(told)
          .allMatch(
              stop ->
                  stop.parts().stream()
                      .map(stop::added)
                      .allMatch(added -> added.signum() >= 0 && added.compareTo(tolerance) <= 0));
    }
  }

  /** Tries each place to divide the row of lengths at. */
  private static int fewest(List<Part> parts, Rational tolerance) {
    List<Rational> row = parts.stream().map(Part::length).sorted().distinct().toList();
    int fewest = row.size();
    for (int divided = 0; divided < 1 << (row.size() - 1); divided++) {
      boolean within = true;
      int first = 0;
      for (int at = 1; at < row.size(); at++) {
        first = (divided >> (at - 1) & 1) == 1 ? at : first;
        within &= row.get(at).minus(row.get(first)).compareTo(tolerance) <= 0;
      }
      fewest = within ? Math.min(fewest, 1 + Integer.bitCount(divided)) : fewest;
    }
    return fewest;
  }

  @Test
  void a_tolerance_below_zero_is_refused() {
    assertThatThrownBy(() -> SawStops.of(List.of(), Rational.of(-1)))
        .isInstanceOf(Refusal.class)
        .hasMessage("the stop tolerance must be at least 0");
  }
}
