package org.battenbook.check;

import org.battenbook.book.Place;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Places that are declared as counts: their values are whole and not negative. */
public final class Counts {
  private Counts() {}

  /** Whether the values of a place must be counts, and this formula of it can give another. */
  public static boolean mustBeChecked(Place place, CheckedFormula formula) {
    return DeclaredKinds.isCount(place.declaredKind())
        && !isAlwaysCount(formula, formula.expression());
  }

  /** Whether a value is a count. */
  static boolean isCount(Value value) {
    return value instanceof Value.Amount amount
        && amount.quantity().number() instanceof Rational number
        && number.isWhole()
        && number.signum() >= 0;
  }

  /** Whether a node gives counts only, whatever it reads. A no is not certain. */
  private static boolean isAlwaysCount(CheckedFormula formula, @Nullable Expression node) {
    if (node == null) {
      return false;
    }
    if (formula.literal(node).isPresent()) {
      return isCount(formula.literal(node).get());
    }
    if (node instanceof Reference reference) {
      return readsCount(formula.path(reference));
    }
    if (node instanceof Choice choice) {
      return isAlwaysCount(formula, choice.then()) && isAlwaysCount(formula, choice.otherwise());
    }
    if (node instanceof Aggregate aggregate) {
      return isAlwaysCount(formula, aggregate);
    }
    return formula.isPixelCount(node) || keepsCounts(formula, node);
  }

  /** What a change inherits can be any number: only its result must be a count. */
  private static boolean readsCount(Path path) {
    Place place = path.place();
    return place != null
        && !(path.target() instanceof Target.Inherited)
        && DeclaredKinds.isCount(place.declaredKind());
  }

  private static boolean isAlwaysCount(CheckedFormula formula, Aggregate aggregate) {
    return aggregate.function() == AggregateFunction.COUNT
        || (aggregate.function() != AggregateFunction.AVERAGE
            && isAlwaysCount(formula, aggregate.of()));
  }

  private static boolean keepsCounts(CheckedFormula formula, Expression node) {
    return formula.fact(node) instanceof Operation operation
        && operation.keepsCounts()
        && node.children().stream().allMatch(child -> isAlwaysCount(formula, child));
  }
}
