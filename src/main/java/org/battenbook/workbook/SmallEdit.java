package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.battenbook.book.Column;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Layer;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.evaluate.Program;
import org.battenbook.evaluate.Refill;
import org.battenbook.parse.CellReader;
import org.battenbook.parse.FormulaParser;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.tolerance.Tolerances;

/**
 * An edit of one formula or one cell that moves no row, no kind, no form and no plan: only what it
 * feeds is worked out again. It gives what reading the changed text would give. Where that is in
 * doubt, it is not made, and {@link TextEdit} does read the text.
 */
final class SmallEdit {
  private final Filled filled;
  private final WorkbookEdit edit;
  private final CheckedBook before;

  SmallEdit(Filled filled, WorkbookEdit edit) {
    this.filled = filled;
    this.edit = edit;
    this.before = filled.checked();
  }

  /** What came of it; empty where the text has to be read again. */
  Optional<Edit> made() {
    if (edit instanceof FormulaEdit of) {
      return formula(of);
    }
    return edit instanceof CellEdit of ? cell(of) : Optional.empty();
  }

  private Optional<Edit> formula(FormulaEdit of) {
    Place place = of.place();
    Layer layer = place.layer();
    Formula old = layer.formula();
    boolean isPlain =
        old != null && isOneLine(old.span()) && layer.span().source().statement() == null;
    if (!isPlain) {
      return Optional.empty();
    }
    SourceText typed = SourceText.of("edit", of.formula().strip(), layer.span());
    Formula formula = FormulaParser.parse(typed, new Diagnostics());
    return formula == null || formula.shownAs() != null
        ? Optional.empty()
        : before.withFormula(place, formula).flatMap(after -> refilled(after, place, -1));
  }

  private static boolean isOneLine(Span span) {
    return span.line() == span.source().line(span.end());
  }

  private Optional<Edit> cell(CellEdit of) {
    Column column = of.column();
    boolean mayUncover = of.entry().isBlank() && !column.table().openings().isEmpty();
    Optional<Span> row =
        mayUncover || column == column.table().keyColumn()
            ? Optional.empty()
            : filled.revision(List.of()).rowOf(column, of.row());
    return row.flatMap(at -> cell(of, at));
  }

  private Optional<Edit> cell(CellEdit of, Span row) {
    SourceText typed = SourceText.of("edit", of.entry().strip(), row);
    Diagnostics found = new Diagnostics();
    Formula entry = CellReader.typed(typed, found);
    return found.hasFaults()
        ? Optional.empty()
        : before
            .withCell(of.column(), filled.rows(of.column().table()), of.row(), entry)
            .flatMap(after -> refilled(after, of.column(), of.row()));
  }

  private Optional<Edit> refilled(CheckedBook edited, Place place, int row) {
    return program()
        .tolerances()
        .after(edited)
        .flatMap(tolerances -> refilled(tolerances, place, row));
  }

  private Program program() {
    return filled.results().program();
  }

  private Optional<Edit> refilled(Tolerances after, Place place, int row) {
    Optional<Set<Place>> changed = after.book().changesFrom(before);
    Diagnostics found = new Diagnostics();
    Program program = changed.isEmpty() ? null : program().edited(after, changed.get(), found);
    if (program == null || !found.inOrder().isEmpty()) {
      return Optional.empty();
    }
    return Refill.after(
            program,
            filled.results(),
            changed.orElseThrow(),
            one -> one == place || one instanceof ErrorBound ? row : -1,
            filled.reading().planning())
        .filter(refilled -> !refilled.results().areCutShort() && knowsSameRows(refilled))
        .map(
            refilled ->
                new Edit(
                    new Filled(refilled.results(), filled.reading(), pending()),
                    refilled.ran(),
                    List.of()));
  }

  /** Whether the rows of the same tables are all known. */
  private boolean knowsSameRows(Refill.Refilled refilled) {
    return before.book().tables().stream()
        .allMatch(
            table ->
                Objects.equals(
                    filled.results().missingRows(table), refilled.results().missingRows(table)));
  }

  private List<WorkbookEdit> pending() {
    List<WorkbookEdit> pending = new ArrayList<>(filled.pending());
    pending.removeIf(this::isReplaced);
    pending.add(edit);
    return pending;
  }

  private boolean isReplaced(WorkbookEdit earlier) {
    if (edit instanceof FormulaEdit of) {
      return earlier instanceof FormulaEdit other && other.place() == of.place();
    }
    return edit instanceof CellEdit of
        && earlier instanceof CellEdit other
        && other.column() == of.column()
        && other.row() == of.row();
  }
}
