package org.battenbook.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * The factor of an error on its way into a value: a number, nodes that multiply or divide it, and
 * the conditions under which it reaches the value at all.
 */
record Sensitivity(Rational number, List<Factor> factors, List<Gate> gates) {
  static final Sensitivity ONE = new Sensitivity(Rational.ONE, List.of(), List.of());

  /** A node that multiplies or divides the error. */
  record Factor(NodeInScope part, boolean divides) {
    Dimension dimension() {
      return ((Kind.Measured) part.formula().kind(part.node())).dimension();
    }
  }

  /** A condition, and the value that it must have. */
  record Gate(NodeInScope condition, boolean wanted) {}

  Sensitivity negated() {
    return new Sensitivity(number.negate(), factors, gates);
  }

  Sensitivity times(NodeInScope part) {
    Rational literal = literal(part);
    return literal == null
        ? with(new Factor(part, false))
        : new Sensitivity(number.times(literal), factors, gates);
  }

  Sensitivity over(NodeInScope part) {
    Rational literal = literal(part);
    return literal == null || literal.signum() == 0
        ? with(new Factor(part, true))
        : new Sensitivity(number.dividedBy(literal), factors, gates);
  }

  Sensitivity where(NodeInScope condition, boolean wanted) {
    List<Gate> more = new ArrayList<>(gates);
    more.add(new Gate(condition, wanted));
    return new Sensitivity(number, factors, more);
  }

  /** One where its conditions hold. */
  Sensitivity gatesAlone() {
    return new Sensitivity(Rational.ONE, List.of(), gates);
  }

  /** Whether it is a plain number. */
  boolean isNumber() {
    return factors.isEmpty() && gates.isEmpty();
  }

  private Sensitivity with(Factor factor) {
    List<Factor> more = new ArrayList<>(factors);
    more.add(factor);
    return new Sensitivity(number, more, gates);
  }

  /** The number that a node is; absent where it is more than a plain number. */
  private static @Nullable Rational literal(NodeInScope part) {
    NodeInScope meant = part.meant();
    return meant.formula().literal(meant.node()).orElse(null) instanceof Value.Amount amount
            && amount.quantity().dimension().isNone()
            && amount.quantity().number() instanceof Rational plain
        ? plain
        : null;
  }
}
