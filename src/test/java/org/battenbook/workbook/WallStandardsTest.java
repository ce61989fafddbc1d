package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.source.Diagnostic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the shipped standards say of frames on walls: what must hold, and what is cautioned. */
class WallStandardsTest {
  private static final String WALL =
      """
      page walls
        rows of walls
          wall    | width | first stud | %s
          "North" | 60 in | 20 in      | %s
      """;
  private static final String PLAIN = WALL.formatted("height", "");
  private static final String HEADINGS =
      "page pieces\n rows of pieces\n title | wall | width | height | style | moulding";

  /** Outside: 16 by 20 in. */
  private static final String TALL =
      " \"Tall\" | \"North\" | 13 3/8 in | 17 3/8 in | \"no mat\" | \"ash cap\"";

  /**
   * 2010 ADA Standards, 307.2: what begins more than 27 in and not more than 80 in above the floor
   * stands at most 4 in out into a way (access-board.gov, Guide to the ADA Standards, chapter 3).
   */
  @ParameterizedTest
  @CsvSource({
    "4 in, 60 in, false",
    "4 1/16 in, 60 in, true",
    "4 1/16 in, 27 in, false",
    "4 1/16 in, 27 1/16 in, true",
    "4 1/16 in, 80 in, true",
    "4 1/16 in, 80 1/16 in, false",
    "4 in, 80 in, false",
  })
  void what_stands_out_into_a_way_is_cautioned_between_cane_and_head(
      String protrusion, String bottom, boolean cautioned) {
    String job =
        """
        page mouldings
          rows of mouldings
            moulding | face     | lip    | thickness   | rabbet depth | density
            "deep"   | 1 1/2 in | 1/4 in | (%s - 1/2 in) | 1 in         | 600 kg/m^3
        """
                .formatted(protrusion)
            + WALL.formatted("height | line up | center line", "12 ft | \"bottoms\" | (%s + 10 in)")
                .formatted(bottom)
            + HEADINGS
            + "\n"
            + TALL.replace("ash cap", "deep");
    Filled filled = filled(job);
    assertThat(filled.find("protrusion of Tall").shown().text()).isEqualTo(protrusion);
    assertThat(filled.find("bottom above floor of Tall").shown().text()).isEqualTo(bottom);
    assertThat(cautions(filled).stream().anyMatch(text -> text.contains("where people walk")))
        .isEqualTo(cautioned);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "usable width ~ 70 in ~ North: begins at (0 in) plus usable width (70 in) must be at most"
            + " the width, 60 in; begins at must be at least 0 in.",
        "begins at ~ -2 in ~ North: begins at (-2 in) plus usable width (62 in) must be at most"
            + " the width, 60 in; begins at must be at least 0 in.",
        "usable width ~ 15 in ~ North: frame widths (16 in) and gaps (0 in) do not fit in 15 in."
            + " Move a frame to another tier or wall, or make the gaps smaller.",
        "center line ~ 9 in ~ Tall: top 19 in, height 20 in: its bottom is 1 in below the floor."
            + " Hang it higher.",
        "center line ~ 86 in ~ Tall: top 96 in leaves less than the 1/2 in needed to lift it off."
            + " The wall is 96 in high, above a floor at 0 in. Hang it lower.",
        "tiers ~ 0 ~ North: width, height and tiers must be more than 0; they are 60 in, 96 in and"
            + " 0.",
        "stair run ~ 0 in ~ North: stair run and studs apart must be more than 0 in; they are 0 in"
            + " and 16 in.",
      })
  void what_cannot_be_hung_so_breaks_a_requirement(String heading, String cell, String message) {
    Workbook job = job(WALL.formatted(heading, cell) + HEADINGS + "\n" + TALL);
    assertThat(broken(job.fill())).contains(message);
  }

  @Test
  void a_switch_and_a_casing_stay_clear() {
    String obstacles =
        """
          rows of obstacles
            obstacle | wall    | left  | bottom | width | height
            "switch" | "North" | %s    | 44 in  | 3 in  | 5 in
        """;
    String at = PLAIN;
    Filled inTheWay = filled(at + obstacles.formatted("39 in") + HEADINGS + "\n" + TALL);
    assertThat(broken(inTheWay))
        .containsExactly(
            "Tall: too close to switch: it covers 22 in to 38 in along North, 50 in to 70 in up."
                + " Move it.");
    assertThat(broken(filled(at + obstacles.formatted("40 in") + HEADINGS + "\n" + TALL)))
        .isEmpty();
    assertThat(broken(filled(at + obstacles.formatted("40 in").replace("| 3 in ", "| 0 in "))))
        .containsExactly(
            "switch: width and height must be more than 0 in, clearance at least 0"
                + " in; they are 0 in, 5 in and 2 in.");
  }

  @Test
  void frames_of_two_tiers_keep_the_lift_clearance_of_each() {
    String tiers =
        WALL.formatted("tiers | center line", "2 | 70 in")
            + "change tier gap = %s because \"test\"\n"
            + HEADINGS.replace("title", "tier | title")
            + "\n 1 |"
            + TALL
            + "\n 2 |"
            + TALL.replace("Tall", "Below");
    assertThat(broken(filled(tiers.formatted("1/2 in")))).isEmpty();
    assertThat(broken(filled(tiers.formatted("7/16 in"))))
        .containsExactly(
            "Below: it overlaps a neighbor on North, or the 1/2 in above it for lifting off is not"
                + " clear. Move one of them.");
  }

  @Test
  void frames_without_a_wall_break_a_requirement() {
    String job =
        PLAIN
            + HEADINGS.replace("title", "quantity | title")
            + "\n 2 |"
            + TALL
            + "\npage places\n rows of places\n frame | number | wall\n"
            + " \"Tall\" | 2 | \"elsewhere\"";
    assertThat(broken(filled(job)))
        .containsExactly(
            "Tall: 1 of 2 frames have a place on a wall. Enter a wall for each of the"
                + " others.");
  }

  @Test
  void two_frames_of_one_position_break_a_requirement() {
    String job =
        PLAIN
            + HEADINGS.replace("title", "quantity | title")
            + "\n 2 |"
            + TALL
            + "\npage places\n rows of places\n frame | number | position from left\n"
            + " \"Tall\" | 1 | 2\n \"Tall\" | 2 | 2";
    assertThat(broken(filled(job)))
        .contains("Tall: 1: 2 frames in North have position 2. Give each a number of its own.");
  }

  @Test
  void what_hangs_on_one_stud_or_on_none_is_cautioned_by_its_weight() {
    String light = PLAIN.replace("20 in ", "12 in ");
    String heavy = HEADINGS.replace("title", "art weight | title") + "\n %s |" + TALL;
    assertThat(cautions(filled(light + heavy.formatted("0 lb"))))
        .noneMatch(text -> text.contains("stud"));
    String none =
        light.replace("12 in ", "8 in ") + "change stud spacing = 48 in because \"test\"\n";
    assertThat(cautions(filled(none + heavy.formatted("3 lb"))))
        .anyMatch(text -> text.contains("no stud is behind its fasteners"));
    assertThat(cautions(filled(light + heavy.formatted("20 lb"))))
        .anyMatch(text -> text.contains("only one of its 3 wall screws is in a stud"));
  }

  @Test
  void screws_that_meet_wood_are_those_that_bear() {
    String light = PLAIN.replace("20 in ", "12 in ");
    Filled filled = filled(light + HEADINGS + "\n" + TALL);
    assertThat(filled.find("bearing screws of Tall").exact()).isEqualTo("1");
    assertThat(filled.find("fasteners here of Tall").exact()).isEqualTo("3");
  }

  private static Workbook job(String text) {
    return ShippedFiles.open(
        "workbook \"Test\"\nfollows \"standards/frame-shop.batten\"\nlengths in 1/16 in\n" + text);
  }

  private static Filled filled(String text) {
    Workbook job = job(text);
    assertThat(job.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    Filled filled = job.fill();
    assertThat(filled.faults()).isEmpty();
    return filled;
  }

  private static List<String> broken(Filled filled) {
    return filled.requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
  }

  private static List<String> cautions(Filled filled) {
    return filled.cautions().stream().filter(Verdict::isYes).map(Verdict::text).toList();
  }
}
