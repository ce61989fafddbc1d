package org.battenbook.workbook;

import java.util.Optional;
import org.battenbook.book.Book;
import org.battenbook.book.BookAssembly;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.OpenedRows;
import org.battenbook.check.BookCheck;
import org.battenbook.check.CheckedBook;
import org.battenbook.cutting.Planning;
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
  private final Planning planning;

  /**
   * Rounds over the files of a job.
   *
   * @param reading what was found in reading them
   * @param counting takes what is wrong with the counts
   */
  Rounds(FollowedFiles files, Diagnostics reading, Diagnostics counting, Planning planning) {
    this.files = files;
    this.reading = reading;
    this.counting = counting;
    this.planning = planning;
  }

  /** All those rows; where a fault is in the way, those that came before it. */
  OpenedRows opened() {
    OpenedRows opened = OpenedRows.NONE_YET;
    Optional<OpenedRows> next = next(opened);
    while (next.isPresent() && !next.get().equals(opened)) {
      opened = next.get();
      next = next(opened);
    }
    return next.map(OpenedRows::settled).orElse(opened);
  }

  /** The rows that come of those that are there already. */
  private Optional<OpenedRows> next(OpenedRows opened) {
    Diagnostics found = reading.copy();
    Book book = BookAssembly.assemble(files, opened, found);
    if (book.tables().stream().allMatch(table -> table.openings().isEmpty())
        && book.plans().isEmpty()) {
      return Optional.of(opened);
    }
    CheckedBook checked = BookCheck.check(book, RowCounting.needs(book), found);
    Program program = found.hasFaults() ? null : Program.compile(checked, found);
    return program == null || counting.hasFaults()
        ? Optional.empty()
        : Optional.of(next(opened, Evaluator.fill(program)));
  }

  /** Only what is counted to the end is planned: a plan of half the parts would be in vain. */
  private OpenedRows next(OpenedRows opened, Results results) {
    OpenedRows counted = RowCounting.count(results, counting).with(opened.planned());
    return counted.equals(opened) ? counted.with(planning.plan(results)) : counted;
  }
}
