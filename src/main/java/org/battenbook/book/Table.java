package org.battenbook.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
  private boolean settled = true;
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
    return List.copyOf(rules);
  }

  /** The columns that a person wants to see first; all of them where the workbook does not say. */
  public List<Column> ticket() {
    return ticket.isEmpty() ? columns() : ticket;
  }

  /** How its rows are opened from other tables'; none where people write them. */
  public List<RowOpening> openings() {
    return List.copyOf(openings);
  }

  /** The plan that its rows come of; absent where they do not. */
  public @Nullable PlanStatement plan() {
    return plan;
  }

  /** What has to be worked out before it is known which rows there are; nothing where it is. */
  public List<Place> rowsNeed() {
    Set<Place> needs = new LinkedHashSet<>();
    addRowNeeds(needs, new HashSet<>());
    return List.copyOf(needs);
  }

  /** Adds the same, each table once: rows may come from one table in many ways. */
  void addRowNeeds(Set<Place> needs, Set<Table> seen) {
    if (seen.add(this)) {
      openings.forEach(opening -> opening.addNeeds(needs, seen));
      if (plan != null) {
        plan.addNeeds(needs, seen);
      }
    }
  }

  /** Where the name of a row stands, or of what that is opened from, or the plan it comes from. */
  public Span nameSpan(int row) {
    if (plan != null) {
      return plan.statement();
    }
    for (RowSegment segment : rows()) {
      int at = row - segment.firstRow();
      if (at < segment.cells().rowCount()) {
        return segment.nameSpan(at, segment.columns().indexOf(keyColumn()));
      }
    }
    return name.span();
  }

  /** How a row is opened; empty for one that people write. */
  public Optional<RowOpening> opens(int row) {
    int rowsBefore = 0;
    for (int i = 0; i < openings.size(); i++) {
      rowsBefore += segments.get(i).cells().rowCount();
      if (row < rowsBefore) {
        return Optional.of(openings.get(i));
      }
    }
    return Optional.empty();
  }

  /** A row of a table. */
  public record RowOf(Table table, int row) {}

  /** The row of another table that opens a row; empty for one that people write. */
  public Optional<RowOf> openedFrom(int row) {
    for (RowSegment segment : rows()) {
      int at = row - segment.firstRow();
      if (segment.opened() != null && at >= 0 && at < segment.cells().rowCount()) {
        return Optional.of(new RowOf(segment.opened().from(), segment.opened().rows().get(at)));
      }
    }
    return Optional.empty();
  }

  /** The statement that brings a row; for one that people write, that of the table. */
  public Span rowOrigin(int row) {
    return plan != null
        ? plan.statement()
        : opens(row).map(RowOpening::statement).orElseGet(this::origin);
  }

  /** Whether all its rows are there; if not, some may still be opened. */
  public boolean isSettled() {
    return settled;
  }

  /** All that is written of its rows, stretch by stretch; what comes later has the word. */
  public List<RowSegment> segments() {
    return List.copyOf(segments);
  }

  /** The stretches that bring rows, in the order of the rows. */
  public List<RowSegment> rows() {
    return segments.stream().filter(RowSegment::bringsRows).toList();
  }

  public int rowCount() {
    return rowCount;
  }

  /** Whether a text says rows of the table, or fills them in. */
  public boolean isWrittenIn(SourceText text) {
    return segments.stream().anyMatch(segment -> segment.statedIn() == text);
  }

  /** Whether a text says rows of the table, fills them in, or writes those that open them. */
  public boolean isStatedIn(SourceText text) {
    boolean isOpened =
        rowCount > 0
            && openings.stream()
                .flatMap(opening -> opening.from().rows().stream())
                .anyMatch(segment -> segment.statedIn() == text);
    return isOpened || isWrittenIn(text);
  }

  /**
   * The text of a cell that comes with an opened row: the row that opens it, or its number.
   *
   * @throws IllegalArgumentException when nothing opens the row, or it has no such cell
   */
  public String openedCell(Column column, int row) {
    for (RowSegment segment : rows()) {
      int at = segment.columns().indexOf(column);
      if (segment.opened() != null && segment.brings(row) && at >= 0) {
        return segment.cells().span(segment.at(row), at).text();
      }
    }
    throw new IllegalArgumentException("no opened cell '%s' in row %d".formatted(column, row));
  }

  /** Where the cell of a row is written; empty where it is left to the column. */
  public Optional<Span> cell(Column column, int row) {
    Optional<Span> nearest = Optional.empty();
    for (RowSegment segment : segments) {
      Optional<Span> here = segment.cell(column, row);
      nearest = here.isPresent() ? here : nearest;
    }
    return nearest;
  }

  void add(Column column) {
    columns.put(column.name().key(), column);
  }

  void add(Rule rule) {
    rules.add(rule);
  }

  void openBy(RowOpening statement, boolean allRowsAreThere) {
    openings.add(statement);
    settled = allRowsAreThere;
  }

  void planBy(PlanStatement statement, boolean allRowsAreThere) {
    plan = statement;
    settled = allRowsAreThere;
  }

  void add(RowSegment segment) {
    segments.add(segment);
    rowCount += segment.bringsRows() ? segment.cells().rowCount() : 0;
  }

  void setTicket(List<Column> shownFirst) {
    ticket = List.copyOf(shownFirst);
  }

  @Override
  public String toString() {
    return name.text();
  }
}
