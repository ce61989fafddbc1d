package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.RandomWorkbook.Feature;
import org.junit.jupiter.api.Test;

/** The random jobs of the laws: all read without faults, and all that is named occurs in many. */
class RandomWorkbookTest {
  private static final int SEEDS = 300;
  private static final int PLANS = 30;

  @Test
  void every_seed_reads_without_faults_and_fills() {
    int values = 0;
    int faults = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Filled filled = filled(RandomWorkbook.of(seed), seed);
      faults += filled.faults().size();
      for (CheckedPlace place : filled.checked().places()) {
        values += filled.book().tables().size() + place.layers().size();
      }
    }
    assertThat(faults).isLessThan(values / 50);
  }

  private static Filled filled(RandomWorkbook job, long seed) {
    Workbook workbook = job.open();
    assertThat(workbook.diagnostics())
        .as("seed %d%n%s", seed, job)
        .filteredOn(Diagnostic::isFault)
        .isEmpty();
    return workbook.fill();
  }

  @Test
  void with_a_plan_too() {
    for (long seed = 1; seed <= PLANS; seed++) {
      RandomWorkbook job = RandomWorkbook.withPlan(seed);
      Filled filled = filled(job, seed);
      assertThat(filled.plans()).as("seed %d", seed).hasSize(1);
      assertThat(filled.find("sticks").value().isKnown()).as("seed %d%n%s", seed, job).isTrue();
    }
  }

  @Test
  void all_that_is_named_occurs_in_many() {
    Map<Feature, Integer> counts = new EnumMap<>(Feature.class);
    for (long seed = 1; seed <= SEEDS; seed++) {
      RandomWorkbook.of(seed).features().forEach(feature -> counts.merge(feature, 1, Integer::sum));
    }
    for (Feature feature : Feature.values()) {
      if (feature != Feature.PLAN) {
        assertThat(counts.getOrDefault(feature, 0))
            .as("%s among %s", feature, counts)
            .isGreaterThan(SEEDS / 5);
      }
    }
  }

  @Test
  void a_seed_gives_the_same_texts() {
    assertThat(RandomWorkbook.of(7).texts()).isEqualTo(RandomWorkbook.of(7).texts());
    assertThat(RandomWorkbook.of(7).edit(new Random(3)))
        .isEqualTo(RandomWorkbook.of(7).edit(new Random(3)));
  }
}
