package org.battenbook.parse;

import org.battenbook.bound.Bound;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.WorkbookFile;

/**
 * Reads a workbook file, one logical line at a time, so that each line has its own message and none
 * eats the next. Rows are split by hand and kept as places in the text.
 */
public final class WorkbookParser {
  private final SourceText source;
  private final Diagnostics diagnostics;
  private final LogicalLines lines;
  private final WorkbookBuilder builder;

  private WorkbookParser(SourceText source, Diagnostics diagnostics) {
    this.source = source;
    this.diagnostics = diagnostics;
    this.lines = new LogicalLines(source);
    this.builder = new WorkbookBuilder(source, diagnostics);
  }

  /** Everything of the file that could be read; what could not is reported. */
  public static WorkbookFile parse(SourceText source, Diagnostics diagnostics) {
    return new WorkbookParser(source, diagnostics).parse();
  }

  private WorkbookFile parse() {
    int line = lines.nextFrom(1);
    if (line > source.lineCount()) {
      diagnostics.fault(
          "empty-file",
          source.span(0, 0),
          "this workbook is empty",
          "write workbook \"…\" with its name on the first line, and a page below it");
    }
    while (line <= source.lineCount() && !diagnostics.isRefused()) {
      line = lines.nextFrom(read(line) + 1);
    }
    return builder.file();
  }

  /** Reads what begins on a line, and gives the line it ends on. */
  private int read(int line) {
    LineFaults faults = new LineFaults(diagnostics);
    int start = source.lineStart(line);
    if (LongLines.refuse(source, start, source.lineEnd(line), faults) || readRow(line, faults)) {
      return line;
    }
    int last = lines.lastFrom(line);
    int end = source.lineEnd(last);
    if (!LongLines.refuse(source, start, end, faults)) {
      statement(source.span(start, end), faults);
    }
    return last;
  }

  private void statement(Span where, LineFaults faults) {
    if (Bound.STATEMENTS.isPassedBy(builder.statements() + 1L)) {
      tooMany(where, "statements", Bound.STATEMENTS.shown());
    } else if (Bound.STATEMENT_TEXT.isPassedBy(builder.statementText() + (long) where.length())) {
      tooMany(where, "in its statements", Bound.STATEMENT_TEXT.shown());
    } else {
      builder.statement(where, faults);
    }
  }

  private void tooMany(Span where, String what, String most) {
    diagnostics.refuse(
        "too-many-statements",
        where,
        "this workbook has more than %s %s".formatted(most, what),
        "write lines that are alike as rows of a table");
  }

  private boolean readRow(int line, LineFaults faults) {
    RowsReader rows = builder.openRows();
    Span where = source.span(source.lineStart(line), source.lineEnd(line));
    return rows != null && rows.take(where, faults);
  }
}
