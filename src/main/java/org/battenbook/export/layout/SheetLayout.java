package org.battenbook.export.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;
import org.battenbook.export.file.Address;

/**
 * The layout of a page's sheet: a title, the lines that are written above the tables, the tables,
 * and the other lines.
 */
public final class SheetLayout {
  public static final int NAME = 0;
  public static final int VALUE = 1;
  public static final int UNIT = 2;
  public static final int WRITTEN = 3;
  public static final int NOTE = 4;

  private final Page page;
  private final String name;
  private final Map<Table, TableLayout> tables = new LinkedHashMap<>();
  private final List<LineBlock> lines = new ArrayList<>();

  SheetLayout(Page page, String name, BookRows rows) {
    this.page = page;
    this.name = name;
    int row = page.note().isEmpty() ? 1 : 2;
    row = placeLines(page.linesAbove(), row);
    for (Table table : page.tables()) {
      int heading = row + (hasSubtitles() ? 2 : 1);
      TableLayout placed = new TableLayout(rows.rows(table), name, heading, visibleColumns());
      tables.put(table, placed);
      row = placed.end();
    }
    placeLines(page.linesBelow(), row);
  }

  /** Adds lines and returns the first row that is free below them. */
  private int placeLines(List<Line> placed, int free) {
    if (placed.isEmpty()) {
      return free;
    }
    lines.add(new LineBlock(free + 1, placed));
    return free + 2 + placed.size();
  }

  public Page page() {
    return page;
  }

  public String name() {
    return name;
  }

  public Map<Table, TableLayout> tables() {
    return tables;
  }

  /** The address of each line. */
  public Map<Line, Address> lineAddresses() {
    Map<Line, Address> addresses = new LinkedHashMap<>();
    for (LineBlock block : lines) {
      for (int i = 0; i < block.lines().size(); i++) {
        addresses.put(block.lines().get(i), new Address(name, block.row(i), VALUE));
      }
    }
    return addresses;
  }

  /** The lines above the tables and the lines below them. */
  public List<LineBlock> lines() {
    return lines;
  }

  /** The first row below everything. */
  public int end() {
    int lastLine = lines.stream().mapToInt(LineBlock::end).reduce(0, Math::max);
    return tables.values().stream().mapToInt(TableLayout::end).reduce(lastLine, Math::max);
  }

  /**
   * How many rows at the top do not scroll: down to the headings if they head all that is below.
   */
  public int frozenRows() {
    if (tables.isEmpty()) {
      return lines.isEmpty() ? 1 : lines.get(0).headingRow() + 1;
    }
    boolean first = tables.size() == 1 && page.linesAbove().isEmpty();
    return first ? tables.values().iterator().next().headingRow() + 1 : 1;
  }

  /** Whether the page has only lines, so that the columns are made for them. */
  public boolean isOfLines() {
    return tables.isEmpty();
  }

  /** Whether each table has its name above it. */
  public boolean hasSubtitles() {
    return page.tables().size() > 1;
  }

  /** How many columns of the sheet people see. */
  public int visibleColumns() {
    int ofLines = page.lines().isEmpty() ? 1 : NOTE + 1;
    return page.tables().stream().mapToInt(t -> t.columns().size()).reduce(ofLines, Math::max);
  }
}
