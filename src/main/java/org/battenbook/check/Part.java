package org.battenbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.battenbook.book.Column;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;

/**
 * A node of a formula, and where that formula runs as seen from another one that it is read by.
 *
 * @param row the path to the row it runs in; absent for the own row, and outside of tables
 * @param arguments what a function of the workbook's own was called with, where it is one
 */
record Part(CheckedFormula formula, Expression node, Optional<Path> row, List<Part> arguments) {

  /** A formula that runs in the own row. */
  static Part of(CheckedFormula formula, Expression node) {
    return new Part(formula, node, Optional.empty(), List.of());
  }

  /** Another node of the same formula. */
  Part at(Expression other) {
    return new Part(formula, other, row, arguments);
  }

  /** Another formula, that of a place read here, in the same row. */
  Part reading(CheckedFormula other) {
    return new Part(other, other.expression(), row, List.of());
  }

  /** The formula of a function called with these. */
  Part calling(CheckedFormula body, List<Part> values) {
    return new Part(body, body.expression(), row, values);
  }

  /** What is meant: the argument, where an argument's name stands alone. */
  Part meant() {
    if (node instanceof Reference reference) {
      Path path = formula.path(reference);
      if (path.through().isEmpty() && path.target() instanceof Target.Parameter parameter) {
        return arguments.get(parameter.index()).meant();
      }
    }
    return this;
  }

  /** A path of this formula as the reading formula has to write it; empty where it cannot. */
  Optional<Path> seen(Path path) {
    Target target = path.target();
    if (target instanceof Target.Parameter parameter) {
      return arguments.get(parameter.index()).seenThrough(path.through());
    }
    if (row.isEmpty() || target instanceof Target.Setting || isLine(target)) {
      return Optional.of(path);
    }
    if (!(target instanceof Target.Here here)) {
      return Optional.empty();
    }
    List<Column> through = new ArrayList<>(row.get().through());
    through.add((Column) here.place());
    through.addAll(path.through());
    return Optional.of(new Path(row.get().target(), through));
  }

  private Optional<Path> seenThrough(List<Column> columns) {
    Part argument = meant();
    if (!(argument.node instanceof Reference reference)) {
      return Optional.empty();
    }
    Path path = argument.formula.path(reference);
    List<Column> through = new ArrayList<>(path.through());
    through.addAll(columns);
    return argument.seen(new Path(path.target(), through));
  }

  private static boolean isLine(Target target) {
    return target instanceof Target.Here here && !(here.place() instanceof Column);
  }
}
