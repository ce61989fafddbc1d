package org.battenbook.tolerance;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;

/**
 * A node of a formula, and where that formula runs, seen from the formula that reads it.
 *
 * @param row the path to the row it runs in; absent for the own row, and outside of tables
 * @param arguments the arguments, where it is the formula of a function of the workbook
 */
record NodeInScope(
    CheckedFormula formula, Expression node, Optional<Path> row, List<NodeInScope> arguments) {

  /** A formula that runs in the own row. */
  static NodeInScope of(CheckedFormula formula, Expression node) {
    return new NodeInScope(formula, node, Optional.empty(), List.of());
  }

  /** Another node of the same formula. */
  NodeInScope at(Expression other) {
    return new NodeInScope(formula, other, row, arguments);
  }

  /** Another formula, that of a place read here, in the same row. */
  NodeInScope reading(CheckedFormula other) {
    return new NodeInScope(other, other.expression(), row, List.of());
  }

  /** The formula of a function called with these. */
  NodeInScope calling(CheckedFormula body, List<NodeInScope> values) {
    return new NodeInScope(body, body.expression(), row, values);
  }

  /** The node itself; where it is only the name of an argument, that argument. */
  NodeInScope meant() {
    if (node instanceof Reference reference) {
      Path path = formula.path(reference);
      if (path.through().isEmpty() && path.target() instanceof Target.Parameter parameter) {
        return arguments.get(parameter.index()).meant();
      }
    }
    return this;
  }

  /** A path of this formula, as the reading formula has to write it; empty where it cannot. */
  Optional<Path> seen(Path path) {
    return path.target().accept(new Seen(path));
  }

  private Optional<Path> seenThrough(List<Place> columns) {
    NodeInScope argument = meant();
    if (!(argument.node instanceof Reference reference)) {
      return Optional.empty();
    }
    Path path = argument.formula.path(reference);
    return argument.seen(new Path(path.target(), joined(path.through(), columns)));
  }

  private static List<Place> joined(List<Place> first, List<Place> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }

  /** How the reading formula has to write a path of this one. */
  private final class Seen implements TargetVisitor<Optional<Path>> {
    private final Path path;

    Seen(Path path) {
      this.path = path;
    }

    @Override
    public Optional<Path> here(Target.Here here) {
      return here.place().table() == null ? Optional.of(path) : inRow(here.place());
    }

    private Optional<Path> inRow(Place place) {
      return row.isEmpty()
          ? Optional.of(path)
          : row.map(
              to ->
                  new Path(
                      to.target(), joined(joined(to.through(), List.of(place)), path.through())));
    }

    @Override
    public Optional<Path> above(Target.Above above) {
      return inOwnRow();
    }

    @Override
    public Optional<Path> outer(Target.Outer outer) {
      return inOwnRow();
    }

    @Override
    public Optional<Path> outerRow(Target.OuterRow outerRow) {
      return inOwnRow();
    }

    @Override
    public Optional<Path> parameter(Target.Parameter parameter) {
      return arguments.get(parameter.index()).seenThrough(path.through());
    }

    @Override
    public Optional<Path> inherited(Target.Inherited inherited) {
      return inOwnRow();
    }

    @Override
    public Optional<Path> setting(Target.Setting setting) {
      return Optional.of(path);
    }

    private Optional<Path> inOwnRow() {
      return row.isEmpty() ? Optional.of(path) : Optional.empty();
    }
  }
}
