package org.battenbook.evaluate;

import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * One value out of the rows of a table. {@code where} is decided first; what is taken of a row that
 * does not count is not worked out.
 */
final class AggregatePlan extends Plan {
  final AggregateFunction function;
  final Kind kind;
  final int rowCount;
  final @Nullable Plan of;
  final @Nullable Plan where;

  /** What the {@code where} compares, if it compares the rows' own value with one of the outer. */
  final @Nullable Matching matching;

  /**
   * {@code where inner = outer}: rows are grouped by the inner side once, not gone through anew.
   */
  record Matching(Plan inner, Plan outer) {}

  AggregatePlan(
      Aggregate node,
      Kind kind,
      int rowCount,
      @Nullable Plan of,
      @Nullable Plan where,
      @Nullable Matching matching) {
    super(node);
    this.function = node.function();
    this.kind = kind;
    this.rowCount = rowCount;
    this.of = of;
    this.where = where;
    this.matching = matching;
  }

  @Override
  Value evaluate(Frame frame) {
    if (matching != null && frame.watch == null) {
      Groups groups = frame.reading.groups(this);
      if (groups.areExact()) {
        Value key = matching.outer().run(frame.inner());
        return key.isKnown() ? groups.result(key) : key;
      }
    }
    return goThrough(frame);
  }

  private Value goThrough(Frame frame) {
    Aggregation aggregation = new Aggregation(function, kind);
    Frame inner = frame.inner();
    for (int row = 0; row < rowCount && !aggregation.isBroken(); row++) {
      inner.row = row;
      Value counts = where == null ? null : where.run(inner);
      if (counts == null || (counts instanceof Value.YesNo yesNo && yesNo.yes())) {
        aggregation.add(taken(inner));
      } else if (!counts.isKnown()) {
        aggregation.add(counts);
      }
    }
    return aggregation.result();
  }

  /** What is taken of a row; of a row that is only counted, something known. */
  Value taken(Frame inner) {
    return of == null ? new Value.YesNo(true) : of.run(inner);
  }
}
