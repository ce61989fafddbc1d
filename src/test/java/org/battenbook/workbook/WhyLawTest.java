package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Why;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why of any value ends at leaves that have a file and a line, and never throws. */
class WhyLawTest {
  private static final int JOBS = 60;

  private static final int JOBS_WITH_PLANS = 6;

  @Test
  void of_random_jobs() {
    for (long seed = 1; seed <= JOBS; seed++) {
      check(RandomWorkbook.of(seed).open().fill(), "seed " + seed);
    }
  }

  @Test
  void of_random_jobs_with_plans() {
    for (long seed = 1; seed <= JOBS_WITH_PLANS; seed++) {
      check(RandomWorkbook.withPlan(seed).open().fill(), "seed " + seed);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "first-frame.batten",
        "saltmarsh-ferry-museum.batten",
        "skerry-light-reading-room.batten"
      })
  void of_shipped_workbooks(String file) throws Exception {
    check(Workbook.open("workbooks/" + file).fill(), file);
  }

  /** Asks three rows of each column: the first, the last and one between. */
  private static void check(Filled filled, String as) {
    for (CheckedPlace checked : filled.checked().places()) {
      spots(filled, checked.place()).forEach(spot -> check(filled, spot, as));
    }
  }

  private static Stream<Spot> spots(Filled filled, Place place) {
    int rows = place.table() == null ? 1 : filled.rows(place.table()).count();
    return IntStream.of(rows - 1, 0, rows / 2)
        .filter(row -> row >= 0 && row < rows)
        .distinct()
        .mapToObj(row -> new Spot(place, row));
  }

  private static void check(Filled filled, Spot spot, String as) {
    Derivation why = Why.of(filled.results(), spot);
    assertThat(why.value()).isEqualTo(filled.results().value(spot));
    check(why, "%s, %s row %d".formatted(as, spot.place(), spot.row()));
  }

  private static void check(Derivation node, String as) {
    assertThat(node.at().place()).as(as).matches("[^:]+:[1-9][0-9]*");
    assertThat(node.place()).as(as).isNotBlank();
    node.from().forEach(part -> check(part, as));
  }
}
