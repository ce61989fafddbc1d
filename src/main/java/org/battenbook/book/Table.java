package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.battenbook.source.SourceText;
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
  private final List<RowOpening> openings = new ArrayList<>();
  private @Nullable PlanStatement plan;
  private List<Column> ticket = List.of();
  private int writtenRows;

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

  /**
   * The column by which rows are called. Where a workbook forgets it, {@link BookAssembly} says so
   * and puts one in, so that every table has one.
   */
  public Column keyColumn() {
    return Objects.requireNonNull(columns.get(keyName.key()));
  }

  boolean hasKeyColumn() {
    return columns.containsKey(keyName.key());
  }

  /** Whether no workbook defines the key column: the one that is there was put in. */
  boolean forgetsKeyColumn() {
    return keyColumn().name().equals(keyName);
  }

  public List<Column> columns() {
    return List.copyOf(columns.values());
  }

  public @Nullable Column column(String key) {
    return columns.get(key);
  }

  /** The requirements and cautions of each row. */
  public List<Rule> rules() {
    return Collections.unmodifiableList(rules);
  }

  /** The columns that a person wants to see first; all of them where the workbook does not say. */
  public List<Column> ticket() {
    return ticket.isEmpty() ? columns() : ticket;
  }

  /** How its rows are opened from other tables'; none where people write them. */
  public List<RowOpening> openings() {
    return Collections.unmodifiableList(openings);
  }

  /** The plan that its rows come of; absent where they do not. */
  public @Nullable PlanStatement plan() {
    return plan;
  }

  /** Whether people write its rows; else they are opened from another table's, or planned. */
  public boolean isWritten() {
    return openings.isEmpty() && plan == null;
  }

  /** All that is written of its rows, in order; what comes later holds. */
  public List<RowSegment> segments() {
    return Collections.unmodifiableList(segments);
  }

  /** The segments that bring rows, in the order of the rows. */
  public List<RowSegment> rows() {
    return segments.stream().filter(RowSegment::bringsRows).toList();
  }

  /** How many rows people write, or lists bring. */
  public int writtenRows() {
    return writtenRows;
  }

  /** Whether a text says rows of the table, or fills them in. */
  public boolean isWrittenIn(SourceText text) {
    return segments.stream().anyMatch(segment -> segment.statedIn() == text);
  }

  void add(Column column) {
    columns.put(column.name().key(), column);
  }

  void add(Rule rule) {
    rules.add(rule);
  }

  void openBy(RowOpening statement) {
    openings.add(statement);
  }

  void planBy(PlanStatement statement) {
    plan = statement;
  }

  void add(RowSegment segment) {
    segments.add(segment);
    writtenRows += segment.bringsRows() ? segment.cells().rowCount() : 0;
  }

  void setTicket(List<Column> shownFirst) {
    ticket = List.copyOf(shownFirst);
  }

  @Override
  public String toString() {
    return name.text();
  }
}
