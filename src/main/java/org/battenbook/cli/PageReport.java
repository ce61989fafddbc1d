package org.battenbook.cli;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;
import org.battenbook.source.DisplayText;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import org.battenbook.value.Kind;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;

/** Shows pages: tables in columns, lines with dotted leaders from the name to the value. */
final class PageReport {
  /** How many characters a line of the report may take, if it can. */
  static final int WIDTH = 100;

  private static final int LEAST_DOTS = 3;

  private final Filled filled;
  private final Output out;

  PageReport(Filled filled, Output out) {
    this.filled = filled;
    this.out = out;
  }

  /** A page with every column of every table, and the notes of its lines. */
  void printWhole(Page page) {
    heading(page);
    if (!page.note().isEmpty()) {
      indent(InkedText.of(Ink.ASIDE, page.note()));
    }
    printLines(page.linesAbove(), true);
    for (Table table : page.tables()) {
      printTable(table, table.columns());
    }
    printLines(page.linesBelow(), true);
  }

  /** A page with the columns that its tables show first; of its tables, those given. */
  void printFirst(Page page, List<Table> tables) {
    heading(page);
    printLines(page.linesAbove(), false);
    for (Table table : tables) {
      printTable(table, table.shownFirst());
    }
    printLines(page.linesBelow(), false);
  }

  private void heading(Page page) {
    out.line(Ink.HEADING, page.title());
  }

  private void printTable(Table table, List<Column> columns) {
    TextTable text = new TextTable(columns.stream().map(this::column).toList());
    for (int row = 0; row < filled.rows(table).count(); row++) {
      int at = row;
      text.add(columns.stream().map(column -> cell(filled.value(column, at))).toList());
    }
    if (table.page().tables().size() > 1) {
      indent(InkedText.of(Ink.HEADING, table.name().text()));
    }
    text.lines(WIDTH, Ink.ASIDE).forEach(this::indent);
    out.line();
  }

  private TextTable.Column column(Column column) {
    boolean isNumber = filled.checked().place(column).kind() instanceof Kind.Measured;
    return new TextTable.Column(column.name().text(), isNumber);
  }

  /** Why a value is missing is told once, below, and not in every cell. */
  private static String cell(FilledValue value) {
    if (value.value().isError()) {
      return "error";
    }
    if (value.staysEmpty()) {
      return "";
    }
    return value.value().isKnown() ? value.shown().text() : "needs input";
  }

  private void printLines(List<Line> lines, boolean withNotes) {
    if (lines.isEmpty()) {
      return;
    }
    List<Leader> leaders = lines.stream().map(line -> leader(line, withNotes)).toList();
    int nameWidth = leaders.stream().mapToInt(l -> DisplayText.width(l.name())).max().orElse(0);
    int valueWidth = leaders.stream().mapToInt(l -> DisplayText.width(l.value())).max().orElse(0);
    for (Leader leader : leaders) {
      leader.lines(nameWidth + 1 + LEAST_DOTS, valueWidth).forEach(this::indent);
    }
    out.line();
  }

  private Leader leader(Line line, boolean withNote) {
    return new Leader(
        line.name().text(), filled.value(line).shown().text(), withNote ? line.note() : "");
  }

  private void indent(InkedText line) {
    out.line(line.indented("  "));
  }

  /** A name, dots, its value, and a note beside it that goes on below itself. */
  private record Leader(String name, String value, String note) {
    private static final int LEAST_NOTE = 30;

    List<InkedText> lines(int dotsTo, int valueWidth) {
      String dots = ".".repeat(dotsTo - DisplayText.width(name) - 1);
      InkedText head = InkedText.of(name + " ").and(Ink.ASIDE, dots).and(" " + value);
      if (note.isEmpty()) {
        return List.of(head);
      }
      int noteAt = dotsTo + 1 + valueWidth + 2;
      List<String> notes = WrappedText.lines(note, Math.max(LEAST_NOTE, WIDTH - noteAt));
      List<InkedText> lines = new ArrayList<>();
      InkedText lead = head.and(" ".repeat(valueWidth - DisplayText.width(value) + 2));
      for (String part : notes) {
        lines.add(lead.and(Ink.ASIDE, part));
        lead = InkedText.of(" ".repeat(noteAt));
      }
      return lines;
    }
  }
}
