package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cautions that stand for every job. */
class SafetyStandardsTest {

  @ParameterizedTest
  @CsvSource({
    "Saw, Guard on",
    "Milling, push blocks",
    "Knife, dull blade",
    "Glass, gloves",
    "Dust, mask",
    "Finish, oily rags",
    "Wall, pipes",
    "Load, maker",
    "Law, Local codes and licensed practice"
  })
  void each_danger_of_the_work_has_its_caution(String matter, String advice) {
    assertThat(new StandardJob().shows("advice of " + matter)).contains(advice);
  }

  @Test
  void every_job_is_told_all_of_them_and_none_fires() {
    Filled job =
        ShippedFiles.open("workbook \"Empty\"\nfollows \"standards/frame-shop.batten\"").fill();
    assertThat(job.standingCautions())
        .hasSize(12)
        .allMatch(Verdict::isYes)
        .anyMatch(verdict -> verdict.text().startsWith("Wall: Wires, pipes and ducts may lie"));
    assertThat(job.cautions()).noneMatch(Verdict::isYes);
  }
}
