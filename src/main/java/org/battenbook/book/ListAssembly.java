package org.battenbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.listing.Listing;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.ListedRows;
import org.battenbook.syntax.RowCells;
import org.battenbook.unit.Units;
import org.jspecify.annotations.Nullable;

/**
 * Adds the rows of a list to a table. It matches the headings of the list to input columns, and
 * generates the text that a workbook would have for the cells. So later stages read lists and
 * written rows in the same way.
 */
final class ListAssembly {
  /**
   * The highest number of rows above the headings, for titles such as a supplier's name or a date.
   */
  private static final int MOST_TITLES = 20;

  private final ListedRows statement;
  private final Table table;
  private final Listing list;
  private final Diagnostics diagnostics;
  private final List<@Nullable ListHeading> headings = new ArrayList<>();
  private final ListText text = new ListText();
  private SourceText source;

  private ListAssembly(ListedRows statement, Table table, Listing list, Diagnostics diagnostics) {
    this.statement = statement;
    this.table = table;
    this.list = list;
    this.diagnostics = diagnostics;
    this.source = statement.span().source();
  }

  /**
   * Generates the rows of a list.
   *
   * @return the rows; empty after a fault if no heading names the key column
   */
  static Optional<RowSegment> segment(
      ListedRows statement, Table table, Listing list, Diagnostics diagnostics) {
    return new ListAssembly(statement, table, list, diagnostics).segment();
  }

  private Optional<RowSegment> segment() {
    int headingRow = headingRow();
    if (headingRow == list.rows().size()) {
      diagnostics.fault(
          "list-empty",
          statement.file().span(),
          "'%s' is empty".formatted(statement.file().text()),
          "write names of columns of '%s' in its first row".formatted(table));
      return Optional.empty();
    }
    List<String> written = list.rows().get(headingRow);
    written.forEach(heading -> headings.add(ListHeading.of(heading, table).orElse(null)));
    generate(headingRow);
    source = text.source(list.name());
    checkHeadings();
    return column(table.keyName().key()) < 0 ? Optional.empty() : Optional.of(rows(written.size()));
  }

  /**
   * The row with the headings: the first one that names the key column, with at most {@link
   * #MOST_TITLES} titles above it; else the first row that is not blank.
   */
  private int headingRow() {
    int rowCount = list.rows().size();
    int first = 0;
    while (first < rowCount && isBlank(list.rows().get(first))) {
      first++;
    }
    for (int row = first; row < Math.min(rowCount, first + MOST_TITLES); row++) {
      if (list.rows().get(row).stream().anyMatch(this::namesKey)) {
        return row;
      }
    }
    return first;
  }

  private boolean namesKey(String cell) {
    return ListHeading.of(cell, table).filter(h -> h.column() == table.keyColumn()).isPresent();
  }

  private static boolean isBlank(List<String> cells) {
    return cells.stream().allMatch(String::isBlank);
  }

  /** Generates a line for each row of the list, so that line numbers are row numbers. */
  private void generate(int headingRow) {
    for (int row = 0; row < list.rows().size(); row++) {
      if (row == headingRow) {
        list.rows().get(row).forEach(heading -> text.cell(ListHeading.spaced(heading)));
      } else if (row > headingRow) {
        generate(list.rows().get(row));
      }
      text.endLine();
    }
  }

  /** Generates the cells of one row; none if all cells of the table's columns are blank. */
  private void generate(List<String> row) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      ListHeading heading = headings.get(i);
      if (heading != null) {
        cells.add(i < row.size() ? heading.cell(row.get(i)) : "");
      }
    }
    if (!isBlank(cells)) {
      cells.forEach(text::cell);
    }
  }

  private List<ListHeading> matched() {
    List<ListHeading> matched = new ArrayList<>();
    for (ListHeading heading : headings) {
      if (heading != null) {
        matched.add(heading);
      }
    }
    return matched;
  }

  private RowSegment rows(int firstCell) {
    List<ListHeading> matched = matched();
    RowCells cells = text.rows(source, firstCell, matched.size());
    int key = column(table.keyName().key());
    for (int row = 0; row < cells.rowCount(); row++) {
      if (cells.isEmpty(row, key)) {
        diagnostics.fault(
            "row-without-name",
            cells.span(row, key),
            "this row of '%s' has no '%s', which names it".formatted(table, table.keyName()),
            "enter a value in column '%s'".formatted(matched.get(key).written()));
      }
    }
    return RowSegment.of(
        cells,
        matched.stream().map(ListHeading::column).toList(),
        table.writtenRows(),
        new RowSegment.FromList(
            statement.span(),
            matched.stream().map(h -> new RowSegment.Heading(h.written(), h.unit())).toList()));
  }

  /** The index of a column among the matched ones; -1 if no heading names it. */
  private int column(String key) {
    List<ListHeading> matched = matched();
    for (int i = 0; i < matched.size(); i++) {
      if (matched.get(i).column().name().key().equals(key)) {
        return i;
      }
    }
    return -1;
  }

  private void checkHeadings() {
    Map<Column, ListHeading> found = new LinkedHashMap<>();
    for (int i = 0; i < headings.size(); i++) {
      ListHeading heading = headings.get(i);
      if (heading != null) {
        checkHeading(heading, found.putIfAbsent(heading.column(), heading), text.span(source, i));
      }
    }
    List<Span> left = unmatched();
    List<Column> missing =
        table.columns().stream().filter(c -> isNeeded(c) && !found.containsKey(c)).toList();
    if (!missing.isEmpty()) {
      Span row = text.span(source, 0).to(text.span(source, headings.size() - 1));
      missing(missing, left.stream().map(Span::text).toList(), row);
    } else if (!left.isEmpty()) {
      leftOut(left);
    }
  }

  private void checkHeading(ListHeading heading, @Nullable ListHeading earlier, Span span) {
    if (earlier != null) {
      diagnostics.fault(
          "heading-twice",
          span,
          "column '%s' is in the list twice; the other heading is '%s'"
              .formatted(heading.column().name(), earlier.written()),
          "remove one of the two from the list, or change its heading");
    } else if (!heading.hasGoodUnit()) {
      String question = NearNames.question(Units.suggestions(heading.unit()));
      diagnostics.fault(
          "unknown-unit",
          span,
          "'%s' is not a unit".formatted(heading.unit()),
          question.isEmpty()
              ? "write a unit there, such as %s (in), or none".formatted(heading.column().name())
              : question);
    }
  }

  private boolean isNeeded(Column column) {
    boolean isKey = column == table.keyColumn();
    return isKey || (column.isGiven() && column.layer().formula() == null);
  }

  /** Where the headings that name no input column are. */
  private List<Span> unmatched() {
    List<Span> left = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      Span heading = text.span(source, i);
      if (headings.get(i) == null && !heading.text().isEmpty()) {
        left.add(heading);
      }
    }
    return left;
  }

  private void missing(List<Column> missing, List<String> left, Span row) {
    List<String> names = missing.stream().map(column -> column.name().text()).toList();
    diagnostics.fault(
        "list-lacks-column",
        row,
        "this list has no heading for %s of '%s'".formatted(quoted(names), table),
        () -> nameHeading(names.get(0), left));
  }

  private static String nameHeading(String column, List<String> left) {
    String near = NearNames.question(column, left);
    return near.isEmpty()
        ? "add a column '%s' to the list, or a default to the table's column".formatted(column)
        : near + " call it '%s' in the list".formatted(column);
  }

  private void leftOut(List<Span> left) {
    diagnostics.report(
        new Diagnostic(
            Diagnostic.Severity.CAUTION,
            "list-columns-left-out",
            left.get(0),
            left.subList(1, left.size()),
            "%s of this list %s of '%s'"
                .formatted(
                    quoted(left.stream().map(Span::text).toList()),
                    left.size() == 1 ? "is not an input" : "are not inputs",
                    table),
            "the cells below it are not used"));
  }

  private static String quoted(List<String> names) {
    return "'" + String.join("', '", names) + "'";
  }
}
