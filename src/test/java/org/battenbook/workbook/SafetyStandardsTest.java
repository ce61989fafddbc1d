package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The general cautions, for every job. */
class SafetyStandardsTest {

  @ParameterizedTest
  @CsvSource({
    "Arithmetic, Test on scrap",
    "Art, conservator",
    "Clothing, eye and ear protection",
    "Saw, guard on",
    "Bevel rip, riving knife",
    "Milling, push blocks",
    "Drivers and choppers, Disconnect air and power",
    "Dust, mask",
    "Finish, respirator",
    "Oily rags, water in a closed metal can",
    "Knife, dull blade",
    "Glass, gloves",
    "Old walls, asbestos",
    "Wall, pipes",
    "Load, maker",
    "Static load, frame at rest",
    "Heavy or overhead, engineer",
    "Ladder, three points of contact",
    "Law, Local codes and licensed practice"
  })
  void each_danger_of_the_work_has_its_caution(String topic, String advice) {
    assertThat(new StandardJob().shows("advice of " + topic)).contains(advice);
  }

  @Test
  void every_job_has_all_of_them_and_no_other_caution_applies() {
    Filled job =
        ShippedFiles.open("workbook \"Empty\"\nfollows \"standards/frame-shop.batten\"").fill();
    assertThat(job.standingCautions())
        .hasSize(19)
        .allMatch(Verdict::isYes)
        .anyMatch(verdict -> verdict.text().startsWith("Wall: Find wires, pipes and ducts"));
    assertThat(job.cautions()).noneMatch(Verdict::isYes);
  }
}
