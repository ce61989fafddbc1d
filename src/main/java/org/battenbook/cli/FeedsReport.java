package org.battenbook.cli;

import java.util.List;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.derive.Feeds;
import org.battenbook.source.Ink;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;

/** Shows what depends on a value: first what reads it itself, then what those feed in turn. */
final class FeedsReport {
  /** So many rows of a column are named; more are counted. */
  private static final int MOST_ROWS = 4;

  private final Filled filled;
  private final Output out;

  FeedsReport(Filled filled, Output out) {
    this.filled = filled;
    this.out = out;
  }

  void print(FilledValue value, List<Feeds.Fed> fed) {
    out.line(Ink.HEADING, value.words() + " = " + value.shown().text());
    if (fed.isEmpty()) {
      out.line("  nothing uses it");
    }
    print("used by", fed.stream().filter(Feeds.Fed::isDirect).toList());
    print("and through those", fed.stream().filter(f -> !f.isDirect()).toList());
  }

  private void print(String heading, List<Feeds.Fed> fed) {
    if (!fed.isEmpty()) {
      out.line("  " + heading);
      fed.forEach(this::print);
    }
  }

  private void print(Feeds.Fed fed) {
    if (fed instanceof Feeds.Fed.Rows rows) {
      line(rows.words() + " = " + rows.shown().text());
    } else {
      print((Feeds.Fed.Values) fed);
    }
  }

  private void print(Feeds.Fed.Values fed) {
    Table table = fed.place().table();
    if (table != null && fed.rows().size() > MOST_ROWS) {
      line(fed.place().words() + ", in %s".formatted(rows(table, fed.rows())));
    } else {
      fed.rows().forEach(row -> line(words(fed.place(), row)));
    }
  }

  private String rows(Table table, Set<Integer> rows) {
    int all = filled.rows(table).count();
    return rows.size() == all
        ? "all %s rows".formatted(all)
        : rows.size() + " of %s rows".formatted(all);
  }

  private String words(Place place, int row) {
    FilledValue value = filled.value(new Spot(place, row));
    return value.words() + " = " + value.shown().text();
  }

  private void line(String text) {
    out.line("    " + text);
  }
}
