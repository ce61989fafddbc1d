package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the standards ask of frames whose sides lean, and of frames of many sides. Their angles and
 * lengths are checked against published tables in {@code acceptance}.
 */
class SplayedStandardsTest {
  private static StandardJob splayed(String headings, String cells) {
    return new StandardJob()
        .rows(
            "splayed",
            "splayed",
            "title | slope width | board thickness | wood | " + headings,
            "\"Test\" | 3 in | 1/2 in | \"red oak\" | " + cells);
  }

  private static StandardJob polygon(String headings, String cells) {
    return new StandardJob()
        .rows(
            "polygons",
            "polygons",
            "title | moulding | " + headings,
            "\"Test\" | \"ash cap\" | " + cells);
  }

  @Test
  void both_ways_to_lay_the_board_say_what_the_saw_is_set_to() {
    StandardJob tray = splayed("sides | side | lean", "4 | 10 in | 38 deg");
    assertThat(tray.shows("set it flat of Test"))
        .isEqualTo("miter 31.6 deg from square, blade 33.9 deg from upright");
    assertThat(tray.shows("set it on edge of Test"))
        .isEqualTo("miter 38.2 deg from square, blade 25.8 deg from upright");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "13 | 10 in | 40 deg~ Test: 13 sides are more than the 12 that the standards know.",
        "4 | 0 in | 40 deg~ Test: an opening of 0 in on a side is nothing to frame.",
        "4 | -1 in | 40 deg~ Test: an opening of -1 in on a side is nothing to frame.",
        "4 | 10 in | 91 deg~ Test: sides lean 0 deg, as in a box, to 90 deg, as in a flat frame;"
            + " 91 deg is neither.",
        "4 | 9 ft | 40 deg~ Test: a side of 112 5/8 in does not come out of a stick of 8 ft.",
        "3 | 10 in | 0 deg~ Test: the saw swings to 50 deg and tilts to 45 deg; flat it would take"
            + " 0 deg and 60 deg, on edge 60 deg and 0 deg."
      })
  void a_splayed_frame_that_cannot_be_made_breaks_a_requirement(String cells, String message) {
    assertThat(splayed("sides | side | lean", cells).broken()).contains(message);
  }

  @Test
  void two_sides_and_a_board_of_nothing_break_requirements() {
    assertThat(splayed("sides | side | lean", "1 | 10 in | 40 deg").broken())
        .contains("Test: 1 sides do not close.");
    StandardJob thin =
        new StandardJob()
            .rows(
                "splayed",
                "splayed",
                "title | sides | side | lean | slope width | board thickness | wood",
                "\"Test\" | 4 | 10 in | 40 deg | 3 in | 0 in | \"red oak\"");
    assertThat(thin.broken()).contains("Test: a board of 3 in by 0 in is no board.");
  }

  @Test
  void a_saw_set_to_angles_that_do_not_close_the_corner_breaks_a_requirement() {
    assertThat(
            splayed("sides | side | lean | flat tilt set", "4 | 10 in | 38 deg | 33 deg").broken())
        .singleElement()
        .asString()
        .startsWith("Test: flat, a miter of 31.6 deg and a tilt of 33 deg cut ≈ 44.4")
        .endsWith("the corner closes at 45 deg.");
  }

  @Test
  void a_side_that_is_cut_says_what_it_contradicts_and_leads_what_follows() {
    StandardJob made = splayed("sides | side | lean | long", "4 | 10 in | 90 deg | 16 1/4 in");
    assertThat(made.firing())
        .containsExactly("Test: made with sides of 16 1/4 in; they would now be 16 in.");
    assertThat(made.shows("small inside of Test")).isEqualTo("10 1/4 in");
  }

  @Test
  void a_corner_of_no_angle_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .rows("splayed", "corners", "corner | angle | lean", "\"Test\" | 180 deg | 95 deg");
    assertThat(job.broken())
        .containsExactlyInAnyOrder(
            "Test: two sides meet in a corner of more than 0 deg and less than 180 deg, not of 180"
                + " deg.",
            "Test: sides lean 0 deg, as in a box, to 90 deg, as in a flat frame; 95 deg is"
                + " neither.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "2 | 10 in~ Test: 2 sides do not close.",
        "13 | 10 in~ Test: 13 sides are more than the 12 that the standards know.",
        "6 | 0 in~ Test: a side of 0 in is nothing to frame.",
        "3 | 10 in~ Test: the saw swings to 50 deg, not to the 60 deg of 3 sides.",
        "6 | 1/10 in~ Test: a lip of 1/4 in leaves nothing to see within sides of"
      })
  void a_polygon_that_cannot_be_made_breaks_a_requirement(String cells, String message) {
    assertThat(polygon("sides | side", cells).broken()).anyMatch(text -> text.startsWith(message));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "kerf ~ 3/32 in ~ Test: cut with a kerf of 3/32 in; the saw's is 1/8 in.",
        "face ~ 1 7/16 in ~ Test: this lot has a face of 1 7/16 in and a lip of 1/4 in; ash cap is 1"
            + " 1/2 in and 1/4 in."
      })
  void a_polygon_that_is_made_says_what_it_contradicts(
      String column, String measured, String message) {
    StandardJob job = polygon("sides | side | " + column, "6 | 10 in | " + measured);
    assertThat(job.firing()).contains(message);
  }

  @Test
  void a_polygon_of_no_rail_or_kerf_breaks_a_requirement() {
    assertThat(polygon("sides | side | lip", "6 | 10 in | 1 1/2 in").broken())
        .contains("Test: a lip of 1 1/2 in on a face of 1 1/2 in is no rail.");
    assertThat(polygon("sides | side | kerf", "6 | 10 in | -1/8 in").broken())
        .containsExactly("Test: a kerf of -1/8 in gives wood back.");
  }

  @Test
  void a_polygons_package_is_measured_against_its_rabbet() {
    StandardJob deep = polygon("sides | side | thickness", "6 | 10 in | 1/2 in");
    assertThat(deep.firing())
        .singleElement()
        .asString()
        .contains("proud of the rabbet: offset clips, or a deeper moulding.");
    assertThat(polygon("sides | side | spacer", "6 | 10 in | 0 in").broken())
        .containsExactly(
            "Test: the glazing would touch the art; put a mat or a spacer between them.");
  }
}
