package org.battenbook.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.battenbook.book.Column;
import org.battenbook.book.Layer;
import org.battenbook.book.Page;
import org.battenbook.book.Place;
import org.battenbook.parse.Notes;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.ShownAs;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/** The statements of a workbook's files with other formulas, lines and changes. */
final class StatementRevision {
  private final BookRevision revision;

  StatementRevision(BookRevision revision) {
    this.revision = revision;
  }

  /**
   * Replaces the formula that decides a place, in the file that has it. A {@code shown as} stays
   * unless the new formula brings its own.
   */
  void setFormula(Place place, String formula) throws EditRefused {
    if (place instanceof Column column) {
      RowRevision.refuseComing(column);
    }
    Layer layer = place.layer();
    if (!revision.isWritten(layer.span().source())) {
      throw new EditRefused(
          "edit-of-plan",
          "'%s' is set by its plan".formatted(place.words()),
          "change the plan, its parts or its stock instead");
    }
    if (layer.formula() != null) {
      replace(layer.formula(), formula);
    } else if (place.table() != null || layer.span().source() == revision.book().source()) {
      revision.edits(layer.span().source()).insert(layer.span().end(), " = " + formula);
    } else {
      insertOnPage(place.page(), place.label() + " = " + formula);
    }
  }

  private void replace(Formula old, String formula) throws EditRefused {
    Span replaced = TypedText.namesForm(formula) ? old.span() : old.valueSpan();
    if (Notes.isIn(replaced)) {
      throw new EditRefused(
          "edit-of-noted-formula",
          "a note stands between the lines of this formula, and it would be lost",
          "move the note behind the formula in the file, then edit it");
    }
    revision.edits(replaced.source()).replace(replaced, formula);
  }

  /**
   * Inserts a statement under the head of a page of the job. Begins the page where the job has
   * none.
   */
  void insertOnPage(Page page, String statement) {
    Optional<PageSection> section =
        revision.job().pages().stream()
            .filter(p -> p.name().key().equals(page.name().key()))
            .findFirst();
    TextEdits edit = revision.edits(revision.book().source());
    if (section.isEmpty()) {
      edit.append("");
      edit.append("page " + page.name());
      edit.append("  " + statement);
    } else {
      Span head = section.get().name().span();
      String indentation = RowLines.indentation(statementStart(head), head.source());
      edit.insertLineBelow(head.start(), indentation + "  " + statement);
    }
  }

  private static int statementStart(Span span) {
    SourceText source = span.source();
    int start = source.lineStart(span.line());
    while (Character.isWhitespace(source.text().charAt(start))) {
      start++;
    }
    return start;
  }

  /** Removes the lines of a statement, with its note. */
  void removeStatement(Span statement) {
    SourceText source = statement.source();
    revision
        .edits(source)
        .removeLines(source.line(statement.start()), source.line(statement.end()));
  }

  /** The change that sets a cell; the last one where several files have one. */
  Optional<Change> changeOf(Column column, int row) {
    String name = revision.rowsOf(column.table()).name(row);
    return column.cellChanges().stream()
        .filter(change -> change.row() != null && TypedText.sameName(change.row().text(), name))
        .reduce((earlier, later) -> later);
  }

  void setChanged(Change change, String entry) throws EditRefused {
    if (entry.isEmpty()) {
      removeStatement(change.span());
    } else {
      replace(change.formula(), entry);
    }
  }

  /** Writes a change into the job: over the one that is there, else as a new one. */
  void change(ChangeEdit edit) throws EditRefused {
    Optional<Written> there = changeInJob(edit.place(), edit.row());
    if (there.isPresent()) {
      replace(there.get().formula(), edit.formula().strip());
      if (edit.because() != null) {
        revision
            .edits(revision.book().source())
            .replace(there.get().because().span(), TypedText.quoted(edit.because()));
      }
      return;
    }
    if (edit.because() == null) {
      throw new EditRefused(
          "change-without-reason",
          "the change of '%s' needs a reason".formatted(edit.place().words()),
          "enter a reason, such as \"the panels are thick\"");
    }
    if (edit.place().origin().source() == revision.book().source()) {
      throw new EditRefused(
          "edit-of-own-line",
          "'%s' is in the job itself".formatted(edit.place().words()),
          "edit its formula; only values of followed workbooks are changed with a reason");
    }
    insertChange(
        "change %s = %s because %s"
            .formatted(
                edit.target(revision), edit.formula().strip(), TypedText.quoted(edit.because())));
  }

  /** A change as it is written. */
  private record Written(Span span, Formula formula, Quoted because) {}

  private Optional<Written> changeInJob(Place place, int row) {
    if (place instanceof Column column && row >= 0) {
      return changeOf(column, row)
          .filter(change -> change.span().source() == revision.book().source())
          .map(change -> new Written(change.span(), change.formula(), change.because()));
    }
    Layer layer = place.layer();
    return layer.because() == null
            || layer.formula() == null
            || layer.span().source() != revision.book().source()
        ? Optional.empty()
        : Optional.of(new Written(layer.span(), layer.formula(), layer.because()));
  }

  /** Takes a change out of the job. */
  void removeChange(Place place, int row) throws EditRefused {
    Written there =
        changeInJob(place, row)
            .orElseThrow(
                () ->
                    new EditRefused(
                        "no-change-here",
                        "the job does not change '%s'".formatted(place.words()),
                        "remove the change in the file that has it"));
    removeStatement(there.span());
  }

  /** Inserts a change below the last one of the job, or below its head. */
  private void insertChange(String statement) {
    WorkbookFile job = revision.job();
    Span last = null;
    for (Change change : job.changes()) {
      last = later(last, change.span());
    }
    if (last == null) {
      for (Span head : headOf(job)) {
        last = later(last, head);
      }
    }
    TextEdits edit = revision.edits(revision.book().source());
    if (last == null) {
      edit.insert(0, statement + "\n");
    } else {
      edit.insertLineBelow(last.end(), statement);
    }
  }

  private static Span later(@Nullable Span one, Span other) {
    return one == null || other.end() > one.end() ? other : one;
  }

  /** What stands before the pages of a file. */
  private static List<Span> headOf(WorkbookFile file) {
    List<Span> head = new ArrayList<>();
    Optional.ofNullable(file.title()).map(Quoted::span).ifPresent(head::add);
    file.follows().forEach(follows -> head.add(follows.path().span()));
    Optional.ofNullable(file.currency()).map(Name::span).ifPresent(head::add);
    Optional.ofNullable(file.lengths()).map(ShownAs::span).ifPresent(head::add);
    file.pageOrder().forEach(page -> head.add(page.span()));
    return head;
  }
}
