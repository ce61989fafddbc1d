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

/**
 * A table: its columns, the rules for each row, and all that files write of its rows. The rows
 * themselves are known only after evaluation.
 */
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
  private List<Column> firstColumns = List.of();
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

  /** The key of its name, for lookups. */
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

  /** The name of the key column, which names the rows. */
  public Name keyName() {
    return keyName;
  }

  /**
   * The key column, which names the rows. Every table has one: if a workbook does not define it,
   * {@link BookAssembly} reports that and adds one.
   */
  public Column keyColumn() {
    return Objects.requireNonNull(columns.get(keyName.key()));
  }

  boolean hasKeyColumn() {
    return columns.containsKey(keyName.key());
  }

  /** Whether no workbook defines the key column, so that {@link BookAssembly} added it. */
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

  /** The columns to show first; all columns if the workbook names none. */
  public List<Column> shownFirst() {
    return firstColumns.isEmpty() ? columns() : firstColumns;
  }

  /** The statements that open its rows from other tables; none if people write its rows. */
  public List<RowOpening> openings() {
    return Collections.unmodifiableList(openings);
  }

  /** The plan that makes its rows; null if none does. */
  public @Nullable PlanStatement plan() {
    return plan;
  }

  /** Whether people write its rows, or a list has them; if not, they are opened or planned. */
  public boolean isWritten() {
    return openings.isEmpty() && plan == null;
  }

  /** All row segments, in file order. A later segment overrides an earlier one. */
  public List<RowSegment> segments() {
    return Collections.unmodifiableList(segments);
  }

  /** The segments with new rows, in the order of the rows. */
  public List<RowSegment> rows() {
    return segments.stream().filter(RowSegment::bringsRows).toList();
  }

  /** The number of rows that people write or lists have. */
  public int writtenRows() {
    return writtenRows;
  }

  /** Whether a file has rows of the table, or cells for its opened rows. */
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

  void setShownFirst(List<Column> shownFirst) {
    firstColumns = List.copyOf(shownFirst);
  }

  @Override
  public String toString() {
    return name.text();
  }
}
