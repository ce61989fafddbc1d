package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Spot;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.OpenedRows;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Diagnostics;
import org.battenbook.value.Value;

/** Works out how many rows each table opens from the rows of another. */
public final class RowCounting {
  private final Results results;
  private final Diagnostics diagnostics;
  private long rowsOfJob;
  private long rowsOfTable;

  private RowCounting(Results results, Diagnostics diagnostics) {
    this.results = results;
    this.diagnostics = diagnostics;
  }

  /**
   * Counts the rows that a program's tables are to open.
   *
   * @param diagnostics takes counts that are none, and what goes past the bound
   */
  public static OpenedRows count(Results results, Diagnostics diagnostics) {
    return new RowCounting(results, diagnostics).count();
  }

  /** The columns that say how many rows are opened. */
  public static List<Place> counts(Book book) {
    return openings(book).stream()
        .map(RowOpening::count)
        .filter(Objects::nonNull)
        .<Place>map(RowOpening.Count::upTo)
        .distinct()
        .toList();
  }

  /** All that says which rows are opened or planned. */
  public static List<Place> needs(Book book) {
    return book.tables().stream().flatMap(table -> table.rowsNeed().stream()).distinct().toList();
  }

  /** How tables open their rows, table by table. */
  private static List<RowOpening> openings(Book book) {
    return book.tables().stream().flatMap(table -> table.openings().stream()).toList();
  }

  private OpenedRows count() {
    Map<String, List<OpenedRows.Opened>> counted = new LinkedHashMap<>();
    for (Table table : results.program().book().book().tables()) {
      rowsOfTable = 0;
      table.openings().forEach(opening -> count(opening, counted));
      rowsOfJob += table.openings().isEmpty() ? results.rows(table).count() : rowsOfTable;
    }
    return new OpenedRows(false, counted, Map.of());
  }

  private void count(RowOpening opening, Map<String, List<OpenedRows.Opened>> counted) {
    List<OpenedRows.Opened> opened = opened(opening);
    if (!opened.isEmpty()) {
      counted.put(OpenedRows.key(opening), opened);
    }
  }

  private List<OpenedRows.Opened> opened(RowOpening opening) {
    RowKeys keys = results.rows(opening.from()).keys();
    List<OpenedRows.Opened> opened = new ArrayList<>();
    for (int row = 0; row < keys.names().size() && !diagnostics.isRefused(); row++) {
      int count = count(opening, row, keys.name(row));
      if (count > 0) {
        opened.add(new OpenedRows.Opened(row, keys.name(row), count));
      }
    }
    return opened;
  }

  /** A count that is at fault or waits opens nothing: it is told of by itself. */
  private int count(RowOpening opening, int row, String each) {
    if (opening.count() == null) {
      return bounded(opening, Rational.ONE, "a row is opened", each);
    }
    Column upTo = opening.count().upTo();
    Value value = results.value(new Spot(upTo, row));
    if (!(value instanceof Value.Amount amount)) {
      return 0;
    }
    Real number = amount.quantity().number();
    String said =
        (number.isExact() ? "'%s' is %s" : "'%s' is about %s, not exactly,")
            .formatted(upTo.words(), number);
    if (!(number instanceof Rational whole) || !whole.isWhole() || whole.signum() < 0) {
      diagnostics.fault(
          "rows-not-a-count",
          opening.statement(),
          "%s for \"%s\", and so many rows cannot be opened".formatted(said, each),
          "a count of rows is whole and not negative: round it in its formula");
      return 0;
    }
    return bounded(opening, whole, said, each);
  }

  private int bounded(RowOpening opening, Rational whole, String said, String each) {
    long more = whole.isSmall() ? whole.longNumerator() : Bound.ALL_ROWS.most();
    if (Bound.TABLE_ROWS.isPassedBy(rowsOfTable + more)) {
      tooMany(opening, said, each, Bound.TABLE_ROWS, "the table");
      return 0;
    }
    if (Bound.ALL_ROWS.isPassedBy(rowsOfJob + rowsOfTable + more)) {
      tooMany(opening, said, each, Bound.ALL_ROWS, "all tables together");
      return 0;
    }
    rowsOfTable += more;
    return (int) more;
  }

  private void tooMany(RowOpening opening, String said, String each, Bound most, String where) {
    diagnostics.refuse(
        "too-many-opened-rows",
        opening.statement(),
        "%s for \"%s\": with these, %s would have more than %s rows"
            .formatted(said, each, where, most.shown()),
        "check the count; where it is right, part the job in two");
  }
}
