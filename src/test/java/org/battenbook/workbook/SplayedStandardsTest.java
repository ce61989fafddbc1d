package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the standards ask of frames whose sides lean, and of frames of many sides. Their angles and
 * lengths are checked against published tables in {@code acceptance}.
 */
class SplayedStandardsTest {
  /** Of boards of 3 by 1/2 in, with a block glued in for its cleat. */
  private static StandardJob splayed(String headings, String cells) {
    return new StandardJob()
        .rows(
            "splayed",
            "splayed",
            "title | slope width | board thickness | wood | footing | " + headings,
            "\"Test\" | 3 in | 1/2 in | \"red oak\" | 2 in | " + cells);
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
  void one_way_to_lay_the_board_that_closes_the_corner_is_enough() {
    StandardJob one = splayed("sides | side | lean | flat tilt set", "4 | 10 in | 38 deg | 33 deg");
    assertThat(one.broken()).isEmpty();
    assertThat(one.shows("lay it of Test")).isEqualTo("on edge");
    assertThat(one.firing())
        .singleElement()
        .asString()
        .startsWith("Test: cut it on edge; flat, 31.6 deg and 33 deg cut ≈ 44.4")
        .endsWith("and the corner closes at 45 deg.");
    assertThat(splayed("sides | side | lean", "4 | 10 in | 38 deg").shows("lay it of Test"))
        .isEqualTo("flat or on edge");
    assertThat(splayed("sides | side | lean", "3 | 10 in | 60 deg").shows("lay it of Test"))
        .as("flat it would take a miter of 56.3 deg, on edge 40.9 and 48.6 deg")
        .isEqualTo("neither way");
  }

  @Test
  void a_saw_that_closes_the_corner_in_no_way_breaks_a_requirement() {
    StandardJob none =
        splayed(
            "sides | side | lean | flat tilt set | edge tilt set",
            "4 | 10 in | 38 deg | 33 deg | 25 deg");
    assertThat(none.broken())
        .singleElement()
        .asString()
        .startsWith(
            "Test: the corner closes at 45 deg, and no setting of the saw cuts that: flat, 31.6 deg"
                + " and 33 deg cut ≈ 44.4");
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
        .contains("Test: a kerf of -1/8 in gives wood back.");
  }

  /** Plane geometry: with an odd number of sides a corner lies opposite each side. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "4 | true ~ on a side, a side on top",
        "6 | false ~ on a corner, a corner on top",
        "3 | true ~ on a corner, a side on top",
        "5 | false ~ on a side, a corner on top"
      })
  void a_frame_says_how_it_stands(String cells, String standing) {
    assertThat(
            polygon("art side | sides | side on top", "10 in | " + cells).shows("stands of Test"))
        .isEqualTo(standing);
    String leaning = "10 in | 20 deg | " + cells;
    assertThat(splayed("art side | lean | sides | side on top", leaning).shows("stands of Test"))
        .isEqualTo(standing);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "kerf ~ 3/32 in ~ Test: cut with a kerf of 3/32 in; the saw's is 1/8 in.",
        "lot width ~ 2 15/16 in ~ Test: this lot is 2 15/16 in by 1/2 in; it was to be 3 in by 1/2"
            + " in.",
        "lot thickness ~ 15/32 in ~ Test: this lot is 3 in by 15/32 in; it was to be 3 in by 1/2 in.",
        "lite across ~ 9 7/8 in ~ Test: its lite is cut 9 7/8 in across flats; it would now be 10 in.",
        "backing across ~ 9 7/8 in ~ Test: its backing is cut 9 7/8 in across flats; it would now be"
            + " 10 in.",
        "dust cover across ~ 10 in ~ Test: its dust cover is cut 10 in across flats; it would now be"
            + " 10 3/8 in."
      })
  void a_splayed_frame_that_is_made_says_what_it_contradicts(
      String column, String measured, String message) {
    StandardJob job =
        splayed("sides | art side | lean | " + column, "4 | 10 in | 0 deg | " + measured);
    assertThat(job.firing()).containsExactly(message);
    assertThat(job.broken()).isEmpty();
  }

  @Test
  void mats_of_many_sides_that_are_cut_say_what_they_contradict_and_lead_what_follows() {
    String columns = "sides | art side | mats | window cut across | mat cut across";
    String cells = "4 | 10 in | 1 | 9 3/8 in | 14 7/8 in";
    List<String> cautions =
        List.of(
            "Test: its window is cut 9 3/8 in across flats; it would now be 9 1/2 in.",
            "Test: its mat is cut 14 7/8 in across flats; it would now be 15 in.");
    StandardJob flat = polygon(columns, cells);
    assertThat(flat.firing()).containsExactlyInAnyOrderElementsOf(cautions);
    assertThat(flat.shows("rabbet side needed of Test")).isEqualTo("15 in");
    StandardJob box = splayed(columns + " | lean", cells + " | 0 deg");
    assertThat(box.firing()).containsExactlyInAnyOrderElementsOf(cautions);
    assertThat(box.shows("side of Test")).isEqualTo("14 1/2 in");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "lip ~ 0 deg | 1/2 in ~ Test: a lip of 1/2 in in a rabbet ≈ 9/16 in deep cuts through boards of"
            + " 3 in by 1/2 in.",
        "small edge at wall ~ 0 deg | false ~ Test: with its large edge at the wall the package goes in"
            + " from inside, past boards that leave it no way",
        "side ~ 0 deg | 9 in ~ Test: a rabbet of 9 1/2 in on a side is too small for 10 in.",
        "spacer ~ 0 deg | 0 in ~ Test: the glazing would touch the art; put a mat or a spacer between"
            + " them.",
        "lite across ~ 0 deg | 11 in ~ Test: a lite of 11 in across flats does not go into a rabbet of"
            + " 10 1/8 in.",
        "backing across ~ 0 deg | 11 in ~ Test: a backing of 11 in across flats does not go into a"
            + " rabbet of 10 1/8 in.",
        "dust cover across ~ 0 deg | 11 in ~ Test: a dust cover of 11 in across flats stands out beside"
            + " a frame of 10 5/8 in."
      })
  void a_package_that_does_not_go_into_leaning_sides_breaks_a_requirement(
      String column, String cells, String message) {
    StandardJob job = splayed("sides | art side | lean | " + column, "4 | 10 in | " + cells);
    assertThat(job.broken()).anyMatch(text -> text.startsWith(message));
  }

  @Test
  void leaning_sides_are_cautioned_as_other_frames_are() {
    assertThat(
            splayed("sides | art side | lean | rabbet depth", "4 | 10 in | 0 deg | 3/8 in")
                .firing())
        .singleElement()
        .asString()
        .contains("proud of the rabbet: offset clips, or a deeper rabbet.");
    assertThat(
            splayed("sides | art side | lean | rabbet depth", "4 | 10 in | 0 deg | 1/2 in")
                .firing())
        .singleElement()
        .asString()
        .contains("of the rabbet is left for points, less than 1/8 in.");
    assertThat(splayed("sides | art side | lean", "4 | 44 in | 0 deg").firing())
        .anyMatch(text -> text.contains("of glass: two people"))
        .anyMatch(text -> text.contains("two people to hang it"));
  }

  @Test
  void a_polygons_lot_may_be_thinner_and_its_rabbet_shallower() {
    StandardJob lot =
        polygon(
            "sides | side | moulding thickness | rabbet depth", "4 | 10 in | 13/16 in | 9/16 in");
    assertThat(lot.firing())
        .containsExactly(
            "Test: this lot is 13/16 in thick with a rabbet 9/16 in deep; ash cap is 7/8 in and 5/8"
                + " in.");
    assertThat(lot.shows("depth of Test")).isEqualTo("13/16 in");
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
