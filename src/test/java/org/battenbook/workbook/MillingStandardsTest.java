package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the standards ask of rough boards and of wood that moves; board feet, weights and movement
 * are checked against published figures in {@code acceptance}.
 */
class MillingStandardsTest {
  private static StandardJob board(String size, String length) {
    return new StandardJob()
        .rows(
            "milling",
            "rough boards",
            "board | moulding | wood | size | length",
            "\"A\" | \"ash cap\" | \"white ash\" | \"%s\" | %s".formatted(size, length));
  }

  private static StandardJob moving(String wood, String before, String after) {
    return new StandardJob()
        .rows(
            "milling",
            "movements",
            "part | width across grain | wood | moisture before | moisture after",
            "\"Face\" | 12 in | \"%s\" | %s | %s".formatted(wood, before, after));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "1 x 6 ~ 8 ft ~ A: thickness 3/4 in is too thin for ash cap; minimum 1 in for a finished"
            + " 7/8 in. Use a thicker board.",
        "rough 4/4 ~ 0 ft ~ A: thickness, width and length must be more than 0 in; they are 1 in,"
            + " 6 in and 0 in."
      })
  void a_board_that_gives_no_blank_breaks_a_requirement(
      String size, String length, String message) {
    assertThat(board(size, length).broken()).contains(message);
  }

  @Test
  void a_board_too_narrow_breaks_a_requirement() {
    StandardJob job = board("rough 4/4", "8 ft").change("face of mouldings \"ash cap\"", "7 in");
    assertThat(job.broken())
        .contains("A: width 6 in gives no blank of 7 1/16 in for ash cap. Use a wider board.");
  }

  @Test
  void a_clear_length_past_the_end_of_its_board_breaks_a_requirement() {
    StandardJob job =
        board("rough 4/4", "8 ft")
            .rows(
                "milling",
                "clear lengths",
                "clear length | board | begins | ends",
                "\"x\" | \"A\" | 4 ft | 9 ft");
    assertThat(job.broken())
        .containsExactly(
            "x: begins 48 in must be at least 0 in and less than ends 108 in; ends"
                + " must be at most 96 in, the length of A.");
  }

  @Test
  void clear_lengths_that_overlap_break_a_requirement() {
    StandardJob job =
        board("rough 4/4", "8 ft")
            .rows(
                "milling",
                "clear lengths",
                "clear length | board | begins | ends",
                "\"x\" | \"A\" | 0 ft | 4 ft",
                "\"y\" | \"A\" | 3 ft | 6 ft",
                "\"z\" | \"A\" | 6 ft | 8 ft");
    assertThat(job.broken())
        .containsExactly(
            "x: 0 in to 48 in overlaps 1 other clear lengths of A. Correct begins or ends.",
            "y: 36 in to 72 in overlaps 1 other clear lengths of A. Correct begins or ends.");
  }

  @Test
  void boards_that_do_not_give_what_the_job_takes_are_cautioned() {
    StandardJob job = board("rough 4/4", "4 ft").piece("moulding | quantity", "\"ash cap\" | 4");
    assertThat(job.firing())
        .contains(
            "ash cap: the rough boards give 11 ft; the job takes ≈ 22 ft 4 13/16 in and a test"
                + " corner of 12 in. Mill more.");
  }

  @Test
  void wood_without_a_coefficient_breaks_a_requirement() {
    assertThat(moving("soft maple", "6 %", "8 %").broken())
        .containsExactly(
            "Face: no movement coefficient is known for soft maple. Find one and"
                + " enter it as coefficient.");
  }

  @Test
  void growth_without_a_gap_and_moisture_beyond_the_measured_are_cautioned() {
    assertThat(moving("red oak", "6 %", "12 %").firing())
        .containsExactly(
            "Face: 12 in of red oak grows by ≈ 1/4 in; expansion gap is 0 in. Leave a"
                + " wider gap.");
    assertThat(moving("red oak", "19 %", "8 %").firing())
        .containsExactly(
            "Face: moisture goes from 19 % to 8 %; the coefficients were measured from 6 % to 14"
                + " %. Take the movement as an estimate.");
  }

  @Test
  void shrinkage_that_leaves_nothing_breaks_a_requirement() {
    StandardJob job =
        moving("beech", "6 %", "8 %").change("volumetric shrinkage of woods \"beech\"", "100 %");
    assertThat(job.broken())
        .containsExactly(
            "beech: radial, tangential and volumetric shrinkage must be at least 0 %"
                + " and less than 100 %; they are 5.5 %, 11.9 % and 100.0 %.");
  }

  /** Source of its growth: makers' figures for cast acrylic, 4.0e-5 for each degree F. */
  @Test
  void acrylic_that_grows_out_of_its_rabbet_is_cautioned() {
    StandardJob job =
        new StandardJob()
            .change("warming", "100 degF")
            .rows(
                "pieces",
                "pieces",
                "title | width | height | style | moulding | glazing | glazing width",
                "\"Test\" | 40 in | 30 in | \"no mat\" | \"ash cap\" | \"acrylic\" | 40 in");
    assertThat(job.firing())
        .anyMatch(
            text ->
                text.startsWith("Test: acrylic 40 in x 29 13/16 in grows to")
                    && text.endsWith(
                        "; the rabbet opening is 40 1/8 in x 30 1/8 in. Cut it smaller."));
  }
}
