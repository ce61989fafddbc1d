package org.battenbook.evaluate;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.battenbook.book.Table;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** One value out of the rows of a table: of all, or of those that a {@code where} lets through. */
abstract class OverRowsPlan extends Plan {
  final Table table;
  final int rowCount;

  /** What is taken of a row that counts; absent where a row is only counted, or is the value. */
  final @Nullable Plan of;

  final @Nullable Plan where;

  /** What the {@code where} begins with, if that groups the rows. */
  final @Nullable Matching matching;

  /** The steps that one row takes. */
  private final Steps ofRow;

  OverRowsPlan(
      Expression node,
      Table table,
      @Nullable Plan of,
      @Nullable Plan where,
      @Nullable Matching matching) {
    super(node);
    this.table = table;
    this.rowCount = table.rowCount();
    this.of = of;
    this.where = where;
    this.matching = matching;
    this.ofRow = parts().stream().map(Plan::steps).reduce(Steps.ONE, Steps::plus);
  }

  @Override
  final List<Plan> parts() {
    return Stream.of(of, where).filter(Objects::nonNull).toList();
  }

  /** Those of grouping the rows, or of going through all of them each time. */
  @Override
  Steps steps() {
    return matching == null ? allRows() : matching.steps(rowCount).plus(Steps.ONE);
  }

  /** Those of going through all rows. */
  final Steps allRows() {
    return ofRow.times(rowCount).plus(Steps.ONE);
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
      return among(frame, RowList.first(rowCount));
    }
    Groups groups = frame.reading.groups(this);
    boolean serve = frame.watch == null ? groups.areExact() : groups.areOfWords();
    return serve
        ? groups.result(frame, group -> ofGroup(frame, group))
        : counted(frame, RowList.first(rowCount));
  }

  /** Goes through the rows once, to group them; to be asked for only where something does. */
  final Groups grouped(Reading reading) {
    return new Groups(Objects.requireNonNull(matching), rowCount, reading);
  }

  /** What a group comes to for the row around. */
  Value ofGroup(Frame frame, Groups.Group group) {
    return counted(frame, group.rows);
  }

  /** How many rows it goes through is known only now. */
  private Value counted(Frame frame, RowList rows) {
    Value.Fault tooMuch = frame.reading.meter().step(ofRow.each() * rows.size());
    return tooMuch == null ? among(frame, rows) : tooMuch;
  }

  /** What it comes to where only some rows can count. */
  abstract Value among(Frame frame, RowList rows);
}
