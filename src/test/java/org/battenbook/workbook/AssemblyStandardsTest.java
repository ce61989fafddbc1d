package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the standards ask of assembly and finish; their counts are checked in {@code acceptance}.
 */
class AssemblyStandardsTest {

  @Test
  void a_sheets_hinges_are_told_in_words() {
    StandardJob job = new StandardJob().piece("moulding", "\"ash cap\"");
    assertThat(job.shows("hinge marks of Test"))
        .isEqualTo("1 in from the sheet's edge, then every 6 in");
  }

  /**
   * Library of Congress, guide to matting and hinging: T where a mat covers it, V for what floats.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "single mat ~ T, covered by the mat",
        "floated sheet ~ V, folded behind the sheet",
        "no mat ~ none"
      })
  void a_hinge_has_the_form_that_its_sheet_asks_for(String style, String form) {
    StandardJob job = new StandardJob().piece("moulding | style", "\"ash cap\" | \"" + style + '"');
    assertThat(job.shows("hinge form of Test")).isEqualTo(form);
  }

  @Test
  void hinges_without_room_break_a_requirement() {
    StandardJob job = new StandardJob().piece("moulding | outer hinge", "\"ash cap\" | 5 in");
    assertThat(job.broken())
        .containsExactly(
            "Test: hinges 5 in from both edges do not fit on a sheet 8 in wide. Enter"
                + " a smaller outer hinge, at least 0 in.");
  }

  /** Common practice, no source: a round of clamps holds as many frames as there are clamps. */
  @ParameterizedTest
  @CsvSource({"1, 1", "4, 1", "5, 2", "8, 2", "9, 3"})
  void frames_are_clamped_in_rounds(int frames, int rounds) {
    StandardJob job = new StandardJob().piece("moulding | quantity", "\"ash cap\" | " + frames);
    assertThat(job.shows("rounds of Glue, pin and clamp")).isEqualTo(Integer.toString(rounds));
  }

  @Test
  void a_job_without_frames_waits_for_nothing_and_fetches_nothing() {
    StandardJob job = new StandardJob();
    assertThat(job.shows("so far of Weigh, label and wrap")).isEqualTo("0 h");
    assertThat(job.shows("needed of glazing, with spares")).isEqualTo("0");
    assertThat(job.shows("packs needed of points")).isEqualTo("0");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "point spacing ~ 0 in ~ Point spacing and width per hinge must be more than 0 in; they are"
            + " 0 in and 8 in.",
        "clamps ~ 0 ~ Clamps must be at least 1; it is 0.",
        "spare mats ~ -1 ~ Pins per miter, bumpers, spare glazing and spare mats must be at least"
            + " 0; they are 2, 2, 1 and -1.",
        "cure time ~ -1 h ~ Let the glue cure: wait must be at least 0 h; it is -1 h."
      })
  void what_makes_no_sense_at_the_bench_breaks_a_requirement(
      String name, String value, String message) {
    assertThat(new StandardJob().change(name, value).piece("moulding", "\"ash cap\"").broken())
        .contains(message);
  }

  @Test
  void a_can_or_a_pack_that_is_empty_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .rows(
                "finishes",
                "products",
                "product | finish | coverage | recoat time",
                "\"air\" | \"primer and paint\" | 0 ft^2 | -1 h")
            .rows("assembly", "pick list", "item | needed | pack of", "\"hooks\" | 3 | 0");
    assertThat(job.broken())
        .containsExactlyInAnyOrder(
            "air: coverage must be more than 0; it is 0.00 ft^2.",
            "air: recoat time must be at least 0 h; it is -1 h.",
            "hooks: 'pack of' must be more than 0; it is 0.");
  }
}
