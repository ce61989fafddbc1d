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
  void the_totals_of_every_job_say_where_to_read_them() {
    assertThat(new StandardJob().shows("to read first"))
        .startsWith("12 standing cautions of saws, blades, glass, dust, finishes and walls");
  }
}
