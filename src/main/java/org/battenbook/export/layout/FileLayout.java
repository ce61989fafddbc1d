package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Book;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;

/** The layout of a file: where each line, table and rule of a book stands. */
public final class FileLayout {
  private final List<SheetLayout> sheets = new ArrayList<>();
  private final Map<Table, TableLayout> tables = new HashMap<>();
  private final Map<Line, String> names = new HashMap<>();
  private final SortedMap<String, String> addresses = new TreeMap<>();
  private final RuleSheetLayout rules;
  private final DerivationLayout derivations;

  public FileLayout(Book book, BookRows rows) {
    SheetNames sheetNames = new SheetNames();
    DefinedNames definedNames = new DefinedNames();
    for (Page page : book.pages()) {
      if (!page.lines().isEmpty() || !page.tables().isEmpty()) {
        add(new SheetLayout(page, sheetNames.name(page.title()), rows), definedNames);
      }
    }
    rules = new RuleSheetLayout(sheetNames.name("Checks"), book.pages(), rows);
    derivations = new DerivationLayout(sheetNames.name("How calculated"), sheets);
  }

  private void add(SheetLayout sheet, DefinedNames definedNames) {
    sheets.add(sheet);
    tables.putAll(sheet.tables());
    sheet
        .lineAddresses()
        .forEach(
            (line, at) -> {
              String name = definedNames.name(line.name().text(), sheet.page().name().text());
              names.put(line, name);
              addresses.put(name, at.fixedFrom(""));
            });
  }

  public List<SheetLayout> sheets() {
    return sheets;
  }

  /** The sheet of requirements and cautions. If it has no blocks, the file does not have it. */
  public RuleSheetLayout rules() {
    return rules;
  }

  /** The sheet that shows how each value was calculated. */
  public DerivationLayout derivations() {
    return derivations;
  }

  public TableLayout table(Table table) {
    TableLayout found = tables.get(table);
    if (found == null) {
      throw new IllegalArgumentException("no place for " + table);
    }
    return found;
  }

  /** The defined name of a line's cell. */
  public String name(Line line) {
    String found = names.get(line);
    if (found == null) {
      throw new IllegalArgumentException("no place for " + line);
    }
    return found;
  }

  /** Each defined name with the absolute address of its cell. */
  public SortedMap<String, String> addresses() {
    return addresses;
  }
}
