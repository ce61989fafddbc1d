package org.battenbook.parse;

import java.util.List;
import java.util.Locale;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.RowCells;
import org.jspecify.annotations.Nullable;

/**
 * Reads the cells of rows. Literals, which most cells are, take a short way of their own; all else
 * is a formula.
 */
public final class CellReader {
  private static final List<String> NUMBER_WORDS =
      List.of(
          "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private CellReader() {}

  /**
   * What stands in a cell: a literal, in which texts have no holes and {@code yes} and {@code no}
   * are true and false; or a formula in the names of the row's table.
   *
   * @return absent for an empty cell, and for one that cannot be read, whose fault is reported
   */
  public static @Nullable Formula read(
      RowCells rows, int row, int column, Diagnostics diagnostics) {
    if (rows.isEmpty(row, column)) {
      return null;
    }
    Expression literal =
        new LiteralCell(rows.source()).read(rows.start(row, column), rows.end(row, column));
    return literal == null
        ? formula(rows.span(row, column), diagnostics)
        : Formula.plain(literal, 1);
  }

  /**
   * What a person types to stand in a cell.
   *
   * @param entry the whole of it, one line without a note
   * @return absent for an empty cell, and for one that cannot be read, whose fault is reported
   */
  public static @Nullable Formula typed(SourceText entry, Diagnostics diagnostics) {
    int end = entry.text().length();
    RowSplitter splitter = new RowSplitter(entry.text());
    splitter.split(0, end);
    if (splitter.hasBar()) {
      diagnostics.fault(
          "bar-in-cell",
          entry.span(splitter.end(0), end),
          "this is one cell, but it has a bar",
          "remove the bar, or put a text in quotes");
      return null;
    }
    if (splitter.openText() >= 0) {
      diagnostics.fault(
          "text-not-closed",
          entry.span(splitter.openText(), end),
          "this text has no closing quote",
          "close it; write a quote inside a text twice");
      return null;
    }
    RowCells.Builder cell = new RowCells.Builder(entry, 1);
    cell.cell(splitter.start(0), splitter.end(0));
    return read(cell.build(), 0, 0, diagnostics);
  }

  private static @Nullable Formula formula(Span cell, Diagnostics diagnostics) {
    Formula formula = FormulaParser.parse(cell.source(), cell, diagnostics);
    if (formula == null) {
      return null;
    }
    if (formula.shownAs() != null) {
      diagnostics.fault(
          "shown-as-in-cell",
          formula.shownAs().span(),
          "a cell cannot have 'shown as'",
          "write 'shown as' at the end of the line that defines the column");
      return null;
    }
    return isBareWords(formula, cell) ? bareWords(cell, diagnostics) : formula;
  }

  private static boolean isBareWords(Formula formula, Span cell) {
    return formula.expression() instanceof Reference reference
        && reference.root() == Root.HERE
        && reference.names().size() == 1
        && cell.source().text().charAt(cell.start()) != '(';
  }

  private static @Nullable Formula bareWords(Span cell, Diagnostics diagnostics) {
    String words = cell.text();
    int number = NUMBER_WORDS.indexOf(words.toLowerCase(Locale.ROOT));
    if (number >= 0) {
      diagnostics.fault(
          "number-in-words",
          cell,
          "the number '%s' is written as a word".formatted(words),
          "write " + number);
      return null;
    }
    diagnostics.fault(
        "words-without-quotes",
        cell,
        "'%s' has no quotes".formatted(words),
        "write \"%s\" for a text, or (%s) for the value of that name".formatted(words, words));
    return null;
  }
}
