package org.battenbook.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.parse.CellReader;
import org.battenbook.parse.FormulaParser;
import org.battenbook.parse.Notes;
import org.battenbook.parse.WorkbookParser;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.LineDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PageItem;
import org.battenbook.syntax.WorkbookFile;

/** Text that a person types to edit a workbook: one formula, one cell, one line. */
final class TypedText {
  private static final String PAGE = "page typed\n";

  private TypedText() {}

  private static SourceText source(String text) {
    return SourceText.of("edit", text);
  }

  /** Tells what is wrong with a formula by itself, whether or not its names are known. */
  static void checkFormula(String text, Diagnostics diagnostics) {
    SourceText source = source(text);
    if (isOneLine(source, diagnostics)) {
      FormulaParser.parse(source, diagnostics);
    }
  }

  /** Tells what is wrong with a cell by itself; an empty one is right. */
  static void checkCell(String text, Diagnostics diagnostics) {
    SourceText source = source(text);
    if (isOneLine(source, diagnostics)) {
      CellReader.typed(source, diagnostics);
    }
  }

  /** Tells what is wrong with a line of a page by itself; a note behind it is right. */
  static void checkLine(String text, Diagnostics diagnostics) {
    if (!hasBreak(source(text), diagnostics)) {
      SourceText source = source(PAGE + text.strip());
      WorkbookFile file = WorkbookParser.parse(source, diagnostics);
      List<PageItem> items = file.pages().isEmpty() ? List.of() : file.pages().get(0).items();
      boolean isLine = items.size() == 1 && items.get(0) instanceof LineDefinition;
      if (!isLine && !diagnostics.hasFaults()) {
        diagnostics.fault(
            "not-a-line",
            source.span(PAGE.length(), source.text().length()),
            "'%s' is not a line of a page".formatted(text.strip()),
            "write a name and a formula, such as saw kerf = 1/8 in");
      }
    }
  }

  static void checkReason(String because, Diagnostics diagnostics) {
    SourceText source = source(because);
    if (!hasBreak(source, diagnostics) && because.isBlank()) {
      diagnostics.fault(
          "reason-missing",
          source.span(0, because.length()),
          "a change needs a reason; this one is empty",
          "enter a reason, such as \"the panels are thick\"");
    }
  }

  private static boolean isOneLine(SourceText source, Diagnostics diagnostics) {
    if (hasBreak(source, diagnostics)) {
      return false;
    }
    if (Notes.isIn(source)) {
      diagnostics.fault(
          "note-in-edit",
          source.span(0, source.text().length()),
          "there is a note after this, but an edit keeps the note in the file",
          "remove '--' and the note");
      return false;
    }
    return true;
  }

  private static boolean hasBreak(SourceText source, Diagnostics diagnostics) {
    boolean breaks = source.lineCount() > 1;
    if (breaks) {
      diagnostics.fault(
          "break-in-edit",
          source.span(0, source.lineEnd(1)),
          "this is more than one line",
          "write it in one line");
    }
    return breaks;
  }

  /** Whether a formula says how it is to be shown. */
  static boolean namesForm(String formula) {
    Formula parsed = FormulaParser.parse(source(formula), new Diagnostics());
    return parsed != null && parsed.shownAs() != null;
  }

  static boolean sameName(String one, String other) {
    return Name.key(one).equals(Name.key(other));
  }

  /** A text in the quotes of a workbook. */
  static String quoted(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** Cells in the order of their table's columns, trimmed. */
  static Map<Column, String> inOrder(Table table, Map<Column, String> cells) {
    Map<Column, String> inOrder = new LinkedHashMap<>();
    for (Column column : table.columns()) {
      String cell = cells.get(column);
      if (cell != null) {
        inOrder.put(column, cell.strip());
      }
    }
    return inOrder;
  }
}
