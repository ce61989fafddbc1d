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
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Diagnostics;
import org.battenbook.value.Value;

/** Works out how many rows each table opens from the rows of another. */
public final class RowCounting {
  /** So many rows may be opened in all. */
  static final long MOST_ROWS = 1_000_000;

  private final Results results;
  private final Diagnostics diagnostics;
  private long rows;

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
    for (RowOpening opening : openings(results.program().book().book())) {
      List<OpenedRows.Opened> opened = opened(opening);
      if (!opened.isEmpty()) {
        counted.put(OpenedRows.key(opening), opened);
      }
    }
    return new OpenedRows(false, counted, Map.of());
  }

  private List<OpenedRows.Opened> opened(RowOpening opening) {
    RowKeys keys = results.program().book().keys(opening.from());
    List<OpenedRows.Opened> opened = new ArrayList<>();
    for (int row = 0; row < opening.from().rowCount(); row++) {
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
    boolean fits = whole.isSmall() && whole.longNumerator() <= MOST_ROWS - rows;
    if (!fits) {
      diagnostics.fault(
          "too-many-opened-rows",
          opening.statement(),
          "%s for \"%s\": more than %,d rows would be opened".formatted(said, each, MOST_ROWS),
          "is the count right? else part the job in two");
      return 0;
    }
    rows += whole.longNumerator();
    return (int) whole.longNumerator();
  }
}
