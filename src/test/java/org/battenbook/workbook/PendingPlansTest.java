package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.OutputStream;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.export.TableExport;
import org.battenbook.keep.Keeping;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edits that leave the plans whose jobs they change to be made later. */
class PendingPlansTest {
  private static final String JOB =
      """
      workbook "Rails"
      page p
        table rails by rail
          given
            rail     : text
            size     : length
            quantity : count
          worked out
            tagged = if rail = "A" then sticks else 1
        table tags by tag
          for each rail of rails, number to tagged
          given
            note : text
        table bars by bar
          given
            bar : text
            size : length
        stick plan saw
          parts of rails
            length   = size
            quantity = quantity
          stock of bars
            length = size
        table bundles by bundle
          for each stick of saw sticks
          given
            note : text
        lines
          allowance = 1/8 in
          sticks    = count of saw sticks
          twice     = 2 * sticks
          longest   = row of saw sticks with largest length
          cut       : row of saw cuts = "saw: 2: 1"
          first     = cut.length
          tied      = count of bundles
          rails     = sum of quantity over rails
        rows of rails
          rail | size  | quantity
          "A"  | 20 in | 2
          "B"  | 12 in | 3
        rows of tags
          tag | note
          "B" | "plain"
        rows of bars
          bar    | size
          "long" | 60 in
      """;

  private Filled filled;
  private Filled pending;

  @BeforeEach
  void edit() {
    filled = TextLoader.of(JOB).open().fill();
    pending = later(filled, "25 in");
  }

  private static Filled later(Filled before, String size) {
    return requireNonNull(
        before.editLeavingPlans(new CellEdit(column(before, "rails", "size"), 0, size)).filled());
  }

  private static Column column(Filled filled, String table, String name) {
    return requireNonNull(table(filled, table).column(name));
  }

  private static Table table(Filled filled, String name) {
    return requireNonNull(filled.book().table(name));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sticks  | needs the plan 'saw'",
        "twice   | needs the plan 'saw'",
        "longest | needs the plan 'saw'",
        "cut     | needs the plan 'saw'",
        "first   | needs the plan 'saw'",
        "tied    | needs the plan 'saw'",
        "rails   | 5",
        "size of A | 25 in"
      })
  void what_goes_over_its_rows_or_names_them_waits_and_says_so(String place, String shown) {
    assertThat(pending.find(place).shown().text()).isEqualTo(shown);
  }

  @Test
  void it_is_told_which_plans_are_still_to_be_made() {
    assertThat(filled.pending()).isEmpty();
    assertThat(pending.pending()).containsExactly("saw");
    assertThat(pending.plans().get(0).isPending()).isTrue();
    assertThat(filled.plans().get(0).isPending()).isFalse();
  }

  @Test
  void a_pending_plan_is_made_when_it_is_asked_for() {
    Filled made = requireNonNull(pending.planned().filled());
    assertThat(made.pending()).isEmpty();
    assertThat(made.find("sticks").shown().text()).isEqualTo("2");
    assertThat(made.find("first").shown().text()).isEqualTo("12 in");
    assertThat(Told.differences(made, now("25 in"))).isEmpty();
  }

  /** Rows of the rail before it open when the plan is made. */
  @Test
  void a_cell_that_was_edited_stays_in_its_row() {
    Filled noted =
        requireNonNull(
            pending
                .editLeavingPlans(new CellEdit(column(pending, "tags", "note"), 0, "\"gilt\""))
                .filled());
    assertThat(noted.find("note of B").shown().text()).isEqualTo("gilt");
    Filled made = requireNonNull(noted.planned().filled());
    assertThat(made.rows(table(made, "tags")).keys().names()).containsExactly("A: 1", "A: 2", "B");
    assertThat(made.find("note of B").shown().text()).isEqualTo("gilt");
    assertThat(made.revisions().values())
        .singleElement()
        .asString()
        .contains("\"B\" | \"gilt\"", "\"A\"  | 25 in")
        .doesNotContain("A: 1");
  }

  private Filled now(String size) {
    return requireNonNull(
        filled.edit(new CellEdit(column(filled, "rails", "size"), 0, size)).filled());
  }

  @Test
  void a_job_that_was_planned_before_is_not_left() {
    Filled back = later(pending, "20 in");
    assertThat(back.pending()).isEmpty();
    assertThat(Told.differences(back, filled)).isEmpty();
  }

  @Test
  void an_edit_that_leaves_the_job_as_it_is_leaves_no_plan() {
    Edit edit = filled.editLeavingPlans(new FormulaEdit(filled.spot("allowance").place(), "1 in"));
    assertThat(requireNonNull(edit.filled()).pending()).isEmpty();
  }

  @Test
  void any_other_edit_makes_all_that_is_pending() {
    Edit edit = pending.edit(new FormulaEdit(pending.spot("allowance").place(), "1 in"));
    assertThat(requireNonNull(edit.filled()).pending()).isEmpty();
  }

  /** What no stick holds is not cut, so that a second stick, which a line names, is not there. */
  @Test
  void a_plan_that_lacks_a_row_that_is_named_is_refused_when_it_is_made() {
    Edit made = later(filled, "70 in").planned();
    assertThat(made.filled()).isNull();
    assertThat(Told.messages(made.diagnostics()))
        .singleElement()
        .asString()
        .contains("no-such-row", "\"saw: 2: 1\"");
  }

  @Test
  void a_workbook_with_pending_plans_is_neither_exported_nor_kept() {
    OutputStream none = OutputStream.nullOutputStream();
    List<ThrowingCallable> all =
        List.of(
            () -> SpreadsheetExport.write(pending, none),
            () -> TableExport.write(pending, table(pending, "rails"), none),
            () -> Keeping.of(pending, pending.plans()));
    for (ThrowingCallable one : all) {
      assertThatThrownBy(one)
          .isInstanceOf(PlansPending.class)
          .hasMessage("these plans are not made yet: 'saw'. Call Filled.planned() first");
    }
  }
}
