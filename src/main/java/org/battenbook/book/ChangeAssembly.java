package org.battenbook.book;

import java.util.List;
import java.util.stream.Stream;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** Lays {@code change … because} over what was inherited. */
final class ChangeAssembly {
  private final Book book;
  private final Diagnostics diagnostics;

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
      ((Column) place).changeCell(change);
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
          "there are lines called '%s' on the pages %s"
              .formatted(change.place(), String.join(" and ", pages)),
          "say which: 'change %s.%s = …'".formatted(pages.get(0), change.place()));
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
    List<String> lines =
        book.pages().stream()
            .flatMap(page -> page.lines().stream())
            .map(line -> line.name().text())
            .toList();
    diagnostics.fault(
        "no-such-line",
        name.span(),
        "no inherited line is called '%s'".formatted(name),
        columns.isEmpty()
            ? NearNames.question(name.text(), lines)
            : "it is a column: write '" + String.join("' or '", columns) + "'");
  }

  /** The same thing changed by two workbooks of which neither follows the other. */
  private boolean clashes(Change change, Place place) {
    SourceText here = change.span().source();
    for (Layer layer : place.layers()) {
      SourceText there = layer.span().source();
      boolean again = there == here && layer.because() != null;
      if (again || !book.sees(here, there)) {
        diagnostics.fault(
            again ? "changed-twice" : "changes-clash",
            change.place().span(),
            "'%s' is changed at %s already".formatted(change.place(), layer.span().place()),
            again
                ? "keep one of the two"
                : "follow that workbook from this one, or take one of the two changes out");
        return true;
      }
    }
    return false;
  }

  private boolean isSeen(Change change, Place place) {
    return book.sees(change.span().source(), place.origin().source());
  }
}
