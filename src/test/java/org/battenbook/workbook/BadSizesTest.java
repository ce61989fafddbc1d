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
        "0 in | 10 in ~ Test: width, height and quantity must be more than 0; they are 0 in, 10 in"
            + " and 1.",
        "8 in | -1 in ~ Test: width, height and quantity must be more than 0; they are 8 in, -1 in"
            + " and 1."
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
        "quantity ~ 0 ~ Test: width, height and quantity must be more than 0; they are 8 in, 10 in"
            + " and 0.",
        "minimum width ~ 0 in ~ Test: minimum width and minimum height must be more than 0 in;"
            + " they are 0 in and 10 in.",
        "thickness ~ -1 in ~ Test: thickness must be at least 0 in; it is -1 in.",
        "lip ~ 2 in ~ Test: lip 2 in must be at least 0 in and less than face 1 1/2 in.",
        "kerf ~ -1/8 in ~ Test: kerf must be at least 0 in; it is -1/8 in.",
        "clearance ~ -1 in ~ Test: clearance must be at least 0 in; it is -1 in.",
        "backing width ~ 14 in ~ Test: backing 14 in x 15 in does not fit rabbet opening 13 1/8 in"
            + " x 15 1/8 in. Cut it smaller.",
        "glazing width ~ -1 in ~ Test: no size is left for glazing -1 in x 15 in, backing 13 in x"
            + " 15 in or dust cover 15 3/8 in x 17 3/8 in. Reduce clearance or dust cover inset.",
        "dust cover width ~ 0 in ~ Test: no size is left for glazing 13 in x 15 in, backing 13 in"
            + " x 15 in or dust cover 0 in x 17 3/8 in. Reduce clearance or dust cover inset.",
        "dust cover height ~ 18 in ~ Test: dust cover 15 3/8 in x 18 in is larger than the frame,"
            + " 15 5/8 in x 17 5/8 in. Cut it smaller."
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
        "back recess ~ 5 in ~ Test: the longest screw listed, 4 in, is too short for plywood 1/2:"
            + " the frame needs 7/8 in, the wall 6 1/2 in. Add longer screws.",
        "frame cleat length ~ 16 in ~ Test: frame cleat 16 in and wall cleat 15 in must be more"
            + " than 0 in, and the frame cleat at most the top side, 15 5/8 in.",
        "back recess ~ -1/4 in ~ Test: back recess must be at least 0 in; it is -1/4 in."
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
        .contains(
            "Test: lip 8 in covers the whole rabbet opening 13 1/8 in x 15 1/8 in. Use a"
                + " moulding with a narrower lip.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "bevel ~ 0 deg ~ plywood 1/2: bevel must be more than 0 deg and less than 90 deg; it is 0"
            + " deg. 45 deg is usual.",
        "thickness ~ 0 in ~ plywood 1/2: thickness and strip width must be more than 0 in; they"
            + " are 0 in and 2 in.",
        "kerf ~ -1/8 in ~ plywood 1/2: kerf must be at least 0 in; it is -1/8 in.",
        "sheet width ~ 1 in ~ plywood 1/2: strip 2 in and pair length 12 in must fit a sheet of 1"
            + " in x 96 in; pair length must be more than 0 in.",
        "strip ~ 1/2 in ~ plywood 1/2: a 1/2 in strip is too narrow: the bevel runs 1/2 in and"
            + " leaves a short face of ≈ -1/16 in. Use a wider strip."
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
            "plywood 1/2: bevel must be more than 0 deg and less than 90 deg; it is 90 deg. 45 deg"
                + " is usual.");
    assertThat(job.fill().faults()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "face ~ 0 in ~ ash cap: face and thickness must be more than 0 in; they are 0 in and 7/8"
            + " in.",
        "lip ~ -1/4 in ~ ash cap: lip -1/4 in, rabbet depth 5/8 in and ledge 0 in cannot be"
            + " negative; enter 0 in for none.",
        "stick length ~ 0 in ~ ash cap: stick length must be more than 0 in; it is 0 in.",
        "rabbet depth ~ 7/8 in ~ ash cap: rabbet depth 7/8 in must be less than thickness 7/8 in.",
        "girth ~ -1 in ~ ash cap: girth must be at least 0 in; it is -1 in."
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
            .change("specific gravity of woods \"beech\"", "0");
    assertThat(job.broken())
        .containsExactlyInAnyOrder(
            "glass: thickness and density cannot be negative; they are ≈ -0.04 in and ≈ 156.07"
                + " lb/ft^3.",
            "acrylic: growth must be at least 0 % and less than 100 %; it is 100.2 %.",
            "foam board: thickness and weight by area cannot be negative; they are ≈ 0.19 in and ≈"
                + " -0.2048 lb/ft^2.",
            "beech: specific gravity must be more than 0; it is 0.");
  }

  /** Beside the requirement nothing is at fault: no division by zero, no root of a negative. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "sides ~ 0 ~ Test: sides must be at least 3; there are 0.",
        "sides ~ 2 ~ Test: sides must be at least 3; there are 2.",
        "sides ~ 200 ~ Test: sides must be at most 12; there are 200.",
        "slope ~ -5 deg ~ Test: slope must be 0 deg (a box) to 90 deg (a flat frame); it is -5"
            + " deg.",
        "slope ~ 95 deg ~ Test: slope must be 0 deg (a box) to 90 deg (a flat frame); it is 95"
            + " deg.",
        "slope width ~ 0 in ~ Test: lot width and lot thickness must be more than 0 in; they are 0"
            + " in and 3/4 in.",
        "board thickness ~ 0 in ~ Test: lot width and lot thickness must be more than 0 in; they"
            + " are 3 in and 0 in.",
        "art side ~ 0 in ~ Test: opening side must be more than 0 in; it is 0 in. Enter opening"
            + " side, art side or package side.",
        "kerf ~ -1/8 in ~ Test: kerf must be at least 0 in; it is -1/8 in.",
        "lip ~ -1/4 in ~ Test: lip -1/4 in and rabbet depth ",
        "cleat seat ~ -1 in ~ Test: cleat seat must be at least 0 in; it is -1 in.",
        "stick length ~ 0 in ~ Test: side 14 15/16 in with end trims 1/2 in does not fit a stick"
            + " of 0 ft. Use a longer stick."
      })
  void a_splayed_frame_that_makes_no_sense_breaks_a_requirement_alone(
      String column, String cell, String message) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("sides", "4");
    row.put("slope", "45 deg");
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
        "sides ~ 0 ~ Test: sides must be at least 3; there are 0.",
        "sides ~ 200 ~ Test: sides must be at most 12; there are 200.",
        "art side ~ 0 in ~ Test: package side must be more than 0 in; it is 0 in. Enter art side"
            + " or package side.",
        "overlap ~ 9 in ~ Test: window across flats must be more than 0 in; it is ",
        "overlap ~ -1 in ~ Test: art side 10 in, thickness ",
        "border ~ -1 in ~ Test: window 17 5/16 in does not fit mat 15 5/16 in (across flats). Use"
            + " a larger mat.",
        "rabbet depth ~ 1 in ~ Test: rabbet depth 1 in must be at least 0 in and less than"
            + " moulding thickness 7/8 in.",
        "backing across flats ~ 30 in ~ Test: backing 30 in does not fit rabbet opening ",
        "dust cover across flats ~ 30 in ~ Test: dust cover 30 in is larger than the frame, "
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
  void a_corner_that_is_none_breaks_a_requirement_alone(String angle, String slope) {
    StandardJob job =
        new StandardJob()
            .rows(
                "splayed",
                "corners",
                "corner | angle | slope",
                "\"Test\" | %s | %s".formatted(angle, slope));
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
        "fastener spacing ~ 0 in ~ Fastener spacing must be more than 0 in; it is 0 in.",
        "point spacing ~ 0 in ~ Point spacing and width per hinge must be more than 0 in; they are"
            + " 0 in and 8 in.",
        "width per hinge ~ 0 in ~ Point spacing and width per hinge must be more than 0 in; they"
            + " are 4 in and 0 in.",
        "point end ~ -1 in ~ Point end and hinge inset must be at least 0 in; they are -1 in and 1"
            + " in.",
        "hinge inset ~ -1 in ~ Point end and hinge inset must be at least 0 in; they are 1 in and"
            + " -1 in.",
        "paper roll width ~ 0 in ~ Sizes as bought must be more than 0: paper roll"
            + " 0 in x 3600 in, spacer strip 60 in, rolls of tape 2160 in and 2160 in, glue bottle"
            + " ≈ 30.512 in^3.",
        "paper roll length ~ -1 ft ~ Sizes as bought must be more than 0: paper roll"
            + " 36 in x -12 in, spacer strip 60 in, rolls of tape 2160 in and 2160 in, glue bottle"
            + " ≈ 30.512 in^3.",
        "spacer strip length ~ 0 in ~ Sizes as bought must be more than 0: paper roll"
            + " 36 in x 3600 in, spacer strip 0 in, rolls of tape 2160 in and 2160 in, glue bottle"
            + " ≈ 30.512 in^3.",
        "package tape roll ~ 0 in ~ Sizes as bought must be more than 0: paper roll"
            + " 36 in x 3600 in, spacer strip 60 in, rolls of tape 0 in and 2160 in, glue bottle"
            + " ≈ 30.512 in^3.",
        "dust cover tape roll ~ -1 in ~ Sizes as bought must be more than 0: paper roll"
            + " 36 in x 3600 in, spacer strip 60 in, rolls of tape 2160 in and -1 in, glue bottle"
            + " ≈ 30.512 in^3.",
        "glue bottle ~ 0 cm^3 ~ Sizes as bought must be more than 0: paper roll"
            + " 36 in x 3600 in, spacer strip 60 in, rolls of tape 2160 in and 2160 in, glue bottle"
            + " 0 in^3.",
        "glue film ~ -1 in ~ Glue film and test corner length must be at least 0 in; they are"
            + " -1.000 in and 12 in.",
        "test corner length ~ -12 in ~ Glue film and test corner length must be at least 0 in;"
            + " they are 0.006 in and -12 in.",
        "minimum depth for points ~ -1 in ~ Shortest rail 8 in and minimum depth for points -1 in"
            + " cannot be negative; enter 0 in for no caution.",
        "shortest rail ~ -2 in ~ Shortest rail -2 in and minimum depth for points 1/8 in cannot be"
            + " negative; enter 0 in for no caution.",
        "fastener end ~ -1 in ~ Fastener end -1 in, minimum fastener gap 1 in, minimum rail bite"
            + " 3/8 in, screw margin 1/8 in and minimum wall bite 1 in cannot be negative; enter 0"
            + " in for none.",
        "hardware weight ~ -1 lb ~ Hardware weight must be at least 0 lb; it is -1 lb.",
        "dark sheet factor ~ -1 ~ Dark sheet factor must be at least 0; it is -1.",
        "angle step ~ 0 deg ~ Maximum tilt 45 deg must be more than 0 deg and less than 90 deg,"
            + " and angle step 0 deg more than 0 deg. Corner slack 0.1 deg and board lip 1/4 in"
            + " cannot be negative.",
        "density of mouldings \"ash cap\" ~ -5 kg/m^3 ~ ash cap: density cannot be negative; it is"
            + " ≈ -0.3121 lb/ft^3.",
        "pack of of pick list \"points\" ~ 0 ~ points: 'pack of' must be more than 0; it is 0.",
        "pack of of screws \"8 x 1\" ~ 0 ~ 8 x 1: 'pack of' must be at least 1; it is 0."
      })
  void an_allowance_that_makes_no_sense_breaks_its_requirement_alone(
      String name, String value, String message) {
    StandardJob job = new StandardJob().change(name, value).piece("moulding", "\"ash cap\"");
    assertThat(job.broken()).containsExactly(message);
    assertThat(job.fill().faults()).isEmpty();
  }

  /** What cannot be rounded is at fault, too: no other step is taken in silence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "glass step ~ 0 in ~ Glass step must be more than 0 in; it is 0 in.",
        "mat step ~ 0 in ~ Mat step must be more than 0 in; it is 0 in.",
        "rail step ~ -1 in ~ Rail step must be more than 0 in; it is -1 in.",
        "kerf step ~ 0 in ~ Kerf step must be more than 0 in; it is 0 in.",
        "dust cover step ~ 0 in ~ Dust cover step must be more than 0 in; it is 0 in.",
        "cleat step ~ -1/8 in ~ Cleat step must be more than 0 in; it is -1/8 in."
      })
  void a_step_of_nothing_breaks_its_requirement(String name, String value, String message) {
    StandardJob job = new StandardJob().change(name, value).piece("moulding", "\"ash cap\"");
    assertThat(job.broken()).contains(message);
  }

  /** A frame too small for every hanger fails its check, and nothing else goes wrong. */
  @ParameterizedTest
  @CsvSource({
    "side rail, -5 in, 15 5/8 in, -5 in",
    "border, -9 in, -7 7/8 in, -5 7/8 in",
    "side rail, 1/4 in, 15 5/8 in, 1/4 in"
  })
  void a_frame_too_small_for_every_hanger_breaks_a_requirement(
      String heading, String cell, String width, String height) {
    StandardJob job = new StandardJob().piece("moulding | " + heading, "\"ash cap\" | " + cell);
    assertThat(job.broken())
        .contains(
            ("Test: %s x %s is too small for its cleat and for every hanger listed. Add a"
                    + " hanger that fits.")
                .formatted(width, height));
    assertThat(job.fill().faults()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "thickness ~ 0 in ~ A: thickness, width and length must be more than 0 in; they are 0 in,"
            + " 6 in and 96 in.",
        "width ~ 0 in ~ A: thickness, width and length must be more than 0 in; they are 1 in, 0 in"
            + " and 96 in.",
        "width ~ -6 in ~ A: thickness, width and length must be more than 0 in; they are 1 in, -6"
            + " in and 96 in."
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
  void blanks_of_no_width_break_a_requirement_alone() {
    StandardJob job =
        new StandardJob()
            .change("saw kerf", "0 in")
            .change("rip allowance", "-1.5 in")
            .rows(
                "milling",
                "rough boards",
                "board | moulding | wood | length",
                "\"A\" | \"ash cap\" | \"white ash\" | 8 ft");
    assertThat(job.broken())
        .contains("A: width 6 in gives no blank of 0 in for ash cap. Use a wider board.");
    assertThat(job.fill().faults()).isEmpty();
  }

  @Test
  void a_tool_that_gives_wood_back_breaks_a_requirement() {
    StandardJob job = new StandardJob().change("snipe", "-1 in");
    assertThat(job.broken())
        .containsExactly(
            "Planing 1/8 in, jointing 1/8 in, rip allowance 1/16 in and snipe -1 in cannot be"
                + " negative; enter 0 in for none.");
  }
}
