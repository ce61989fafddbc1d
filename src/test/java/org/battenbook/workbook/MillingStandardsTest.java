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
            "part | across | wood | moisture before | moisture after",
            "\"Face\" | 12 in | \"%s\" | %s | %s".formatted(wood, before, after));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "1 x 6 ~ 8 ft ~ A: 3/4 in thick, it does not plane to 7/8 in: 1 in is needed for ash cap.",
        "rough 4/4 ~ 0 ft ~ A: 1 in by 6 in by 0 in is no board."
      })
  void a_board_that_gives_no_blank_breaks_a_requirement(
      String size, String length, String message) {
    assertThat(board(size, length).broken()).contains(message);
  }

  @Test
  void a_board_too_narrow_breaks_a_requirement() {
    StandardJob job = board("rough 4/4", "8 ft").change("face of mouldings \"ash cap\"", "7 in");
    assertThat(job.broken()).contains("A: 6 in wide, it gives no blank of 7 1/16 in for ash cap.");
  }

  @Test
  void a_stretch_past_the_end_of_its_board_breaks_a_requirement() {
    StandardJob job =
        board("rough 4/4", "8 ft")
            .rows(
                "milling",
                "clear lengths",
                "stretch | board | begins | ends",
                "\"x\" | \"A\" | 4 ft | 9 ft");
    assertThat(job.broken())
        .containsExactly("x: from 48 in to 108 in is no stretch of A, 96 in long.");
  }

  @Test
  void stretches_that_lie_on_one_another_break_a_requirement() {
    StandardJob job =
        board("rough 4/4", "8 ft")
            .rows(
                "milling",
                "clear lengths",
                "stretch | board | begins | ends",
                "\"x\" | \"A\" | 0 ft | 4 ft",
                "\"y\" | \"A\" | 3 ft | 6 ft",
                "\"z\" | \"A\" | 6 ft | 8 ft");
    assertThat(job.broken())
        .containsExactly(
            "x: from 0 in to 48 in, it lies on 1 other stretches of A: wood is not used twice.",
            "y: from 36 in to 72 in, it lies on 1 other stretches of A: wood is not used twice.");
  }

  @Test
  void boards_that_do_not_give_what_the_job_takes_are_cautioned() {
    StandardJob job = board("rough 4/4", "4 ft").piece("moulding | quantity", "\"ash cap\" | 4");
    assertThat(job.firing())
        .contains(
            "ash cap: its rough boards give 11 ft; the job takes ≈ 22 ft 4 13/16 in and 12 in to try a"
                + " corner.");
  }

  @Test
  void wood_that_nobody_has_measured_breaks_a_requirement() {
    assertThat(moving("soft maple", "6 %", "8 %").broken())
        .containsExactly("Face: no coefficient is known for soft maple: find one, and fill it in.");
  }

  @Test
  void growth_without_room_and_moisture_beyond_the_measured_are_cautioned() {
    assertThat(moving("red oak", "6 %", "12 %").firing())
        .containsExactly("Face: 12 in of red oak grows by ≈ 1/4 in; 0 in is left for it.");
    assertThat(moving("red oak", "19 %", "8 %").firing())
        .containsExactly(
            "Face: from 19 % to 8 % of moisture; the coefficients were measured from 6 % to 14 %.");
  }

  @Test
  void shrinkage_that_leaves_nothing_breaks_a_requirement() {
    StandardJob job =
        moving("beech", "6 %", "8 %").change("shrinks in volume of woods \"beech\"", "100 %");
    assertThat(job.broken())
        .containsExactly("beech: it does not shrink by 5.5 %, 11.9 % and 100.0 %.");
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
                "title | width | height | style | moulding | glazing | lite across",
                "\"Test\" | 40 in | 30 in | \"no mat\" | \"ash cap\" | \"acrylic\" | 40 in");
    assertThat(job.firing())
        .anyMatch(
            text ->
                text.startsWith("Test: acrylic of 40 in by 29 13/16 in grows to")
                    && text.endsWith("in a rabbet of 40 1/8 in by 30 1/8 in."));
  }
}
