package org.battenbook.parse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bound.Bound;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.HeadingsContext;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.RowCells;
import org.battenbook.syntax.RowsSection;
import org.jspecify.annotations.Nullable;

/** Reads what stands under {@code rows of}: a line of headings, then rows until a statement. */
final class RowsReader {
  private final SourceText source;
  private final @Nullable Name table;
  private final RowSplitter splitter;
  private final List<Name> headings = new ArrayList<>();
  private RowCells.@Nullable Builder cells;
  private boolean headingsRead;
  private int rowCount;
  private Span span;

  /**
   * A reader of rows.
   *
   * @param table absent where the head could not be read: then rows are passed over
   * @param head the words {@code rows of …}
   */
  RowsReader(@Nullable Name table, Span head) {
    this.source = head.source();
    this.table = table;
    this.span = head;
    this.splitter = new RowSplitter(source.text());
  }

  /** Takes a line if it is headings or a row; else the rows are at an end. */
  boolean take(Span line, LineFaults faults) {
    splitter.split(line.start(), line.end());
    if (!splitter.hasBar() && isStatement(line)) {
      return false;
    }
    span = span.to(line);
    if (headingsRead) {
      row(faults);
    } else {
      headingsRead = true;
      headings(line, faults);
    }
    return true;
  }

  /** Whether the first words of a line without a bar make it a statement, or {@code =} does. */
  private static boolean isStatement(Span line) {
    LineTokens tokens = TokenReader.statement(line, new LineFaults(new Diagnostics()));
    int first = tokens.type(0);
    return first != LineTokens.END && isHeadOrName(first) && isDefinitionOrHead(tokens);
  }

  private static boolean isHeadOrName(int type) {
    return type == WorkbookParser.WORD || type >= WorkbookParser.WORKBOOK;
  }

  private static boolean isDefinitionOrHead(LineTokens tokens) {
    return tokens.type(0) != WorkbookParser.WORD
        || tokens.find(WorkbookParser.EQUALS) >= 0
        || tokens.find(WorkbookParser.COLON) >= 0;
  }

  private void headings(Span line, LineFaults faults) {
    if (isWithoutBars(faults)) {
      return;
    }
    LineTokens tokens = TokenReader.formula(line, faults);
    HeadingsContext tree = faults.any() ? null : headings(tokens, faults);
    if (tree == null) {
      return;
    }
    FormulaBuilder names = new FormulaBuilder(source, faults);
    Set<String> keys = new HashSet<>();
    tree.name().forEach(name -> heading(names.name(name), keys, faults));
    cells = new RowCells.Builder(source, headings.size());
  }

  private static @Nullable HeadingsContext headings(LineTokens tokens, LineFaults faults) {
    int at = wrongHeading(tokens);
    if (at < 0) {
      return GrammarRun.headings(tokens, faults);
    }
    faults.fault(
        "heading-not-a-name",
        tokens.span(at),
        at == tokens.count() || tokens.type(at) == WorkbookParser.BAR
            ? "this heading is empty"
            : "'%s' is not the name of a column".formatted(tokens.span(at).text()),
        "write names of columns with a bar between them: title | width | height");
    return null;
  }

  /** The first token that is not a name's, nor a bar between two names; or -1. */
  private static int wrongHeading(LineTokens tokens) {
    for (int i = 0; i < tokens.count(); i++) {
      boolean bar = tokens.type(i) == WorkbookParser.BAR;
      boolean fits =
          bar ? i > 0 && tokens.isWord(i - 1) && i + 1 < tokens.count() : tokens.isWord(i);
      if (!fits) {
        return i;
      }
    }
    return -1;
  }

  private void heading(Name heading, Set<String> keys, LineFaults faults) {
    if (!keys.add(heading.key())) {
      faults.fault(
          "heading-twice",
          heading.span(),
          "the heading '%s' is used twice".formatted(heading),
          "use each column once");
    }
    headings.add(heading);
  }

  private void row(LineFaults faults) {
    if (cells == null) {
      return;
    }
    if (rowCount++ == Bound.TABLE_ROWS.most()) {
      tooManyRows(faults);
      return;
    }
    if (splitter.openText() >= 0) {
      openText(faults);
      return;
    }
    if (headings.size() > 1 && isWithoutBars(faults)) {
      return;
    }
    if (splitter.count() != headings.size()) {
      count(faults);
    }
    for (int i = 0; i < headings.size(); i++) {
      boolean there = i < splitter.count();
      cells.cell(
          there ? splitter.start(i) : splitter.end(), there ? splitter.end(i) : splitter.end());
    }
  }

  /** Reports cells that tabs or commas separate instead of bars; whether they do. */
  private boolean isWithoutBars(LineFaults faults) {
    int start = splitter.start(0);
    Optional<SeparatedCells> cells =
        splitter.hasBar()
            ? Optional.empty()
            : SeparatedCells.in(source.text(), start, splitter.end());
    cells.ifPresent(
        found ->
            faults.fault(
                "cells-without-bars",
                source.span(start, splitter.end()),
                "%s separate the cells of this row".formatted(found.sign()),
                "put a bar between cells: " + found.withBars()));
    return cells.isPresent();
  }

  /** A text that is not closed: where its cell begins with a quote, one inside closed it early. */
  private void openText(LineFaults faults) {
    int open = splitter.openText();
    int start = splitter.start(splitter.count() - 1);
    int closed = source.text().indexOf('"', start + 1);
    if (start < open && source.text().charAt(start) == '"' && closed >= 0) {
      String inside = source.text().substring(start + 1, open);
      faults.fault(
          "quote-in-text",
          source.span(closed, closed + 1),
          "this quote is inside a text",
          "write a quote inside a text twice: \"%s\"".formatted(inside.replace("\"", "\"\"")));
    } else {
      faults.fault(
          "text-not-closed",
          source.span(open, splitter.end()),
          "this text has no closing quote",
          "close it before the next bar; write a quote inside a text twice");
    }
  }

  private void tooManyRows(LineFaults faults) {
    faults.refuse(
        "too-many-rows",
        source.span(splitter.start(0), splitter.end()),
        "this table has more than %s rows".formatted(Bound.TABLE_ROWS.shown()),
        "split the job in two");
  }

  private void count(LineFaults faults) {
    int most = headings.size();
    boolean many = splitter.count() > most;
    int start = many ? splitter.start(most) : splitter.start(0);
    faults.fault(
        many ? "too-many-cells" : "too-few-cells",
        source.span(Math.min(start, splitter.end()), splitter.end()),
        "this row has %s under %s"
            .formatted(plural(splitter.count(), "cell"), plural(most, "heading")),
        many
            ? "remove the cells after the last heading, or add a heading"
            : "put a bar between all cells, also beside an empty one");
  }

  private static String plural(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  /** The section that was read; absent where its head or headings could not be. */
  @Nullable RowsSection section(LineFaults faults) {
    if (table != null && !headingsRead) {
      faults.fault(
          "headings-missing",
          span,
          "'%s' has no headings below it".formatted(span.text()),
          "write names of columns with a bar between them: title | width | height");
    }
    return table == null || cells == null
        ? null
        : new RowsSection(table, headings, cells.build(), span);
  }
}
