package org.battenbook.workbook;

import java.util.List;
import java.util.Optional;
import org.battenbook.book.Book;
import org.battenbook.book.BookAssembly;
import org.battenbook.book.Column;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.OpenedRows;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.BookCheck;
import org.battenbook.check.CheckedBook;
import org.battenbook.cutting.RowPlanner;
import org.battenbook.evaluate.Evaluator;
import org.battenbook.evaluate.Program;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowCounting;
import org.battenbook.source.Diagnostics;

/**
 * Which rows tables open from others, and which come of plans, is known only when a book was filled
 * that far. So it is put together without them, filled as far as they need, and put together again
 * with them, until none are new.
 */
final class Rounds {
  private final FollowedFiles files;
  private final Diagnostics reading;
  private final Diagnostics counting;
  private final RowPlanner planning;

  /**
   * Rounds over the files of a job.
   *
   * @param reading what was found in reading them
   * @param counting takes what is wrong with the counts
   */
  Rounds(FollowedFiles files, Diagnostics reading, Diagnostics counting, RowPlanner planning) {
    this.files = files;
    this.reading = reading;
    this.counting = counting;
    this.planning = planning;
  }

  /**
   * All those rows; where a fault is in the way, those that came before it.
   *
   * @param likely rows to try first, such as those before an edit; none to begin anew
   */
  OpenedRows opened(OpenedRows likely) {
    Diagnostics notTold = new Diagnostics();
    Rounds tried = new Rounds(files, reading, notTold, planning);
    Optional<OpenedRows> settled =
        likely.equals(OpenedRows.NONE_YET) ? Optional.empty() : tried.from(likely.unsettled());
    return settled.orElseGet(this::anew);
  }

  /**
   * Goes on from some rows until no others come. Whatever they are, each round sets right all that
   * hangs on what is right already; but they may be at fault in a way that the right rows are not.
   *
   * @return empty where a fault is in the way
   */
  private Optional<OpenedRows> from(OpenedRows first) {
    Optional<OpenedRows> next = next(assembled(first), first);
    while (next.isPresent() && !next.get().areSettled()) {
      next = next(assembled(next.get()), next.get());
    }
    return next;
  }

  private OpenedRows anew() {
    OpenedRows opened = OpenedRows.NONE_YET;
    Optional<OpenedRows> next = next(assembled(opened), opened);
    while (next.isPresent() && !next.get().areSettled()) {
      opened = next.get();
      next = next(assembled(opened), opened);
    }
    return next.orElse(opened);
  }

  /** A book put together, and what was found in doing so. */
  private record Draft(Book book, Diagnostics found) {}

  private Draft assembled(OpenedRows opened) {
    Diagnostics found = reading.copy();
    return new Draft(BookAssembly.assemble(files, opened, found), found);
  }

  /**
   * What a book comes to that was put together with some rows: first the counts, which need little
   * of it, and plans only where no count changes. Nothing where a fault is in the way.
   */
  private Optional<OpenedRows> next(Draft draft, OpenedRows opened) {
    boolean opens = draft.book().tables().stream().anyMatch(table -> !table.openings().isEmpty());
    Optional<OpenedRows> counted =
        opens
            ? filled(draft, RowCounting.counts(draft.book()))
                .map(results -> RowCounting.count(results, counting).with(opened.planned()))
            : Optional.of(opened);
    if (counted.isEmpty() || !counted.get().equals(opened)) {
      return counted;
    }
    return draft.book().plans().isEmpty()
        ? Optional.of(opened.settled())
        : filled(draft, RowCounting.needs(draft.book())).map(results -> planned(results, opened));
  }

  private OpenedRows planned(Results results, OpenedRows opened) {
    OpenedRows planned = opened.with(planning.plan(results));
    return planned.equals(opened) || !readsPlans(results) ? planned.settled() : planned;
  }

  /** Filled as far as some places need; not at all where a fault is in the way. */
  private Optional<Results> filled(Draft draft, List<Place> places) {
    if (draft.found().isRefused()) {
      return Optional.empty();
    }
    Diagnostics found = draft.found().copy();
    CheckedBook checked = BookCheck.check(draft.book(), places, found);
    Program program = found.hasFaults() ? null : Program.compile(checked, found);
    return program == null || counting.hasFaults()
        ? Optional.empty()
        : Optional.of(Evaluator.fill(program));
  }

  /** Whether rows come of what is planned in turn; else a plan is the last to bring any. */
  private static boolean readsPlans(Results results) {
    CheckedBook checked = results.program().book();
    return checked.book().tables().stream()
            .flatMap(table -> table.openings().stream())
            .anyMatch(opening -> comesOfPlan(opening.from()))
        || checked.places().stream()
            .anyMatch(one -> one.place() instanceof Column column && comesOfPlan(column.table()));
  }

  private static boolean comesOfPlan(Table table) {
    return table.plan() != null
        || table.openings().stream().anyMatch(opening -> comesOfPlan(opening.from()));
  }
}
