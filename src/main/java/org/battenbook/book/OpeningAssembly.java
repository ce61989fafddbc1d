package org.battenbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.parse.CellReader;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Opening;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.TextLiteral;
import org.jspecify.annotations.Nullable;

/**
 * Resolves {@code for each} statements, which open the rows of a table from those of another, and
 * adds the cells that people enter for opened rows.
 */
final class OpeningAssembly {
  private final Book book;
  private final Diagnostics diagnostics;
  private final Map<Table, List<Opening>> stated = new LinkedHashMap<>();

  OpeningAssembly(Book book, Diagnostics diagnostics) {
    this.book = book;
    this.diagnostics = diagnostics;
  }

  /**
   * Stores the openings of a table. They are resolved later, as they can name tables further down.
   */
  void state(Table table, List<Opening> opened) {
    if (!opened.isEmpty()) {
      stated.put(table, opened);
    }
  }

  boolean isOpened(Table table) {
    return stated.containsKey(table);
  }

  /** Resolves the tables and columns that all openings name. */
  void resolve() {
    stated.forEach((table, openings) -> openings.forEach(opening -> resolve(table, opening)));
  }

  private void resolve(Table table, Opening opening) {
    Table from = book.table(opening.of().key());
    if (from == null) {
      List<String> tables = book.tables().stream().map(Table::toString).toList();
      missing("no-such-table", opening.of(), "there is no table '%s'", tables);
      return;
    }
    Optional<String> back = RowPath.between(from, table);
    if (back.isPresent()) {
      diagnostics.fault(
          "rows-opened-in-circle",
          opening.span(),
          "the rows of '%s' would come from themselves: '%s' from '%s'%s"
              .formatted(table, table, from, back.get()),
          "write the rows of one of these tables yourself");
      return;
    }
    Column each = table.column(opening.each().key());
    RowOpening.Count count = count(table, from, opening.count());
    if (each != null && (count != null || opening.count() == null)) {
      Map<Column, Formula> cells = cells(table, opening);
      table.openBy(new RowOpening(from, each, count, cells, opening.span()));
    }
  }

  private RowOpening.@Nullable Count count(
      Table table, Table from, Opening.@Nullable Count stated) {
    Column number = stated == null ? null : table.column(stated.number().key());
    Column upTo = stated == null ? null : column(from, stated.upTo());
    return number == null || upTo == null ? null : new RowOpening.Count(number, upTo);
  }

  /** The column with a name; null after a fault if there is none. */
  private @Nullable Column column(Table table, Name name) {
    Column column = table.column(name.key());
    if (column == null) {
      List<String> columns = table.columns().stream().map(c -> c.name().text()).toList();
      missing("no-such-column", name, "table '" + table + "' has no column '%s'", columns);
    }
    return column;
  }

  private Map<Column, Formula> cells(Table table, Opening opening) {
    Map<Column, Formula> cells = new LinkedHashMap<>();
    for (LineDefinition cell : opening.cells()) {
      Column column = column(table, cell.name());
      if (column != null && cell.formula() != null) {
        refuseFixed(table, column, cell.name(), cells.containsKey(column));
        cells.put(column, cell.formula());
      }
    }
    return cells;
  }

  /** Whether an opening of the table fills a column with its source row or number. */
  private boolean opensBy(Table table, Name column) {
    return stated.getOrDefault(table, List.of()).stream().anyMatch(o -> o.fills(column));
  }

  /**
   * Reports a cell that an opening may not have: the row's name, source row or number, a calculated
   * column, or the same column twice.
   */
  private void refuseFixed(Table table, Column column, Name name, boolean twice) {
    boolean isName = column == table.keyColumn() || opensBy(table, name);
    if (twice || isName || !column.isGiven()) {
      diagnostics.fault(
          "cell-not-for-opening",
          name.span(),
          twice
              ? "'%s' is under this 'for each' twice".formatted(name)
              : isName
                  ? "'%s' is set by the 'for each' itself".formatted(name)
                  : "'%s' is calculated in each row".formatted(name),
          twice || isName
              ? "remove this line"
              : "move '%s' under 'given' if each 'for each' sets its own".formatted(name));
    }
  }

  private void missing(String code, Name name, String message, List<String> known) {
    diagnostics.fault(
        code, name.span(), message.formatted(name), () -> NearNames.question(name.text(), known));
  }

  /** Adds rows that people write to enter cells of opened rows. */
  void fill(Table table, RowsSection rows, List<Column> columns) {
    int key = columns.indexOf(table.keyColumn());
    RowOpening named = null;
    for (RowOpening opening : table.openings()) {
      named = columns.contains(opening.each()) ? opening : named;
    }
    if (key >= 0) {
      fill(table, rows, columns, null);
    } else if (named == null) {
      noNameHeading(table, rows.headings().get(0).span());
    } else {
      fill(table, rows, columns, named);
    }
  }

  private void noNameHeading(Table table, Span headings) {
    RowOpening first = table.openings().isEmpty() ? null : table.openings().get(0);
    if (first == null) {
      return;
    }
    diagnostics.fault(
        "no-key-heading",
        headings,
        "rows of '%s' come from '%s', and no heading names the row"
            .formatted(table, sources(table)),
        first.count() == null
            ? "add the heading '%s'".formatted(table.keyName())
            : "add a heading '%s', and '%s' if there is more than one row for each"
                .formatted(first.each().name(), first.count().number().name()));
  }

  private static String sources(Table table) {
    return String.join(
        "' and '", table.openings().stream().map(opening -> opening.from().toString()).toList());
  }

  /**
   * Adds rows that enter cells of opened rows.
   *
   * @param by the opening whose source row and number tell each row; null if its own name does
   */
  private void fill(
      Table table, RowsSection section, List<Column> columns, @Nullable RowOpening by) {
    List<RowSegment.Filled> filled = new ArrayList<>();
    for (int row = 0; row < section.rows().rowCount(); row++) {
      filled.add(
          by == null
              ? named(section.rows(), row, columns.indexOf(table.keyColumn()))
              : opened(section.rows(), row, columns, by));
    }
    if (!table.isWritten()) {
      table.add(RowSegment.filling(section, columns, filled));
    }
  }

  private static RowSegment.Filled named(RowCells rows, int row, int at) {
    String name = text(rows, row, at);
    return new RowSegment.Filled(name, OpenedKey.named(name), rows.span(row, at));
  }

  private static RowSegment.Filled opened(
      RowCells rows, int row, List<Column> columns, RowOpening by) {
    int at = columns.indexOf(by.each());
    int numberAt = by.count() == null ? -1 : columns.indexOf(by.count().number());
    String each = text(rows, row, at);
    boolean isNumbered = numberAt >= 0 && !rows.isEmpty(row, numberAt);
    String number = isNumbered ? rows.span(row, numberAt).text() : "";
    return new RowSegment.Filled(
        isNumbered ? RowOpening.numbered(each, number) : each,
        OpenedKey.opened(by, each, number),
        rows.span(row, at));
  }

  /** The text of a cell that is a text literal; for any other cell, its source text. */
  private static String text(RowCells rows, int row, int at) {
    Formula cell = CellReader.read(rows, row, at, new Diagnostics());
    return cell != null && cell.expression() instanceof TextLiteral text
        ? text.plainWords().orElse("")
        : rows.span(row, at).text();
  }
}
