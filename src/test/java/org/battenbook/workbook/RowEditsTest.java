package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.battenbook.book.Column;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Edits that open and close rows keep the {@link EditLaw} without reading a text again, over the
 * edges of chunks of 1024 rows too.
 */
class RowEditsTest {
  /** Three pieces open places, these open hooks; all that can be read of rows is read of them. */
  private static final String JOB =
      """
      workbook "Opened"
      page p
        table pieces by title
          given
            title    : text
            width    : length
            quantity : count = 1
            first    : row of places
          worked out
            hung  = if width > least then quantity else 0
            ends  = sum of left over places where piece = this
            at    = first.left
            mid   = row of places where piece = this with smallest left
            there = mid.width
        table places by place
          for each piece of pieces, number to hung
          given
            note : text = "as planned"
            wall : row of walls = "north"
          worked out
            left  = if first row then 0 in else above.left + above.piece.width
            width = piece.width + stretch ± 1/16 in
            hooks = if note = "none" then 0 else wall.hooks
            label = "{number} of {piece}"
        table walls by wall
          given
            wall  : text
            hooks : count = 1
        table screws by screw
          for each place of places, number to hooks
          worked out
            mark = place.left + number * 1 in
            last = if first row then mark else above.mark
        lines
          least   = 4 in
          stretch = 1 in
          many    = count of places
          most    = largest of mark over screws
          twice   = 2 * many
          width   = sum of width over places where note <> "none"
          low     = sum of stretch over places
          nested  = sum of (sum of 1 in over places) over walls
          widest  = row of places with largest left
          across  = widest.left
        rows of walls
          wall    | hooks
          "north" | 2
          "south" |
        rows of pieces
          title   | width | quantity | first
          "Tide"  | 11 in | 1200     | "Tide: 1"
          "Ferry" | 9 in  | 3        |
          "Stamp" | 2 in  | 5        |
        rows of places
          place      | note
          "Ferry: 2" | "none"
          "Tide: 7"  | "none"
      """;

  private static final List<String> COUNTS =
      List.of("0", "1", "2", "3", "1020", "1021", "1024", "1025", "1030", "2047", "2100", "");

  private final EditLaw law =
      new EditLaw(
          Map.of("job.batten", JOB), texts -> opened(requireNonNull(texts.get("job.batten"))));

  private static Workbook opened(String text) {
    return new TextLoader().with("job.batten", text).open();
  }

  private static Column column(Filled filled, String table, String name) {
    return requireNonNull(requireNonNull(filled.book().table(table)).column(name));
  }

  private static CellEdit quantity(Filled filled, int row, String count) {
    return new CellEdit(column(filled, "pieces", "quantity"), row, count);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void an_edit_of_how_many_rows_there_are_is_what_reading_its_text_gives(long seed) {
    Random random = new Random(seed);
    Filled filled = opened(JOB).fill();
    int small = 0;
    for (int i = 0; i < 25; i++) {
      Filled after = law.check(filled, edit(filled, random), "seed %d, %d".formatted(seed, i));
      small += after != null && after.book() == filled.book() ? 1 : 0;
      filled = after == null ? filled : after;
    }
    assertThat(small).as("edits that read no text").isGreaterThan(10);
  }

  private static WorkbookEdit edit(Filled filled, Random random) {
    return switch (random.nextInt(6)) {
      case 0 ->
          new FormulaEdit(filled.spot("least").place(), random.nextBoolean() ? "1 in" : "10 in");
      case 1 ->
          new CellEdit(column(filled, "walls", "hooks"), random.nextInt(2), "" + random.nextInt(4));
      case 2 -> new CellEdit(column(filled, "pieces", "width"), random.nextInt(3), "5 in");
      default -> quantity(filled, random.nextInt(3), COUNTS.get(random.nextInt(COUNTS.size())));
    };
  }

  /** Shrinking by whole chunks leaves no chunk that changed. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "1", "1017", "1024", "1199", "1200", "3000"})
  void rows_that_close_and_open_again_are_the_rows_there_were(String count) {
    Filled filled =
        opened(JOB.replace("\"Tide: 1\"", "").replace("\"Tide: 7\"  |", "\"Ferry: 3\" |")).fill();
    for (String there : List.of("0", "1", "1024", "2048")) {
      Filled before = requireNonNull(filled.edit(quantity(filled, 0, there)).filled());
      Filled away = requireNonNull(before.edit(quantity(before, 0, count)).filled());
      Filled back = requireNonNull(away.edit(quantity(away, 0, there)).filled());
      assertThat(back.book()).isSameAs(filled.book());
      assertThat(Told.differences(back, before)).as("%s, %s and back", there, count).isEmpty();
    }
  }

  /** What a quantity does not reach is not worked out again. */
  @Test
  void only_what_rows_feed_is_worked_out_again() {
    Filled filled = opened(JOB).fill();
    Edit edit = filled.edit(quantity(filled, 2, "7"));
    List<String> ran = new ArrayList<>();
    edit.ran().forEach(place -> ran.add(place.words()));
    assertThat(ran)
        .contains("quantity of pieces", "hung of pieces")
        .doesNotContain("many", "label of places");
  }

  private int pending;

  @Test
  void plans_left_pending_and_made_then_are_plans_made_at_once() {
    for (long seed = 1; seed <= 40; seed++) {
      RandomWorkbook job = RandomWorkbook.withPlan(seed);
      Random random = new Random(seed);
      Filled filled = job.open().fill();
      for (int i = 0; i < 10; i++) {
        WorkbookEdit edit =
            random.nextBoolean()
                ? ofPlan(filled, random)
                : RandomProposals.formulaOrCell(filled, job, random).orElse(null);
        if (edit != null) {
          filled = pendingThenPlanned(filled, edit, "seed %d, edit %d".formatted(seed, i));
        }
      }
    }
    assertThat(pending).as("edits that left a plan").isGreaterThan(50);
  }

  /** An edit of what a plan cuts, or cuts it from. */
  private static WorkbookEdit ofPlan(Filled filled, Random random) {
    String length = "%d in".formatted(7 + random.nextInt(50));
    return switch (random.nextInt(3)) {
      case 0 -> new FormulaEdit(column(filled, "pieces", "long"), length);
      case 1 -> new FormulaEdit(column(filled, "pieces", "needed"), "" + random.nextInt(4));
      default -> new CellEdit(column(filled, "bars", "size"), random.nextInt(2), length);
    };
  }

  private Filled pendingThenPlanned(Filled filled, WorkbookEdit edit, String as) {
    Edit later = filled.editLeavingPlans(edit);
    pending += later.filled() == null || later.filled().pending().isEmpty() ? 0 : 1;
    Edit made = later.filled() == null ? later : later.filled().planned();
    Edit now = filled.edit(edit);
    assertThat(made.filled() == null).as(as).isEqualTo(now.filled() == null);
    if (made.filled() == null || now.filled() == null) {
      assertThat(Told.messages(made.diagnostics()))
          .as(as)
          .isEqualTo(Told.messages(now.diagnostics()));
      return filled;
    }
    assertThat(made.filled().pending()).as(as).isEmpty();
    assertThat(Told.differences(made.filled(), now.filled())).as(as).isEmpty();
    assertThat(Told.messages(made.filled())).as(as).isEqualTo(Told.messages(now.filled()));
    return made.filled();
  }
}
