package org.battenbook.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Quoted;
import org.jspecify.annotations.Nullable;

/** Applies {@code change … because} statements to inherited lines, columns and cells. */
final class ChangeAssembly {
  private final Book book;
  private final Diagnostics diagnostics;

  /** Where each cell is changed. */
  private final Map<Cell, List<Span>> cellChanges = new HashMap<>();

  private record Cell(Column column, String row) {}

  ChangeAssembly(Book book, Diagnostics diagnostics) {
    this.book = book;
    this.diagnostics = diagnostics;
  }

  void add(Change change) {
    Place place = change.row() == null ? line(change) : null;
    place = place == null && change.page() == null ? column(change) : place;
    if (place == null) {
      nothingToChange(change);
    } else if (change.row() != null) {
      changeCell(change, change.row(), (Column) place);
    } else if (!clashes(change, place)) {
      place.set(new Layer(change.formula(), change.because(), change.note(), change.span()));
    }
  }

  private @Nullable Line line(Change change) {
    List<Line> found =
        book.pages().stream()
            .filter(page -> change.page() == null || page.name().key().equals(change.page().key()))
            .flatMap(page -> Stream.ofNullable(page.line(change.place().key())))
            .filter(line -> isSeen(change, line))
            .toList();
    if (found.size() > 1) {
      List<String> pages = found.stream().map(line -> line.page().toString()).toList();
      diagnostics.fault(
          "ambiguous-name",
          change.place().span(),
          "there is a line '%s' on the pages %s"
              .formatted(change.place(), String.join(" and ", pages)),
          "name the page: 'change %s.%s = …'".formatted(pages.get(0), change.place()));
    }
    return found.isEmpty() ? null : found.get(0);
  }

  private @Nullable Column column(Change change) {
    for (Change.ColumnOfTable reading : change.columnReadings()) {
      Table table = book.table(reading.table().key());
      Column column = table == null ? null : table.column(reading.column().key());
      if (column != null && isSeen(change, column)) {
        return column;
      }
    }
    return null;
  }

  private void nothingToChange(Change change) {
    for (Change.ColumnOfTable reading : change.columnReadings()) {
      Table table = book.table(reading.table().key());
      if (table != null) {
        diagnostics.fault(
            "no-such-column",
            change.place().span(),
            "table '%s' has no column '%s'".formatted(table, reading.column()),
            () ->
                NearNames.question(
                    reading.column().text(),
                    table.columns().stream().map(c -> c.name().text()).toList()));
        return;
      }
    }
    Name name = change.place();
    List<String> columns =
        book.tables().stream()
            .filter(table -> table.column(name.key()) != null)
            .map(table -> "change %s of %s = …".formatted(name, table))
            .toList();
    diagnostics.fault(
        "no-such-line",
        name.span(),
        "there is no line '%s' in the followed workbooks".formatted(name),
        () ->
            columns.isEmpty()
                ? NearNames.question(name.text(), lines())
                : "it is a column: write '" + String.join("' or '", columns) + "'");
  }

  private List<String> lines() {
    return book.pages().stream()
        .flatMap(page -> page.lines().stream())
        .map(line -> line.name().text())
        .toList();
  }

  private void changeCell(Change change, Quoted row, Column column) {
    Cell cell = new Cell(column, Name.key(row.text()));
    List<Span> earlier = cellChanges.computeIfAbsent(cell, c -> new ArrayList<>());
    if (earlier.stream().noneMatch(one -> clashes(change, one))) {
      earlier.add(change.span());
      column.changeCell(change);
    }
  }

  /**
   * Whether a change of a line or a column clashes with an earlier layer: another change in the
   * same file, or a layer of a file that this one does not follow. It reports the clash.
   */
  private boolean clashes(Change change, Place place) {
    return place.layers().stream()
        .filter(layer -> layer.because() != null || !isSeen(change, layer.span()))
        .anyMatch(layer -> clashes(change, layer.span()));
  }

  /**
   * Whether two changes of the same thing clash: in one file, or in a file that is not followed.
   */
  private boolean clashes(Change change, Span earlier) {
    boolean again = earlier.source() == change.span().source();
    if (!again && isSeen(change, earlier)) {
      return false;
    }
    diagnostics.fault(
        again ? "changed-twice" : "changes-clash",
        change.place().span(),
        "'%s' is already changed at %s".formatted(words(change), earlier.place()),
        again
            ? "remove one of the two"
            : "follow that workbook from this one, or remove one of the two changes");
    return true;
  }

  /** The name of what is changed, as written. */
  private static String words(Change change) {
    Quoted row = change.row();
    return row == null ? change.place().text() : "%s \"%s\"".formatted(change.place(), row.text());
  }

  private boolean isSeen(Change change, Span earlier) {
    return book.sees(change.span().source(), earlier.source());
  }

  private boolean isSeen(Change change, Place place) {
    return isSeen(change, place.origin());
  }
}
