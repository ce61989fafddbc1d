package org.battenbook.bind;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.Column;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.RowCells;

/**
 * Checks the rows that people write for a table whose rows are opened: whether each of them names
 * an existing row, and whether two of them enter the same cell.
 */
public final class FillIns {
  private final Rows rows;
  private final Table table;
  private final Diagnostics diagnostics;

  /** Where each cell was entered. */
  private final Map<Spot, Span> cells = new HashMap<>();

  private FillIns(Rows rows, Diagnostics diagnostics) {
    this.rows = rows;
    this.table = rows.table();
    this.diagnostics = diagnostics;
  }

  /**
   * Checks all rows that people write for a table.
   *
   * @param rows the rows of the table, as far as they are known
   * @param diagnostics receives rows that do not exist, and rows and cells entered twice
   */
  public static void check(Rows rows, Diagnostics diagnostics) {
    FillIns fillIns = new FillIns(rows, diagnostics);
    rows.table().segments().forEach(fillIns::check);
  }

  private void check(RowSegment segment) {
    Map<Integer, RowSegment.Filled> seen = new HashMap<>();
    for (int at = 0; at < segment.filled().size(); at++) {
      RowSegment.Filled filled = segment.filled().get(at);
      int row = rows.row(segment, at);
      RowSegment.Filled earlier = row == Rows.NO_ROW ? null : seen.putIfAbsent(row, filled);
      if (row == Rows.NO_ROW) {
        checkMayBeOpened(filled);
      } else if (earlier != null) {
        rowFilledTwice(filled, earlier);
      } else {
        refuseTwice(segment, at, row);
      }
    }
  }

  private void rowFilledTwice(RowSegment.Filled filled, RowSegment.Filled earlier) {
    diagnostics.fault(
        "row-filled-twice",
        filled.at(),
        "'%s' has two entries for this row; the other is at %s"
            .formatted(table, earlier.at().place()),
        "write all cells of a row in one line");
  }

  /**
   * Refuses a second entry for a cell in one file, since it is not clear which of them is meant. An
   * entry in another file replaces it instead.
   */
  private void refuseTwice(RowSegment segment, int at, int row) {
    RowCells written = segment.cells();
    for (int i = 0; i < segment.columns().size(); i++) {
      Column column = segment.columns().get(i);
      if (!column.isOpened() && !written.isEmpty(at, i)) {
        Span here = written.span(at, i);
        Span earlier = cells.put(new Spot(column, row), here);
        if (earlier != null && earlier.source() == here.source()) {
          cellFilledTwice(column, here, earlier);
        }
      }
    }
  }

  private void cellFilledTwice(Column column, Span here, Span earlier) {
    diagnostics.fault(
        "cell-filled-twice",
        here,
        "'%s' of this row of '%s' is already entered, at %s"
            .formatted(column.name(), table, earlier.place()),
        "remove one of the two");
  }

  /** Reports a row that does not exist, unless a count that is not known yet can still open it. */
  private void checkMayBeOpened(RowSegment.Filled filled) {
    if (!rows.mayAppear(filled.name())) {
      notOpened(filled);
    }
  }

  private void notOpened(RowSegment.Filled filled) {
    diagnostics.fault(
        "row-not-opened",
        filled.at(),
        "'%s' has no row \"%s\": its rows come from '%s'%s"
            .formatted(table, filled.name(), sources(), words(", as many of each as its '%s'")),
        () ->
            NearNames.questionOr(
                "name a row of '%s'%s".formatted(sources(), words(", and a number up to its '%s'")),
                filled.name(),
                rows.keys().names()));
  }

  private String sources() {
    return String.join(
        "' and '", table.openings().stream().map(opening -> opening.from().toString()).toList());
  }

  /** A clause about the column with the count; empty if each row opens one row. */
  private String words(String clause) {
    return table.openings().stream()
        .map(RowOpening::count)
        .flatMap(count -> Optional.ofNullable(count).stream())
        .findFirst()
        .map(count -> clause.formatted(count.upTo().name()))
        .orElse("");
  }
}
