package org.battenbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A table: columns, rules for each row, and the rows that people wrote. */
public final class Table {
  private final Name name;
  private final Page page;
  private final Name keyName;
  private final String note;
  private final Map<String, Column> columns = new LinkedHashMap<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<RowSegment> segments = new ArrayList<>();
  private List<Column> ticket = List.of();
  private int rowCount;

  Table(Name name, Page page, Name keyName, String note) {
    this.name = name;
    this.page = page;
    this.keyName = keyName;
    this.note = note;
  }

  public Name name() {
    return name;
  }

  /** What it is looked up by. */
  public String key() {
    return name.key();
  }

  public Page page() {
    return page;
  }

  public String note() {
    return note;
  }

  public Span origin() {
    return name.span();
  }

  /** The name of the column by which rows are called. */
  public Name keyName() {
    return keyName;
  }

  /** The column by which rows are called; absent only while a fault is being reported. */
  public @Nullable Column keyColumn() {
    return columns.get(keyName.key());
  }

  public List<Column> columns() {
    return List.copyOf(columns.values());
  }

  public @Nullable Column column(String key) {
    return columns.get(key);
  }

  /** The requirements and cautions of each row. */
  public List<Rule> rules() {
    return List.copyOf(rules);
  }

  /** The columns that a person wants to see first; all of them where the workbook does not say. */
  public List<Column> ticket() {
    return ticket.isEmpty() ? columns() : ticket;
  }

  /** The rows as written, stretch by stretch. */
  public List<RowSegment> segments() {
    return List.copyOf(segments);
  }

  public int rowCount() {
    return rowCount;
  }

  /** The stretch in which a row, counted from 0 in the whole table, was written. */
  public RowSegment segmentOf(int row) {
    for (RowSegment segment : segments) {
      if (row < segment.firstRow() + segment.cells().rowCount()) {
        return segment;
      }
    }
    throw new IndexOutOfBoundsException("row %d of %d".formatted(row, rowCount));
  }

  void add(Column column) {
    columns.put(column.name().key(), column);
  }

  void add(Rule rule) {
    rules.add(rule);
  }

  void add(RowSegment segment) {
    segments.add(segment);
    rowCount += segment.cells().rowCount();
  }

  void setTicket(List<Column> shownFirst) {
    ticket = List.copyOf(shownFirst);
  }

  @Override
  public String toString() {
    return name.text();
  }
}
