package org.battenbook.evaluate;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.battenbook.bind.BookRows;
import org.battenbook.book.Table;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * A node that goes over the rows of a table: all of them, or those that {@code where} lets through.
 */
abstract class OverRowsNode extends FormulaNode {
  final Table table;

  /**
   * The value of a row that counts; absent where rows are only counted, or the row is the value.
   */
  final @Nullable FormulaNode of;

  final @Nullable FormulaNode where;

  /** The beginning of {@code where}, if it groups the rows. */
  final @Nullable Matching matching;

  /** The operations that one row takes. */
  private final int operationsOfRow;

  OverRowsNode(
      Expression node,
      Table table,
      @Nullable FormulaNode of,
      @Nullable FormulaNode where,
      @Nullable Matching matching) {
    super(node);
    this.table = table;
    this.of = of;
    this.where = where;
    this.matching = matching;
    this.operationsOfRow = operations();
  }

  @Override
  final List<FormulaNode> parts() {
    return Stream.of(of, where).filter(Objects::nonNull).toList();
  }

  /** The steps of grouping the rows, or of going through all of them each time. */
  @Override
  Steps steps(BookRows rows) {
    return matching == null
        ? allRows(rows)
        : matching.steps(rows.rows(table).count(), rows).plus(Steps.ONE);
  }

  /** The steps of going through all rows. */
  final Steps allRows(BookRows rows) {
    return stepsOfParts(rows).times(rows.rows(table).count()).plus(Steps.ONE);
  }

  /** Goes through the rows that can count for the row around. */
  final Value goThrough(Frame frame) {
    if (frame.watch != null) {
      frame.watch.overRows(table);
    }
    Value missing = frame.reading.missingRows(table);
    if (missing != null) {
      return missing;
    }
    if (matching == null) {
      return counted(frame, all(frame.reading));
    }
    Groups groups = frame.reading.groups(this);
    boolean serve = frame.watch == null ? groups.areExact() : groups.areOfWords();
    return serve
        ? groups.result(frame, group -> ofGroup(frame, group))
        : counted(frame, all(frame.reading));
  }

  private RowList all(Reading reading) {
    return RowList.first(reading.rows(table).count());
  }

  /** Groups the rows in one pass. Only to be called where {@link #matching} is present. */
  final Groups grouped(Reading reading) {
    return new Groups(Objects.requireNonNull(matching), reading.rows(table).count(), reading);
  }

  /** The result of a group for the row around. */
  Value ofGroup(Frame frame, Groups.Group group) {
    return counted(frame, group.rows);
  }

  /** The result over some rows. Their number is known only now, so their steps are counted now. */
  private Value counted(Frame frame, RowList rows) {
    Value.Fault tooMuch = frame.reading.meter().step((long) operationsOfRow * rows.size());
    return tooMuch == null ? among(frame, rows) : tooMuch;
  }

  /** The result over rows that can count. */
  abstract Value among(Frame frame, RowList rows);
}
