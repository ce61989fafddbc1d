package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes that make no sense break requirements that name them. */
class BadSizesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "0 in | 10 in ~ Test: 1 of 0 in by 10 in is nothing to frame.",
        "8 in | -1 in ~ Test: 1 of 8 in by -1 in is nothing to frame."
      })
  void art_of_no_size_breaks_a_requirement(String sizes, String message) {
    StandardJob job =
        new StandardJob()
            .rows(
                "pieces",
                "pieces",
                "title | width | height | moulding",
                "\"Test\" | " + sizes + " | \"ash cap\"");
    assertThat(job.broken()).contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "quantity ~ 0 ~ Test: 0 of 8 in by 10 in is nothing to frame.",
        "least width ~ 0 in ~ Test: a smallest size of 0 in by 10 in is none.",
        "thickness ~ -1 in ~ Test: nothing is -1 in thick.",
        "lip ~ 2 in ~ Test: a lip of 2 in on a face of 1 1/2 in is no rail.",
        "kerf ~ -1/8 in ~ Test: a kerf of -1/8 in gives wood back.",
        "clearance ~ -1 in ~ Test: a clearance of -1 in makes lite and backing larger than their"
            + " rabbet.",
        "backing across ~ 14 in ~ Test: a backing of 14 in by 15 in does not go into a rabbet of 13"
            + " 1/8 in by 15 1/8 in.",
        "lite across ~ -1 in ~ Test: no lite, backing or dust cover is cut -1 in by 15 in, 13 in by 15"
            + " in, 15 3/8 in by 17 3/8 in.",
        "dust cover across ~ 0 in ~ Test: no lite, backing or dust cover is cut 13 in by 15 in, 13 in"
            + " by 15 in, 0 in by 17 3/8 in.",
        "dust cover down ~ 18 in ~ Test: a dust cover of 15 3/8 in by 18 in stands out beside a frame"
            + " of 15 5/8 in by 17 5/8 in."
      })
  void a_piece_that_makes_no_sense_breaks_a_requirement(
      String heading, String cell, String message) {
    StandardJob job = new StandardJob().piece("moulding | " + heading, "\"ash cap\" | " + cell);
    assertThat(job.broken()).contains(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "back recess ~ 5 in ~ Test: the longest screw, 4 in, is too short for plywood 1/2: 7/8 in go into"
            + " the frame and 6 1/2 in into the wall.",
        "frame half ~ 16 in ~ Test: halves of 16 in and 15 in do not go behind a top side of 15 5/8"
            + " in.",
        "back recess ~ -1/4 in ~ Test: a back does not lie -1/4 in in."
      })
  void what_does_not_hang_so_breaks_a_requirement(String heading, String cell, String message) {
    StandardJob job = new StandardJob().piece("moulding", "\"ash cap\"").hanging(heading, cell);
    assertThat(job.broken()).contains(message);
    assertThat(job.fill().faults()).isEmpty();
  }

  @Test
  void a_lip_that_covers_all_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .change("face of mouldings \"ash cap\"", "9 in")
            .change("lip of mouldings \"ash cap\"", "8 in")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.broken())
        .contains("Test: a lip of 8 in leaves nothing to see of 13 1/8 in by 15 1/8 in.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "bevel ~ 0 deg ~ plywood 1/2: a bevel of 0 deg does not hook: it is more than 0 deg and less"
            + " than 90 deg, 45 deg as a rule.",
        "thickness ~ 0 in ~ plywood 1/2: a strip of 2 in, 0 in thick, is no strip.",
        "kerf ~ -1/8 in ~ plywood 1/2: a kerf of -1/8 in gives wood back.",
        "sheet across ~ 1 in ~ plywood 1/2: strips of 2 in and pairs of 12 in do not come out of a"
            + " sheet of 1 in by 96 in.",
        "strip ~ 1/2 in ~ plywood 1/2: a strip of 1/2 in leaves no short face beside a bevel that"
            + " runs 1/2 in."
      })
  void a_cleat_that_does_not_hook_breaks_a_requirement(
      String column, String value, String message) {
    StandardJob job =
        new StandardJob().change("%s of cleats \"plywood 1/2\"".formatted(column), value);
    assertThat(job.broken()).contains(message);
    assertThat(job.fill().faults()).isEmpty();
  }

  @Test
  void a_bevel_of_ninety_degrees_breaks_a_requirement() {
    StandardJob job =
        new StandardJob()
            .change("bevel of cleats \"plywood 1/2\"", "90 deg")
            .piece("moulding", "\"ash cap\"");
    assertThat(job.broken())
        .contains(
            "plywood 1/2: a bevel of 90 deg does not hook: it is more than 0 deg and less than 90"
                + " deg, 45 deg as a rule.");
    assertThat(job.fill().faults()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "face ~ 0 in ~ ash cap: a face of 0 in and a thickness of 7/8 in are no moulding.",
        "lip ~ -1/4 in ~ ash cap: a lip of -1/4 in, a rabbet 5/8 in deep, a ledge of 0 in: none is 0"
            + " in, less is not.",
        "stick length ~ 0 in ~ ash cap: sticks of 0 in are none.",
        "rabbet depth ~ 7/8 in ~ ash cap: a rabbet 7/8 in deep goes through a thickness of 7/8 in.",
        "girth ~ -1 in ~ ash cap: a girth of -1 in is no surface."
      })
  void a_moulding_that_is_none_breaks_a_requirement(String column, String value, String message) {
    StandardJob job =
        new StandardJob().change("%s of mouldings \"ash cap\"".formatted(column), value);
    assertThat(job.broken()).contains(message);
  }

  @Test
  void materials_lighter_than_nothing_break_requirements() {
    StandardJob job =
        new StandardJob()
            .change("thickness of glazings \"glass\"", "-1 mm")
            .change("expansion of glazings \"acrylic\"", "2.5 %/degF")
            .change("weight by area of boards \"foam board\"", "-1 kg/m^2")
            .change("gravity of woods \"beech\"", "0");
    assertThat(job.broken())
        .containsExactlyInAnyOrder(
            "glass: ≈ -1/16 in of it weighs less than nothing.",
            "acrylic: it does not grow by 100.2 %.",
            "foam board: 3/16 in of it weighs less than nothing.",
            "beech: a specific gravity of 0 weighs nothing.");
  }

  /** Beside the requirement nothing is at fault: no division by zero, no root of a negative. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "sides ~ 0 ~ Test: 0 sides do not close.",
        "sides ~ 2 ~ Test: 2 sides do not close.",
        "sides ~ 200 ~ Test: 200 sides are more than the 12 that the standards know.",
        "lean ~ -5 deg ~ Test: sides lean 0 deg, as in a box, to 90 deg, as in a flat frame; -5 deg is"
            + " neither.",
        "lean ~ 95 deg ~ Test: sides lean 0 deg, as in a box, to 90 deg, as in a flat frame; 95 deg is"
            + " neither.",
        "slope width ~ 0 in ~ Test: a board of 0 in by 3/4 in is no board.",
        "board thickness ~ 0 in ~ Test: a board of 3 in by 0 in is no board.",
        "art side ~ 0 in ~ Test: an opening of 0 in on a side is nothing to frame.",
        "kerf ~ -1/8 in ~ Test: a kerf of -1/8 in gives wood back.",
        "lip ~ -1/4 in ~ Test: a lip of -1/4 in and a rabbet ",
        "footing ~ -1 in ~ Test: a footing of -1 in is no wood.",
        "stick length ~ 0 in ~ Test: a side of 14 15/16 in does not come out of a stick of 0 ft."
      })
  void a_splayed_frame_that_makes_no_sense_breaks_a_requirement_alone(
      String column, String cell, String message) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("sides", "4");
    row.put("lean", "45 deg");
    row.put("slope width", "3 in");
    row.put("board thickness", "3/4 in");
    row.put("art side", "10 in");
    row.put("wood", "\"red oak\"");
    breaksAlone("splayed", row, column, cell, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "sides ~ 0 ~ Test: 0 sides do not close.",
        "sides ~ 200 ~ Test: 200 sides are more than the 12 that the standards know.",
        "art side ~ 0 in ~ Test: a side of 0 in is nothing to frame.",
        "overlap ~ 9 in ~ Test: no window is left in a mat of",
        "overlap ~ -1 in ~ Test: art of 10 in on a side and ",
        "border ~ -1 in ~ Test: a mat of 15 5/16 in across flats has no room for its window of 17 5/16"
            + " in.",
        "rabbet depth ~ 1 in ~ Test: a rabbet 1 in deep goes through a thickness of 7/8 in.",
        "backing across ~ 30 in ~ Test: a backing of 30 in across flats does not go into a rabbet of",
        "dust cover across ~ 30 in ~ Test: a dust cover of 30 in across flats stands out beside a"
            + " frame of"
      })
  void a_polygon_that_makes_no_sense_breaks_a_requirement_alone(
      String column, String cell, String message) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("sides", "6");
    row.put("art side", "10 in");
    row.put("mats", "2");
    row.put("moulding", "\"ash cap\"");
    breaksAlone("polygons", row, column, cell, message);
  }

  @ParameterizedTest
  @CsvSource({
    "0 deg, 45 deg",
    "180 deg, 45 deg",
    "270 deg, 0 deg",
    "-90 deg, 90 deg",
    "90 deg, 95 deg"
  })
  void a_corner_that_is_none_breaks_a_requirement_alone(String angle, String lean) {
    StandardJob job =
        new StandardJob()
            .rows(
                "splayed",
                "corners",
                "corner | angle | lean",
                "\"Test\" | %s | %s".formatted(angle, lean));
    assertThat(job.broken()).isNotEmpty();
    assertThat(job.fill().faults()).isEmpty();
  }

  private static void breaksAlone(
      String table, Map<String, String> row, String column, String cell, String message) {
    row.put(column, cell);
    StandardJob job =
        new StandardJob()
            .rows(
                table,
                table,
                "title | " + String.join(" | ", row.keySet()),
                "\"Test\" | " + String.join(" | ", row.values()));
    assertThat(job.broken()).anyMatch(text -> text.startsWith(message));
    assertThat(job.fill().faults()).isEmpty();
  }

  /** An allowance that makes no sense: its requirement alone speaks, and nothing is at fault. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "fixing spacing ~ 0 in ~ Fixings 0 in apart are without number.",
        "point spacing ~ 0 in ~ Points 0 in apart and a hinge to each 8 in are without number.",
        "hinge share ~ 0 in ~ Points 4 in apart and a hinge to each 0 in are without number.",
        "point end ~ -1 in ~ Points begin -1 in from a corner and hinges 1 in from an edge: less than"
            + " nothing lies outside.",
        "hinge inset ~ -1 in ~ Points begin 1 in from a corner and hinges -1 in from an edge: less"
            + " than nothing lies outside.",
        "glue film ~ -1 in ~ A glue film of -1.000 in and test joints of 12 in: nobody uses less than"
            + " none.",
        "test joint ~ -12 in ~ A glue film of 0.006 in and test joints of -12 in: nobody uses less"
            + " than none.",
        "least point room ~ -1 in ~ A shortest rail of 8 in and a point room of -1 in warn of nothing:"
            + " leave the one that is not wanted at 0 in.",
        "shortest rail ~ -2 in ~ A shortest rail of -2 in and a point room of 1/8 in warn of nothing:"
            + " leave the one that is not wanted at 0 in.",
        "fixing end ~ -1 in ~ A fixing -1 in from the end of a cleat, 1 in from the next, a hold of 3/8"
            + " in, a margin of 1/8 in, a bite of 1 in: none is 0 in, less is not.",
        "hardware weight ~ -1 lb ~ The hardware of a frame does not weigh -1 lb.",
        "dark warming ~ -1 ~ A dark sheet that moves by -1 of a clear one shrinks where that grows.",
        "angle step ~ 0 deg ~ A blade that tilts to 45 deg, set by 0 deg, corners open by 0.1 deg and"
            + " lips of 1/4 in make no frame.",
        "density of mouldings \"ash cap\" ~ -5 kg/m^3 ~ ash cap: wood does not weigh ≈ -0.3121 lb/ft^3.",
        "pack of of picks \"points\" ~ 0 ~ points: a pack of 0 is empty.",
        "pack of of screws \"8 x 1\" ~ 0 ~ 8 x 1: a pack of 0 is empty."
      })
  void an_allowance_that_makes_no_sense_breaks_its_requirement_alone(
      String name, String value, String message) {
    StandardJob job = new StandardJob().change(name, value).piece("moulding", "\"ash cap\"");
    assertThat(job.broken()).containsExactly(message);
    assertThat(job.fill().faults()).isEmpty();
  }

  /** What cannot be rounded is at fault, too: no other scale is taken in silence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "glass step ~ 0 in ~ A glass step of 0 in is no scale to cut lites by.",
        "mat step ~ 0 in ~ A mat step of 0 in is no scale to cut mats by.",
        "rail step ~ -1 in ~ A rail step of -1 in is no scale to cut rails by.",
        "kerf step ~ 0 in ~ A kerf step of 0 in is no scale to cut kerfs by.",
        "dust cover step ~ 0 in ~ A dust cover step of 0 in is no scale to cut dust covers by.",
        "cleat step ~ -1/8 in ~ A cleat step of -1/8 in is no scale to cut cleats by."
      })
  void a_scale_of_nothing_breaks_its_requirement(String name, String value, String message) {
    StandardJob job = new StandardJob().change(name, value).piece("moulding", "\"ash cap\"");
    assertThat(job.broken()).contains(message);
  }

  /** What no hanger is made for breaks requirements, and no row is looked for in vain. */
  @ParameterizedTest
  @CsvSource({
    "side rail, -5 in, 15 5/8 in, -5 in",
    "border, -9 in, -7 7/8 in, -5 7/8 in",
    "side rail, 1/4 in, 15 5/8 in, 1/4 in"
  })
  void a_frame_that_no_hanger_is_made_for_is_told_of(
      String heading, String cell, String across, String down) {
    StandardJob job = new StandardJob().piece("moulding | " + heading, "\"ash cap\" | " + cell);
    assertThat(job.broken())
        .contains("Test: no hanger is made for a frame of %s by %s.".formatted(across, down));
    assertThat(job.fill().faults()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "thickness ~ 0 in ~ A: 0 in by 6 in by 96 in is no board.",
        "width ~ 0 in ~ A: 1 in by 0 in by 96 in is no board.",
        "width ~ -6 in ~ A: 1 in by -6 in by 96 in is no board."
      })
  void a_rough_board_that_is_none_breaks_a_requirement(String column, String cell, String message) {
    StandardJob job =
        new StandardJob()
            .rows(
                "milling",
                "rough boards",
                "board | moulding | wood | length | " + column,
                "\"A\" | \"ash cap\" | \"white ash\" | 8 ft | " + cell);
    assertThat(job.broken()).contains(message);
    assertThat(job.fill().faults()).isEmpty();
  }

  @Test
  void blanks_of_no_width_are_told_of_without_a_fault() {
    StandardJob job =
        new StandardJob()
            .change("saw kerf", "0 in")
            .change("rip allowance", "-1.5 in")
            .rows(
                "milling",
                "rough boards",
                "board | moulding | wood | length",
                "\"A\" | \"ash cap\" | \"white ash\" | 8 ft");
    assertThat(job.broken()).contains("A: 6 in wide, it gives no blank of 0 in for ash cap.");
    assertThat(job.fill().faults()).isEmpty();
  }

  @Test
  void a_tool_that_gives_wood_back_breaks_a_requirement() {
    StandardJob job = new StandardJob().change("snipe", "-1 in");
    assertThat(job.broken())
        .containsExactly(
            "Planing 1/8 in, jointing 1/8 in, rip allowance 1/16 in, snipe -1 in: a tool takes wood"
                + " off, or none.");
  }
}
