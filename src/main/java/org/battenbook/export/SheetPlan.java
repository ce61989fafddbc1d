package org.battenbook.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;

/** Where the tables and lines of a page stand in its sheet: a title, the tables, then the lines. */
final class SheetPlan {
  static final int NAME = 0;
  static final int VALUE = 1;
  static final int UNIT = 2;
  static final int WRITTEN = 3;
  static final int NOTE = 4;

  private final Page page;
  private final String name;
  private final Map<Table, TablePlan> tables = new LinkedHashMap<>();
  private final Map<Line, Integer> lines = new LinkedHashMap<>();
  private final List<RulePlan> rules = new ArrayList<>();
  private int linesHeading = -1;

  SheetPlan(Page page, String name) {
    this.page = page;
    this.name = name;
    int row = page.note().isEmpty() ? 1 : 2;
    for (Table table : page.tables()) {
      int heading = row + (hasSubtitles() ? 2 : 1);
      TablePlan placed = new TablePlan(table, name, heading, visibleColumns());
      tables.put(table, placed);
      row = placed.end();
    }
    placeLines(row + 1);
  }

  private void placeLines(int heading) {
    if (!page.lines().isEmpty()) {
      linesHeading = heading;
      page.lines().forEach(line -> lines.put(line, linesHeading + 1 + lines.size()));
    }
  }

  /** Has the requirements and cautions of a whole book stand below all else. */
  void placeRules(Iterable<Page> pages) {
    for (boolean required : new boolean[] {true, false}) {
      RulePlan placed = new RulePlan(required, pages, end());
      if (!placed.rules().isEmpty()) {
        rules.add(placed);
      }
    }
  }

  /** The requirements and the cautions that stand here. */
  List<RulePlan> rules() {
    return rules;
  }

  Page page() {
    return page;
  }

  String name() {
    return name;
  }

  Map<Table, TablePlan> tables() {
    return tables;
  }

  /** The lines in their order, each with its row in the sheet. */
  Map<Line, Integer> lines() {
    return lines;
  }

  /** The row of the lines' headings; negative where the page has no lines. */
  int linesHeading() {
    return linesHeading;
  }

  /** The first row below everything. */
  int end() {
    return rules.stream().mapToInt(RulePlan::end).reduce(endOfPage(), Math::max);
  }

  private int endOfPage() {
    int lastLine = linesHeading < 0 ? 0 : linesHeading + 1 + lines.size();
    return tables.values().stream().mapToInt(TablePlan::end).reduce(lastLine, Math::max);
  }

  /** The rows down to the headings, where these belong to all that is below them. */
  int frozenRows() {
    if (tables.size() == 1) {
      return tables.values().iterator().next().headingRow() + 1;
    }
    return tables.isEmpty() ? linesHeading + 1 : 1;
  }

  /** Remarks are broken into lines; but beside tables their columns are too narrow for that. */
  String remarkFormat() {
    return tables.isEmpty() ? NumberFormats.TEXT : NumberFormats.GENERAL;
  }

  /** Whether each table has its name above it. */
  boolean hasSubtitles() {
    return page.tables().size() > 1;
  }

  /** How many of the sheet's columns are there to be seen. */
  int visibleColumns() {
    int ofLines = page.lines().isEmpty() && rules.isEmpty() ? 1 : NOTE + 1;
    return page.tables().stream().mapToInt(t -> t.columns().size()).reduce(ofLines, Math::max);
  }
}
