package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the standards ask of splayed and multi-sided frames. Their angles and lengths are checked
 * against published tables in {@code acceptance}.
 */
class SplayedStandardsTest {
  /** Of boards of 3 by 1/2 in, with a block glued in for its cleat. */
  private static StandardJob splayed(String headings, String cells) {
    return new StandardJob()
        .rows(
            "splayed",
            "splayed",
            "title | slope width | board thickness | wood | cleat seat | " + headings,
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
    StandardJob tray = splayed("sides | opening side | slope", "4 | 10 in | 38 deg");
    assertThat(tray.shows("flat saw settings of Test"))
        .isEqualTo("miter 31.6 deg from square, blade 33.9 deg from upright");
    assertThat(tray.shows("edge saw settings of Test"))
        .isEqualTo("miter 38.2 deg from square, blade 25.8 deg from upright");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "13 | 10 in | 40 deg~ Test: sides must be at most 12; there are 13.",
        "4 | 0 in | 40 deg~ Test: opening side must be more than 0 in; it is 0 in. Enter opening"
            + " side, art side or package side.",
        "4 | -1 in | 40 deg~ Test: opening side must be more than 0 in; it is -1 in. Enter opening"
            + " side, art side or package side.",
        "4 | 10 in | 91 deg~ Test: slope must be 0 deg (a box) to 90 deg (a flat frame); it is 91"
            + " deg.",
        "4 | 9 ft | 40 deg~ Test: side 112 5/8 in with end trims 1/2 in does not fit a stick of 8"
            + " ft. Use a longer stick.",
        "3 | 10 in | 0 deg~ Test: it needs miter 0 deg and tilt 60 deg with the board flat, or 60"
            + " deg and 0 deg on edge; the saw's maximum is miter 50 deg and tilt 45 deg. Use more"
            + " sides, another slope or another saw."
      })
  void a_splayed_frame_that_cannot_be_made_breaks_a_requirement(String cells, String message) {
    assertThat(splayed("sides | opening side | slope", cells).broken()).contains(message);
  }

  @Test
  void two_sides_and_a_board_of_nothing_break_requirements() {
    assertThat(splayed("sides | opening side | slope", "1 | 10 in | 40 deg").broken())
        .contains("Test: sides must be at least 3; there are 1.");
    StandardJob thin =
        new StandardJob()
            .rows(
                "splayed",
                "splayed",
                "title | sides | opening side | slope | slope width | board thickness | wood",
                "\"Test\" | 4 | 10 in | 40 deg | 3 in | 0 in | \"red oak\"");
    assertThat(thin.broken())
        .contains(
            "Test: lot width and lot thickness must be more than 0 in;"
                + " they are 3 in and 0 in.");
  }

  @Test
  void one_way_to_lay_the_board_that_closes_the_corner_is_enough() {
    StandardJob one =
        splayed("sides | opening side | slope | flat tilt set", "4 | 10 in | 38 deg | 33 deg");
    assertThat(one.broken()).isEmpty();
    assertThat(one.shows("board position of Test")).isEqualTo("on edge");
    assertThat(one.firing())
        .singleElement()
        .asString()
        .startsWith(
            "Test: cut the boards on edge. Flat, miter 31.6 deg and tilt 33 deg give a"
                + " joint angle of ≈ 44.4")
        .endsWith("; the corner closes at 45 deg.");
    assertThat(
            splayed("sides | opening side | slope", "4 | 10 in | 38 deg")
                .shows("board position of Test"))
        .isEqualTo("flat or on edge");
    assertThat(
            splayed("sides | opening side | slope", "3 | 10 in | 60 deg")
                .shows("board position of Test"))
        .as("flat it would take a miter of 56.3 deg, on edge 40.9 and 48.6 deg")
        .isEqualTo("neither way");
  }

  @Test
  void a_saw_that_closes_the_corner_in_no_way_breaks_a_requirement() {
    StandardJob none =
        splayed(
            "sides | opening side | slope | flat tilt set | edge tilt set",
            "4 | 10 in | 38 deg | 33 deg | 25 deg");
    assertThat(none.broken())
        .singleElement()
        .asString()
        .startsWith(
            "Test: no saw setting closes the corner at 45 deg. Flat, miter 31.6 deg and tilt 33"
                + " deg give ≈ 44.4");
  }

  @Test
  void a_side_that_is_cut_says_what_it_contradicts_and_leads_what_follows() {
    StandardJob made =
        splayed("sides | opening side | slope | long edge", "4 | 10 in | 90 deg | 16 1/4 in");
    assertThat(made.firing())
        .containsExactly(
            "Test: long edge entered as 16 1/4 in; the formula gives 16 in. Later"
                + " sizes use the entered size.");
    assertThat(made.shows("small edge inside of Test")).isEqualTo("10 1/4 in");
  }

  @Test
  void a_corner_of_no_angle_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .rows("splayed", "corners", "corner | angle | slope", "\"Test\" | 180 deg | 95 deg");
    assertThat(job.broken())
        .containsExactlyInAnyOrder(
            "Test: angle must be more than 0 deg and less than 180 deg; it is 180 deg.",
            "Test: slope must be 0 deg (a box) to 90 deg (a flat frame); it is 95 deg.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "2 | 10 in~ Test: sides must be at least 3; there are 2.",
        "13 | 10 in~ Test: sides must be at most 12; there are 13.",
        "6 | 0 in~ Test: package side must be more than 0 in; it is 0 in. Enter art side or"
            + " package side.",
        "3 | 10 in~ Test: 3 sides need a miter of 60 deg; the saw's maximum miter is 50 deg. Use"
            + " more sides or another saw.",
        "6 | 1/10 in~ Test: lip 1/4 in covers the whole rabbet opening, "
      })
  void a_polygon_that_cannot_be_made_breaks_a_requirement(String cells, String message) {
    assertThat(polygon("sides | package side", cells).broken())
        .anyMatch(text -> text.startsWith(message));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "kerf ~ 3/32 in ~ Test: kerf entered as 3/32 in; the saw's kerf is 1/8 in. This frame uses"
            + " the entered kerf.",
        "face ~ 1 7/16 in ~ Test: this lot has face 1 7/16 in and lip 1/4 in; ash cap has 1 1/2 in"
            + " and 1/4 in. Later sizes use this lot."
      })
  void a_polygon_that_is_made_says_what_it_contradicts(
      String column, String measured, String message) {
    StandardJob job = polygon("sides | package side | " + column, "6 | 10 in | " + measured);
    assertThat(job.firing()).contains(message);
  }

  @Test
  void a_polygon_of_no_rail_or_kerf_breaks_a_requirement() {
    assertThat(polygon("sides | package side | lip", "6 | 10 in | 1 1/2 in").broken())
        .contains("Test: lip 1 1/2 in must be at least 0 in and less than face 1 1/2 in.");
    assertThat(polygon("sides | package side | kerf", "6 | 10 in | -1/8 in").broken())
        .contains("Test: kerf must be at least 0 in; it is -1/8 in.");
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
  void a_frame_says_its_orientation(String cells, String orientation) {
    assertThat(
            polygon("art side | sides | side on top", "10 in | " + cells)
                .shows("orientation of Test"))
        .isEqualTo(orientation);
    String slope = "10 in | 20 deg | " + cells;
    assertThat(
            splayed("art side | slope | sides | side on top", slope).shows("orientation of Test"))
        .isEqualTo(orientation);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "kerf ~ 3/32 in ~ Test: kerf entered as 3/32 in; the saw's kerf is 1/8 in. This frame uses"
            + " the entered kerf.",
        "lot width ~ 2 15/16 in ~ Test: this lot is 2 15/16 in x 1/2 in; the board was planned as"
            + " 3 in x 1/2 in. Later sizes use this lot.",
        "lot thickness ~ 15/32 in ~ Test: this lot is 3 in x 15/32 in; the board was planned as 3"
            + " in x 1/2 in. Later sizes use this lot.",
        "glazing across flats ~ 9 7/8 in ~ Test: glazing entered as 9 7/8 in across flats; the"
            + " formula gives 10 in. Later sizes use the entered size.",
        "backing across flats ~ 9 7/8 in ~ Test: backing entered as 9 7/8 in across flats; the"
            + " formula gives 10 in. Later sizes use the entered size.",
        "dust cover across flats ~ 10 in ~ Test: dust cover entered as 10 in across flats; the"
            + " formula gives 10 3/8 in. Later sizes use the entered size."
      })
  void a_splayed_frame_that_is_made_says_what_it_contradicts(
      String column, String measured, String message) {
    StandardJob job =
        splayed("sides | art side | slope | " + column, "4 | 10 in | 0 deg | " + measured);
    assertThat(job.firing()).containsExactly(message);
    assertThat(job.broken()).isEmpty();
  }

  @Test
  void multi_sided_mats_that_are_cut_say_what_they_contradict_and_lead_what_follows() {
    String columns =
        "sides | art side | mats | window across flats as cut | mat across flats as cut";
    String cells = "4 | 10 in | 1 | 9 3/8 in | 14 7/8 in";
    List<String> cautions =
        List.of(
            "Test: window entered as 9 3/8 in across flats; the formula gives 9 1/2 in. Later"
                + " sizes use the entered size.",
            "Test: mat entered as 14 7/8 in across flats; the formula gives 15 in. Later sizes use"
                + " the entered size.");
    StandardJob flat = polygon(columns, cells);
    assertThat(flat.firing()).containsExactlyInAnyOrderElementsOf(cautions);
    assertThat(flat.shows("rabbet side needed of Test")).isEqualTo("15 in");
    StandardJob box = splayed(columns + " | slope", cells + " | 0 deg");
    assertThat(box.firing()).containsExactlyInAnyOrderElementsOf(cautions);
    assertThat(box.shows("opening side of Test")).isEqualTo("14 1/2 in");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "lip ~ 0 deg | 1/2 in ~ Test: lip 1/2 in and rabbet depth ≈ 9/16 in do not fit a board of"
            + " 3 in x 1/2 in. Use a larger board or a smaller rabbet.",
        "small edge at wall ~ 0 deg | false ~ Test: with the large edge at the wall, the package"
            + " goes in from inside, and the boards block its way.",
        "opening side ~ 0 deg | 9 in ~ Test: package side 10 in does not fit rabbet side 9 1/2 in."
            + " Make the sides longer or the package smaller.",
        "spacer ~ 0 deg | 0 in ~ Test: the glazing would touch the art. Put a mat or a spacer"
            + " between them.",
        "glazing across flats ~ 0 deg | 11 in ~ Test: glazing 11 in does not fit rabbet opening 10"
            + " 1/8 in (across flats). Cut it smaller.",
        "backing across flats ~ 0 deg | 11 in ~ Test: backing 11 in does not fit rabbet opening 10"
            + " 1/8 in (across flats). Cut it smaller.",
        "dust cover across flats ~ 0 deg | 11 in ~ Test: dust cover 11 in is larger than the"
            + " frame, 10 5/8 in (across flats). Cut it smaller."
      })
  void a_package_that_does_not_fit_splayed_sides_breaks_a_requirement(
      String column, String cells, String message) {
    StandardJob job = splayed("sides | art side | slope | " + column, "4 | 10 in | " + cells);
    assertThat(job.broken()).anyMatch(text -> text.startsWith(message));
  }

  @Test
  void splayed_frames_are_cautioned_as_other_frames_are() {
    assertThat(
            splayed("sides | art side | slope | rabbet depth", "4 | 10 in | 0 deg | 3/8 in")
                .firing())
        .singleElement()
        .asString()
        .contains("deeper than the rabbet. Use offset clips or a deeper rabbet.");
    assertThat(
            splayed("sides | art side | slope | rabbet depth", "4 | 10 in | 0 deg | 1/2 in")
                .firing())
        .singleElement()
        .asString()
        .contains("of rabbet depth is left for points; minimum 1/8 in.");
    assertThat(splayed("sides | art side | slope", "4 | 44 in | 0 deg").firing())
        .anyMatch(text -> text.contains("of glass. Lift it with two people"))
        .anyMatch(text -> text.contains("Use two people to hang it"));
  }

  @Test
  void a_polygons_lot_may_be_thinner_and_its_rabbet_shallower() {
    StandardJob lot =
        polygon(
            "sides | package side | moulding thickness | rabbet depth",
            "4 | 10 in | 13/16 in | 9/16 in");
    assertThat(lot.firing())
        .containsExactly(
            "Test: this lot has thickness 13/16 in and rabbet depth 9/16 in; ash cap has 7/8 in"
                + " and 5/8 in. Later sizes use this lot.");
    assertThat(lot.shows("depth of Test")).isEqualTo("13/16 in");
  }

  @Test
  void a_polygons_package_is_measured_against_its_rabbet() {
    StandardJob deep = polygon("sides | package side | thickness", "6 | 10 in | 1/2 in");
    assertThat(deep.firing())
        .singleElement()
        .asString()
        .contains("deeper than the rabbet. Use offset clips or a deeper moulding.");
    assertThat(polygon("sides | package side | spacer", "6 | 10 in | 0 in").broken())
        .containsExactly(
            "Test: the glazing would touch the art. Put a mat or a spacer between them.");
  }
}
