package org.battenbook.export;

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

/** Where everything in a book stands in the file. */
final class BookPlan {
  private final List<SheetPlan> sheets = new ArrayList<>();
  private final Map<Table, TablePlan> tables = new HashMap<>();
  private final Map<Line, String> names = new HashMap<>();
  private final SortedMap<String, String> addresses = new TreeMap<>();
  private final RuleSheetPlan rules;
  private final DerivationPlan derivations;

  BookPlan(Book book, BookRows rows) {
    SheetNames sheetNames = new SheetNames();
    DefinedNames definedNames = new DefinedNames();
    for (Page page : book.pages()) {
      if (!page.lines().isEmpty() || !page.tables().isEmpty()) {
        add(new SheetPlan(page, sheetNames.name(page.title()), rows), definedNames);
      }
    }
    rules = new RuleSheetPlan(sheetNames.name("Requirements"), book.pages(), rows);
    derivations = new DerivationPlan(sheetNames.name("Derivation"), sheets);
  }

  private void add(SheetPlan sheet, DefinedNames definedNames) {
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

  List<SheetPlan> sheets() {
    return sheets;
  }

  /** The sheet of requirements and cautions; without blocks there is none. */
  RuleSheetPlan rules() {
    return rules;
  }

  /** The sheet that tells where each value came from. */
  DerivationPlan derivations() {
    return derivations;
  }

  TablePlan table(Table table) {
    TablePlan found = tables.get(table);
    if (found == null) {
      throw new IllegalArgumentException("no place for " + table);
    }
    return found;
  }

  /** The defined name of a line's cell. */
  String name(Line line) {
    String found = names.get(line);
    if (found == null) {
      throw new IllegalArgumentException("no place for " + line);
    }
    return found;
  }

  /** Every defined name with the address of its cell. */
  SortedMap<String, String> addresses() {
    return addresses;
  }
}
