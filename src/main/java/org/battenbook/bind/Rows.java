package org.battenbook.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.book.Column;
import org.battenbook.book.OpenedKey;
import org.battenbook.book.Place;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.RowOpening;
import org.battenbook.book.RowSegment;
import org.battenbook.book.Table;
import org.battenbook.number.Rational;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a table after its openings and plan have run: their names, and where each comes from.
 * A row is identified by its index, counted from 0.
 */
public final class Rows {
  /** The index for "no row". */
  public static final int NO_ROW = -1;

  private final Table table;
  private final RowKeys keys;

  /** How each row is opened; empty if people write the rows or a plan makes them. */
  private final List<Opened> opened;

  /** The cells that a plan makes, by column. */
  private final Map<Column, List<@Nullable Value>> planned;

  /** For each segment of an opened table, the rows that it enters cells of. */
  private final Map<RowSegment, int[]> filled = new HashMap<>();

  /** The rows of the tables that open these rows. */
  private final Map<Table, Rows> sources;

  private final @Nullable MissingRows missing;

  /**
   * How a row is opened.
   *
   * @param from the row of the source table that opens it
   * @param number its number among the rows that this source row opens, from 1
   */
  public record Opened(RowOpening opening, int from, int number) {}

  private Rows(
      Table table,
      RowKeys keys,
      List<Opened> opened,
      Map<Column, List<@Nullable Value>> planned,
      Map<Table, Rows> sources,
      @Nullable MissingRows missing) {
    this.table = table;
    this.keys = keys;
    this.opened = opened;
    this.planned = planned;
    this.sources = Map.copyOf(sources);
    this.missing = missing;
  }

  /** Rows that people write, or that come from a list. */
  public static Rows written(Table table, RowKeys keys) {
    return new Rows(table, keys, List.of(), Map.of(), Map.of(), null);
  }

  /**
   * Rows that are opened.
   *
   * @param sources the rows of the tables that open them
   * @param missing why some are not known yet; null if all are known
   */
  public static Rows opened(
      Table table,
      RowKeys keys,
      List<Opened> opened,
      Map<Table, Rows> sources,
      @Nullable MissingRows missing) {
    Rows rows = new Rows(table, keys, List.copyOf(opened), Map.of(), sources, missing);
    rows.findFilledRows();
    return rows;
  }

  /**
   * Rows that a plan makes.
   *
   * @param cells for each column that the plan fills, a value for each row
   * @param missing why some are not known yet; null if all are known
   */
  public static Rows planned(
      Table table,
      RowKeys keys,
      Map<Column, List<@Nullable Value>> cells,
      @Nullable MissingRows missing) {
    return new Rows(table, keys, List.of(), Map.copyOf(cells), Map.of(), missing);
  }

  private void findFilledRows() {
    Map<OpenedKey, Integer> byKey = table.segments().isEmpty() ? Map.of() : byKey();
    for (RowSegment segment : table.segments()) {
      filled.put(
          segment,
          segment.filled().stream()
              .mapToInt(one -> byKey.getOrDefault(one.key(), NO_ROW))
              .toArray());
    }
  }

  /**
   * An index of opened rows. A row without a number in its name is also found by the name with
   * number 1, unless that is the name of another row.
   */
  private Map<OpenedKey, Integer> byKey() {
    Map<OpenedKey, Integer> rows = new HashMap<>();
    for (int row = 0; row < opened.size(); row++) {
      rows.put(OpenedKey.named(name(row)), row);
    }
    for (int row = 0; row < opened.size(); row++) {
      Opened one = opened.get(row);
      String each = each(one);
      String number = Integer.toString(one.number());
      rows.put(OpenedKey.opened(one.opening(), each, number), row);
      if (each.equals(name(row))) {
        rows.put(OpenedKey.opened(one.opening(), each, ""), row);
        rows.putIfAbsent(OpenedKey.named(RowOpening.numbered(each, number)), row);
      }
    }
    return rows;
  }

  private String each(Opened one) {
    return source(one).name(one.from());
  }

  private Rows source(Opened one) {
    return Objects.requireNonNull(sources.get(one.opening().from()));
  }

  /** A row of a table. */
  public record RowOf(Table table, int row) {}

  public Table table() {
    return table;
  }

  public int count() {
    return keys.names().size();
  }

  public RowKeys keys() {
    return keys;
  }

  public String name(int row) {
    return keys.name(row);
  }

  /** The spot of a column in each row. */
  public Stream<Spot> spots(Place column) {
    return IntStream.range(0, count()).mapToObj(row -> new Spot(column, row));
  }

  /** Why some rows are not known yet; null if all are known. */
  public @Nullable MissingRows missing() {
    return missing;
  }

  /** Whether it is certain that no row has this name. */
  public boolean lack(String name) {
    return keys.row(name).isEmpty() && !mayAppear(name);
  }

  /** Whether a row with this name can still be opened, once all rows are known. */
  boolean mayAppear(String name) {
    return missing != null && missing.mayHave(name);
  }

  /**
   * The first row that differs from before in its name, its source or its planned cells.
   *
   * @param before earlier rows of the same table
   * @return {@link #NO_ROW} if no row differs
   */
  public int firstOther(Rows before) {
    int both = Math.min(count(), before.count());
    for (int row = 0; row < both; row++) {
      if (!isSame(row, before)) {
        return row;
      }
    }
    return count() == before.count() ? NO_ROW : both;
  }

  @SuppressWarnings("ReferenceEquality")
  private boolean isSame(int row, Rows before) {
    if (!name(row).equals(before.name(row))) {
      return false;
    }
    if (!opened.isEmpty()) {
      Opened now = opened.get(row);
      Opened then = before.opened.get(row);
      return now.opening() == then.opening()
          && now.from() == then.from()
          && now.number() == then.number();
    }
    return planned.entrySet().stream()
        .allMatch(
            cells ->
                Objects.equals(
                    cells.getValue().get(row),
                    Objects.requireNonNull(before.planned.get(cells.getKey())).get(row)));
  }

  /**
   * The row with a name, as a value. If there is none, the result is a fault, or what {@link
   * MissingRows#waitsFor} says while the row can still appear.
   */
  public Value called(String name) {
    return keys.row(name)
        .<Value>map(row -> new Value.Row(table.key(), row, name(row)))
        .orElseGet(() -> notThere(name));
  }

  private Value notThere(String name) {
    return missing == null || lack(name)
        ? new Value.Fault("no-such-row", keys.missing(name))
        : missing.waitsFor();
  }

  /**
   * Where the name of a row is written. For an opened row that is the name of its source row, and
   * for a planned row the statement of the plan.
   */
  public Span nameSpan(int row) {
    if (table.plan() != null) {
      return table.plan().statement();
    }
    if (!opened.isEmpty()) {
      Opened one = opened.get(row);
      return source(one).nameSpan(one.from());
    }
    for (RowSegment segment : table.rows()) {
      if (segment.brings(row)) {
        return segment.nameSpan(row - segment.firstRow());
      }
    }
    return table.origin();
  }

  /** The statement that opens a row; empty if people write it or a plan makes it. */
  public Optional<RowOpening> opening(int row) {
    return opened.isEmpty() ? Optional.empty() : Optional.of(opened.get(row).opening());
  }

  /** The source row that opens a row; empty if people write it or a plan makes it. */
  public Optional<RowOf> openedFrom(int row) {
    return opened.isEmpty()
        ? Optional.empty()
        : Optional.of(new RowOf(opened.get(row).opening().from(), opened.get(row).from()));
  }

  /** The statement that makes a row: the plan, the opening, or for a written row the table. */
  public Span origin(int row) {
    PlanStatement plan = table.plan();
    return plan != null
        ? plan.statement()
        : opening(row).map(RowOpening::statement).orElseGet(table::origin);
  }

  /**
   * The value that an opened or planned row has in a column from the start: its name, its source
   * row, its number or a planned cell. It is null if cells and formulas decide.
   */
  public @Nullable Value brought(Column column, int row) {
    if (!opened.isEmpty()) {
      return broughtByOpening(opened.get(row), column, row);
    }
    List<@Nullable Value> cells = planned.get(column);
    return cells == null ? null : cells.get(row);
  }

  private @Nullable Value broughtByOpening(Opened one, Column column, int row) {
    RowOpening.Count count = one.opening().count();
    if (column == table.keyColumn()) {
      return new Value.Text(name(row));
    }
    if (column == one.opening().each()) {
      return new Value.Row(one.opening().from().key(), one.from(), each(one));
    }
    return count != null && column == count.number()
        ? new Value.Amount(Quantity.of(Rational.of(one.number())))
        : null;
  }

  /**
   * The row of the table that a row of a segment writes or enters cells of.
   *
   * @param at the index of the row in the segment
   * @return {@link #NO_ROW} if the table has no such row
   */
  public int row(RowSegment segment, int at) {
    int[] rows = filled.get(segment);
    return rows == null ? segment.firstRow() + at : rows[at];
  }

  /**
   * The inverse of {@link #row(RowSegment, int)}: the last row of a segment that writes a row of
   * the table or enters cells of it.
   *
   * @return {@link #NO_ROW} if the segment has no such row
   */
  public int at(RowSegment segment, int row) {
    int[] rows = filled.get(segment);
    if (rows == null) {
      return segment.brings(row) ? row - segment.firstRow() : NO_ROW;
    }
    for (int at = rows.length - 1; at >= 0; at--) {
      if (rows[at] == row) {
        return at;
      }
    }
    return NO_ROW;
  }

  /** Where the cell of a row is written, the last place if there are several; empty if nowhere. */
  public Optional<Span> cell(Column column, int row) {
    Optional<Span> last =
        opening(row)
            .flatMap(opening -> Optional.ofNullable(opening.cells().get(column)))
            .map(formula -> formula.span());
    for (RowSegment segment : table.segments()) {
      int at = at(segment, row);
      Optional<Span> here = at == NO_ROW ? Optional.empty() : segment.cell(column, at);
      last = here.isPresent() ? here : last;
    }
    return last;
  }

  /** Whether a file writes rows of the table, cells of them, or rows that open them. */
  public boolean areStatedIn(SourceText text) {
    boolean areOpened =
        !opened.isEmpty()
            && table.openings().stream()
                .flatMap(opening -> opening.from().rows().stream())
                .anyMatch(segment -> segment.statedIn() == text);
    return areOpened || table.isWrittenIn(text);
  }
}
