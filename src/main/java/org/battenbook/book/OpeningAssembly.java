package org.battenbook.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.battenbook.parse.CellReader;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.Opening;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.battenbook.syntax.TextLiteral;

/** Opens the rows of tables from the rows of others, and lays what people fill in over them. */
final class OpeningAssembly {
  private final Book book;
  private final OpenedRows opened;
  private final Diagnostics diagnostics;
  private final Map<Table, Opening> stated = new LinkedHashMap<>();

  OpeningAssembly(Book book, OpenedRows opened, Diagnostics diagnostics) {
    this.book = book;
    this.opened = opened;
    this.diagnostics = diagnostics;
  }

  /** Notes what a table states; columns of other tables may come after it. */
  void state(Table table, Opening opening) {
    stated.put(table, opening);
  }

  boolean isOpened(Table table) {
    return stated.containsKey(table);
  }

  /** Finds what every statement names, and opens the rows. */
  void open() {
    stated.forEach(this::resolve);
    stated.keySet().forEach(this::open);
  }

  private void resolve(Table table, Opening opening) {
    Table from = book.table(opening.of().key());
    if (from == null) {
      List<String> tables = book.tables().stream().map(Table::toString).toList();
      missing("no-such-table", opening.of(), "no table is called '%s'", tables);
      return;
    }
    Column upTo = from.column(opening.upTo().key());
    if (upTo == null) {
      List<String> columns = from.columns().stream().map(c -> c.name().text()).toList();
      String message = "table '" + from + "' has no column '%s'";
      missing("no-such-column", opening.upTo(), message, columns);
      return;
    }
    Column each = table.column(opening.each().key());
    Column number = table.column(opening.number().key());
    if (each != null && number != null) {
      table.openBy(new RowOpening(from, upTo, each, number, opening.span()), opened.areSettled());
    }
  }

  private void missing(String code, Name name, String message, List<String> known) {
    diagnostics.fault(
        code, name.span(), message.formatted(name), NearNames.question(name.text(), known));
  }

  private void open(Table table) {
    RowOpening opening = table.opening();
    Column key = table.keyColumn();
    if (opening == null || key == null) {
      return;
    }
    ListText text = new ListText();
    for (OpenedRows.Opened row : opened.of(table)) {
      for (int number = 1; number <= row.count(); number++) {
        text.cell(quoted(row.name(number)));
        text.cell(quoted(row.each()));
        text.cell(Integer.toString(number));
        text.endLine();
      }
    }
    SourceText source = text.source("rows opened from " + opening.from());
    book.addSeen(source, opening.statement().source());
    List<Column> columns = List.of(key, opening.each(), opening.number());
    table.add(RowSegment.of(text.rows(source, 0, columns.size()), columns, 0, null));
  }

  private static String quoted(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** Lays rows that people wrote over those that were opened: they fill in other columns. */
  void fill(Table table, RowsSection rows, List<Column> columns) {
    RowOpening opening = table.opening();
    int key = columns.indexOf(table.keyColumn());
    int each = opening == null ? -1 : columns.indexOf(opening.each());
    if (opening == null) {
      return;
    }
    if (key < 0 && each < 0) {
      diagnostics.fault(
          "no-key-heading",
          rows.headings().get(0).span(),
          "rows of '%s' are opened from '%s', and no heading says which one is filled in"
              .formatted(table, opening.from()),
          "add a heading '%s', and '%s' where it opens more than one"
              .formatted(opening.each().name(), opening.number().name()));
    } else {
      int number = key < 0 ? columns.indexOf(opening.number()) : -1;
      fill(table, opening, rows.rows(), columns, key < 0 ? each : key, number);
    }
  }

  private void fill(
      Table table, RowOpening opening, RowCells rows, List<Column> columns, int name, int number) {
    Map<String, Integer> known = rowsByName(table);
    List<Integer> filled = new ArrayList<>();
    Map<Integer, Integer> seen = new HashMap<>();
    for (int row = 0; row < rows.rowCount(); row++) {
      String called = text(rows, row, name);
      if (number >= 0 && !rows.isEmpty(row, number)) {
        called = OpenedRows.numbered(called, rows.span(row, number).text());
      }
      Integer found = known.get(Name.key(called));
      filled.add(found == null ? RowSegment.NO_ROW : found);
      if (found == null && table.isSettled()) {
        notOpened(table, opening, rows.span(row, name), called);
      }
      Integer earlier = found == null ? null : seen.putIfAbsent(found, row);
      if (earlier != null && table.isSettled()) {
        filledTwice(table, rows, name, row, earlier);
      }
    }
    table.add(RowSegment.filling(rows, columns, filled));
  }

  private void filledTwice(Table table, RowCells rows, int name, int row, int earlier) {
    diagnostics.fault(
        "row-filled-twice",
        rows.span(row, name),
        "this fills in the same row of '%s' as %s"
            .formatted(table, rows.span(earlier, name).place()),
        "write all of its cells in one row");
  }

  /** Every opened row by its name; one that is alone goes by its number, too. */
  private Map<String, Integer> rowsByName(Table table) {
    Map<String, Integer> rows = new HashMap<>();
    int at = 0;
    for (OpenedRows.Opened row : opened.of(table)) {
      for (int number = 1; number <= row.count(); number++) {
        rows.put(Name.key(row.name(number)), at);
        rows.put(Name.key(OpenedRows.numbered(row.each(), Integer.toString(number))), at);
        at++;
      }
    }
    return rows;
  }

  /** The words of a cell that is nothing but a text; else what is written there. */
  private static String text(RowCells rows, int row, int at) {
    Formula cell = CellReader.read(rows, row, at, new Diagnostics());
    return cell != null && cell.expression() instanceof TextLiteral text
        ? text.plainWords().orElse("")
        : rows.span(row, at).text();
  }

  private void notOpened(Table table, RowOpening opening, Span span, String called) {
    List<OpenedRows.Opened> rows = opened.of(table);
    List<String> names =
        rows.stream().flatMap(r -> IntStream.rangeClosed(1, r.count()).mapToObj(r::name)).toList();
    String question = NearNames.question(called, names);
    diagnostics.fault(
        "row-not-opened",
        span,
        "'%s' has no row \"%s\": its rows are opened from '%s', so many of each as '%s' says"
            .formatted(table, called, opening.from(), opening.upTo().name()),
        question.isEmpty()
            ? "name a row of '%s', and a number that is not past its '%s'"
                .formatted(opening.from(), opening.upTo().name())
            : question);
  }
}
