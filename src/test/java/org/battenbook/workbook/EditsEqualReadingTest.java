package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Table;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.ChangeEdit;
import org.battenbook.edit.ChangeRemoval;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.LineAddition;
import org.battenbook.edit.LineRemoval;
import org.battenbook.edit.RowAddition;
import org.battenbook.edit.RowCopy;
import org.battenbook.edit.RowMove;
import org.battenbook.edit.RowRemoval;
import org.battenbook.edit.WorkbookEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits of random workbooks keep the {@link EditLaw}. */
class EditsEqualReadingTest {
  private static final int EDITS = 10;

  private int made;
  private int small;
  private int moved;
  private int refused;

  /** Formulas and cells of a thousand edits. */
  @Test
  void formulas_and_cells() {
    for (long seed = 1; seed <= 100; seed++) {
      edit(RandomWorkbook.of(seed), seed, RandomProposals::formulaOrCell);
    }
    assertThat(small).as("edits that read no text again").isGreaterThan(200);
    assertThat(made - small).as("edits that read their text").isGreaterThan(50);
    assertThat(refused).isGreaterThan(50);
  }

  /** A change of a cell may come to read the formula in that cell, and then it is refused. */
  @ParameterizedTest
  @CsvSource({"w + 1 in, false", "8 in, true", "3 in * 3, true"})
  void changes_of_cells_with_formulas(String entry, boolean isMade) {
    Map<String, String> texts =
        Map.of(
            "shop.batten",
            """
            workbook "shop"
            page p
              table t by name
                given
                  name : text
                  w    : length = 1 in
              rows of t
                name | w
                "a"  | 2 in + 3 in
                "b"  | 5 in
            """,
            "job.batten",
            """
            workbook "job"
            follows "shop.batten"
            change w of t "a" = 9 in because "it runs fat"
            change w of t "b" = 9 in because "it runs fat"
            """);
    Filled filled = read(texts).fill();
    Column column = (Column) filled.spot("w of a").place();
    EditLaw law = new EditLaw(texts, EditsEqualReadingTest::read);
    Filled after = law.check(filled, new CellEdit(column, 0, entry), "a change over a formula");
    assertThat(after != null).isEqualTo(isMade);
    assertThat(law.check(filled, new CellEdit(column, 1, entry), "a change over a value"))
        .isNotNull();
  }

  /** How many rows are opened, and what is read of them. */
  @Test
  void counts_of_opened_rows() {
    for (long seed = 401; seed <= 460; seed++) {
      edit(
          seed % 3 == 0 ? RandomWorkbook.withPlan(seed) : RandomWorkbook.of(seed),
          seed,
          (filled, job, random) ->
              random.nextBoolean()
                  ? RandomProposals.count(filled, random)
                  : RandomProposals.formulaOrCell(filled, job, random));
    }
    assertThat(small).as("edits that read no text again").isGreaterThan(150);
    assertThat(moved).as("of these such as move rows").isGreaterThan(50);
  }

  @Test
  void rows_lines_and_changes() {
    for (long seed = 201; seed <= 260; seed++) {
      edit(RandomWorkbook.of(seed), seed, EditsEqualReadingTest::structure);
    }
    assertThat(made).isGreaterThan(200);
    assertThat(refused).isGreaterThan(20);
  }

  @ParameterizedTest
  @ValueSource(longs = {301, 302, 303, 304, 305, 306})
  void jobs_with_plans(long seed) {
    edit(
        RandomWorkbook.withPlan(seed),
        seed,
        (filled, job, random) ->
            random.nextBoolean()
                ? RandomProposals.formulaOrCell(filled, job, random)
                : structure(filled, job, random));
  }

  /** Proposes an edit of a workbook as it is now. */
  @FunctionalInterface
  private interface Proposal {
    Optional<WorkbookEdit> of(Filled filled, RandomWorkbook job, Random random);
  }

  private void edit(RandomWorkbook job, long seed, Proposal proposal) {
    Random random = new Random(seed);
    Filled filled = job.open().fill();
    for (int i = 0; i < EDITS; i++) {
      Optional<WorkbookEdit> edit = proposal.of(filled, job, random);
      if (edit.isPresent()) {
        filled = edited(job, filled, edit.get(), "seed %d, edit %d".formatted(seed, i));
      }
    }
  }

  private Filled edited(RandomWorkbook job, Filled filled, WorkbookEdit edit, String where) {
    Filled after = new EditLaw(job.texts(), EditsEqualReadingTest::read).check(filled, edit, where);
    if (after == null) {
      refused++;
      return filled;
    }
    made++;
    boolean isSmall = after.book() == filled.book();
    small += isSmall ? 1 : 0;
    moved += isSmall && !names(after).equals(names(filled)) ? 1 : 0;
    return after;
  }

  private static List<List<String>> names(Filled filled) {
    return filled.book().tables().stream().map(table -> filled.rows(table).keys().names()).toList();
  }

  private static Workbook read(Map<String, String> texts) {
    TextLoader loader = new TextLoader();
    texts.forEach(loader::with);
    return loader.open();
  }

  private static Optional<WorkbookEdit> structure(
      Filled filled, RandomWorkbook job, Random random) {
    List<Table> tables = List.copyOf(filled.book().tables());
    Table table = tables.get(random.nextInt(tables.size()));
    int rows = filled.rows(table).count();
    if (rows == 0) {
      return Optional.empty();
    }
    int row = random.nextInt(rows);
    Map<Column, String> named =
        Map.of(requireNonNull(table.keyColumn()), "\"new %d\"".formatted(random.nextInt(1000)));
    return switch (random.nextInt(8)) {
      case 0 -> Optional.of(new RowRemoval(table, row));
      case 1 -> Optional.of(new RowCopy(table, row, named));
      case 2 -> Optional.of(new RowMove(table, row, random.nextInt(rows + 1)));
      case 3 -> Optional.of(new RowAddition(table, named));
      case 4 ->
          RandomProposals.formulaOrCell(filled, job, random).map(edit -> changed(edit, random));
      case 5 -> anyLine(filled, random).map(line -> new ChangeRemoval(line, -1));
      case 6 -> anyLine(filled, random).map(LineRemoval::new);
      default ->
          Optional.of(
              new LineAddition(
                  table.page(), "new %d = %d in".formatted(random.nextInt(99), row + 1)));
    };
  }

  private static WorkbookEdit changed(WorkbookEdit edit, Random random) {
    String because = random.nextInt(4) == 0 ? null : "the \"law\" says so";
    if (edit instanceof CellEdit cell) {
      return new ChangeEdit(cell.column(), cell.row(), cell.entry(), because);
    }
    FormulaEdit formula = (FormulaEdit) edit;
    return new ChangeEdit(formula.place(), -1, formula.formula(), because);
  }

  private static Optional<Line> anyLine(Filled filled, Random random) {
    List<Line> lines =
        filled.book().pages().stream().flatMap(page -> page.lines().stream()).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(lines.get(random.nextInt(lines.size())));
  }
}
