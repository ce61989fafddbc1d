package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
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
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.parse.CellReader;
import org.battenbook.parse.FormulaParser;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.tolerance.Tolerances;

/**
 * An edit of one formula or one cell that changes no kind and no form. It works out again only what
 * it feeds, rows and plans included, and gives what reading the changed text would give. Where that
 * is in doubt, {@link TextEdit} reads the text instead.
 */
final class SmallEdit {
  private final Filled filled;
  private final WorkbookEdit edit;
  private final CheckedBook before;
  private final RowPlanner planner;

  /**
   * An edit that is not made yet.
   *
   * @param planner makes the plans whose jobs it changes
   */
  SmallEdit(Filled filled, WorkbookEdit edit, RowPlanner planner) {
    this.filled = filled;
    this.edit = edit;
    this.planner = planner;
    this.before = filled.checked();
  }

  /** The outcome; empty where the text has to be read again. */
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
            planner)
        .flatMap(refilled -> Edit.of(refilled, filled.reading(), edits()));
  }

  /** The edits that the texts do not hold yet. */
  private List<WorkbookEdit> edits() {
    List<WorkbookEdit> edits = new ArrayList<>(filled.edits());
    edits.removeIf(this::isReplaced);
    edits.add(edit);
    return edits;
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
