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
            + WALL.formatted("height | line up | centre line", "12 ft | \"bottoms\" | (%s + 10 in)")
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
      delimiter = ';',
      value = {
        "run; 70 in; North: a run of 70 in, begun at 0 in, is longer than the wall of 60 in.",
        "begins at; -2 in; North: a run of 62 in, begun at -2 in, is longer than the wall of 60 in.",
        "run; 15 in; North: its frames of 16 in in all and gaps of 0 in do not hang in one row on 15 in.",
        "centre line; 9 in; Tall: 20 in high and its top 19 in up, it would go 1 in below the floor.",
        "centre line; 86 in; Tall: its top at 96 in leaves no room under 96 in of wall to lift it by 1/2 in.",
        "tiers; 0; North: 0 tiers on 60 in by 96 in is no wall to hang on.",
        "going; 0 in; North: steps of 0 in and studs 16 in apart are none.",
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
            "Tall: from 22 in to 38 in along North and 50 in to 70 in up, it reaches into the room"
                + " of switch.");
    assertThat(broken(filled(at + obstacles.formatted("40 in") + HEADINGS + "\n" + TALL)))
        .isEmpty();
    assertThat(broken(filled(at + obstacles.formatted("40 in").replace("| 3 in ", "| 0 in "))))
        .containsExactly("switch: 0 in by 5 in and 2 in around it is nothing in the way.");
  }

  @Test
  void frames_of_two_tiers_keep_the_room_it_takes_to_lift_one_off() {
    String tiers =
        WALL.formatted("tiers | centre line", "2 | 70 in")
            + "change tier gap = %s because \"test\"\n"
            + HEADINGS.replace("title", "tier | title")
            + "\n 1 |"
            + TALL
            + "\n 2 |"
            + TALL.replace("Tall", "Below");
    assertThat(broken(filled(tiers.formatted("1/2 in")))).isEmpty();
    assertThat(broken(filled(tiers.formatted("7/16 in"))))
        .containsExactly(
            "Below: it overlaps a neighbour on North, or has not the 1/2 in above it that it takes"
                + " to lift it off.");
  }

  @Test
  void places_that_nobody_gave_a_wall_are_told_of() {
    String job =
        PLAIN
            + HEADINGS.replace("title", "quantity | title")
            + "\n 2 |"
            + TALL
            + "\npage places\n rows of places\n hanging | number | wall\n \"Tall\" | 2 | \"elsewhere\"";
    assertThat(broken(filled(job)))
        .containsExactly("Tall: of its 2 frames, 1 have a place on a wall.");
  }

  @Test
  void two_frames_of_one_order_are_told_of() {
    String job =
        PLAIN
            + HEADINGS.replace("title", "quantity | title")
            + "\n 2 |"
            + TALL
            + "\npage places\n rows of places\n hanging | number | order\n"
            + " \"Tall\" | 1 | 2\n \"Tall\" | 2 | 2";
    assertThat(broken(filled(job))).contains("Tall: 1: 2 frames of North have the order 2.");
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
        .anyMatch(text -> text.contains("no stud stands behind what holds it"));
    assertThat(cautions(filled(light + heavy.formatted("20 lb"))))
        .anyMatch(text -> text.contains("only one of its 3 wall screws meets wood"));
  }

  @Test
  void screws_that_meet_wood_are_those_that_bear() {
    String light = PLAIN.replace("20 in ", "12 in ");
    Filled filled = filled(light + HEADINGS + "\n" + TALL);
    assertThat(filled.find("bearing screws of Tall").exact()).isEqualTo("1");
    assertThat(filled.find("fixings here of Tall").exact()).isEqualTo("3");
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
