package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.battenbook.value.Value;
import org.junit.jupiter.api.Test;

/** The standards' plans: which rail is cut from which stick, and which glazing from which sheet. */
class PlanStandardsTest {
  private static final String FACE = "moulding | quantity";

  /** Ash cap in sticks of 96 in; the rails of Test are 15 3/4 in and 17 3/4 in. */
  private static StandardJob job(int quantity) {
    return new StandardJob().piece(FACE, "\"ash cap\" | " + quantity);
  }

  /** The same, with these further headings and cells. */
  private static StandardJob job(int quantity, String headings, String cells) {
    return new StandardJob()
        .piece(FACE + " | " + headings, "\"ash cap\" | %d | %s".formatted(quantity, cells));
  }

  @Test
  void rails_and_a_test_corner_are_cut_from_the_mouldings_own_sticks() {
    Filled filled = job(1).fill();
    assertThat(filled.find("parts needed of rail totals \"ash cap\"").exact()).isEqualTo("5");
    assertThat(filled.find("sticks of ash cap").exact()).isEqualTo("1");
    assertThat(filled.find("proven of ash cap").exact()).isEqualTo("yes");
    assertThat(filled.find("total length of rail totals \"ash cap\"").exact()).isEqualTo("96");
  }

  @Test
  void an_offcut_in_stock_comes_before_a_new_stick() {
    Filled filled =
        job(1)
            .rows(
                "sticks",
                "sticks on hand",
                "stick | moulding | length | offcut",
                "\"from the lamp\" | \"ash cap\" | 84 in | true")
            .fill();
    assertThat(filled.find("stock of ash cap: 1").shown().text()).isEqualTo("from the lamp");
    assertThat(filled.find("total length of rail totals \"ash cap\"").exact()).isEqualTo("0");
  }

  // Between 0 and 30 in one rail or two fit, beyond 32 in two more and the test corner.
  @Test
  void nothing_is_cut_through_a_defect() {
    Filled filled =
        job(1)
            .rows(
                "sticks",
                "sticks on hand",
                "stick | moulding | length | on hand | offcut",
                "\"knotty\" | \"ash cap\" | 96 in | 1 | true")
            .rows(
                "sticks",
                "defects",
                "defect | stick | start | end",
                "\"knot\" | \"knotty\" | 30 in | 32 in",
                "\"split\" | \"knotty\" | 94 in | 96 in")
            .fill();
    int cuts = 5;
    for (int stick = 1, seen = 0; seen < cuts; stick++) {
      String name = "ash cap: " + stick;
      int ofStick = Integer.parseInt(filled.find("parts cut of " + name).exact());
      for (int cut = 1; cut <= ofStick; cut++) {
        if (filled.find("stock of " + name).shown().text().startsWith("knotty")) {
          double from = inches(filled, "start of %s: %d".formatted(name, cut));
          double to = inches(filled, "end of %s: %d".formatted(name, cut));
          assertThat(to <= 30 || (from >= 32 && to <= 94)).isTrue();
        }
      }
      seen += ofStick;
    }
    assertThat(filled.find("parts planned of ash cap").exact()).isEqualTo("5");
  }

  private static double inches(Filled filled, String place) {
    Value.Amount length = (Value.Amount) filled.find(place).value();
    return length.quantity().number().toDouble();
  }

  @Test
  void matched_rails_go_round_the_frame_out_of_one_stick() {
    Filled filled =
        new StandardJob()
            .piece("moulding | quantity | grain matched", "\"ash cap\" | 2 | true")
            .fill();
    String side = filled.find("label of rails \"Test: 2\"").shown().text();
    String top = filled.find("label of rails \"Test: 1\"").shown().text();
    for (int number = 1; number <= 4; number++) {
      assertThat(filled.find("label of ash cap: 1: " + number).shown().text())
          .isEqualTo(number % 2 == 1 ? top : side);
    }
  }

  // Twelve rails of 16 in at 45 deg from a face of 2 in, every other one flipped: 14 in and a kerf
  // apart.
  @Test
  void a_moulding_that_can_flip_nests() {
    StandardJob job = job(3).change("test corner length", "0 in");
    String plain = job.fill().find("parts length of ash cap").exact();
    Filled nested = job.change("can flip of mouldings", "true").fill();
    assertThat(nested.find("parts length of ash cap").exact()).isEqualTo(plain);
    assertThat(nested.find("nest of ash cap").exact()).isEqualTo("3/2");
    assertThat(nested.find("flipped of ash cap: 1: 1").exact()).isEqualTo("no");
    assertThat(nested.find("flipped of ash cap: 1: 2").exact()).isEqualTo("yes");
  }

  @Test
  void what_is_said_to_be_cut_is_not_planned() {
    Filled filled =
        job(
                1,
                "rails already cut | glazing already cut | mats already cut | backing already cut",
                "true | true | true | true")
            .fill();
    assertThat(filled.book().table("rail totals")).isNotNull();
    assertThat(filled.find("needed of rails \"Test: 1\"").exact()).isEqualTo("0");
    assertThat(filled.find("glazing to cut of Test").exact()).isEqualTo("0");
    assertThat(filled.find("mats to cut of Test").exact()).isEqualTo("0");
    assertThat(filled.find("backings to cut of Test").exact()).isEqualTo("0");
  }

  // Else what a job buys would fall, frame by frame, as it is made.
  @Test
  void a_size_as_cut_stays_in_the_plan() {
    Filled measured =
        job(
                1,
                "top rail | side rail | glazing width | mat width as cut | backing width",
                "15 in | 17 in | 12 in | 13 in | 12 in")
            .fill();
    assertThat(measured.find("length of rails \"Test: 1\"").exact()).isEqualTo("15");
    assertThat(measured.find("needed of rails \"Test: 1\"").exact()).isEqualTo("2");
    assertThat(measured.find("glazing to cut of Test").exact()).isEqualTo("1");
    assertThat(measured.find("mats to cut of Test").exact()).isEqualTo("1");
    assertThat(measured.find("backings to cut of Test").exact()).isEqualTo("1");
  }

  @Test
  void what_was_taken_for_the_job_is_cut() {
    Filled filled =
        job(1)
            .rows(
                "sticks",
                "sticks used",
                "taken | moulding | length | bought",
                "\"ash cap\" | \"ash cap\" | 96 in | 1")
            .rows(
                "sheets",
                "glazing used",
                "taken | glazing | width | height | bought",
                "\"glass\" | \"glass\" | 36 in | 48 in | 1")
            .fill();
    assertThat(filled.find("needed of rails \"Test: 1\"").exact()).isEqualTo("0");
    assertThat(filled.find("glazing to cut of Test").exact()).isEqualTo("0");
    assertThat(filled.find("mats to cut of Test").exact()).isEqualTo("1");
  }

  @Test
  void multi_sided_and_splayed_frames_are_planned_too() {
    Filled filled =
        new StandardJob()
            .rows(
                "polygons",
                "polygons",
                "title | sides | package side | moulding",
                "\"Hex\" | 6 | 10 in | \"ash cap\"")
            .rows(
                "splayed",
                "splayed",
                "title | sides | slope | package side | slope width | board thickness | wood",
                "\"Box\" | 4 | 30 deg | 8 in | 3 in | 3/4 in | \"black cherry\"")
            .fill();
    assertThat(filled.find("parts planned of ash cap").exact()).isEqualTo("7");
    assertThat(filled.find("parts planned of black cherry, 3 in by 3/4 in").exact()).isEqualTo("4");
    assertThat(filled.find("sheets of glass").exact()).isEqualTo("1");
  }

  @Test
  void a_rail_longer_than_every_stick_is_named_and_the_rest_is_planned() {
    StandardJob job =
        new StandardJob()
            .rows(
                "pieces",
                "pieces",
                "title | width | height | moulding",
                "\"Chart\" | 20 in | 110 in | \"ash cap\"",
                "\"Test\" | 8 in | 10 in | \"ash cap\"");
    assertThat(job.broken())
        .anyMatch(
            text -> text.startsWith("ash cap: Chart, sides") && text.contains(" fits no stick. "));
    assertThat(job.fill().find("parts planned of ash cap").exact()).isEqualTo("7");
  }

  @Test
  void glazing_mats_and_backings_are_planned_for_each_frame_and_spare() {
    Filled none = job(3).fill();
    assertThat(none.find("parts needed of glazing totals \"glass\"").exact()).isEqualTo("3");
    assertThat(none.find("parts needed of board totals \"mat 4-ply\"").exact()).isEqualTo("3");
    assertThat(none.find("parts needed of board totals \"foam board\"").exact()).isEqualTo("3");
    Filled spare =
        job(3).change("spare glazing per size", "2").change("spare mats per size", "1").fill();
    assertThat(spare.find("parts needed of glazing totals \"glass\"").exact()).isEqualTo("5");
    assertThat(spare.find("parts needed of board totals \"mat 4-ply\"").exact()).isEqualTo("4");
  }
}
