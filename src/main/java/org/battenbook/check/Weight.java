package org.battenbook.check;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * By what an error is multiplied on its way into a value: a number, factors that are worked out,
 * and the conditions under which it comes in at all.
 */
record Weight(Rational number, List<Factor> factors, List<Gate> gates) {
  static final Weight ONE = new Weight(Rational.ONE, List.of(), List.of());

  /** What multiplies it, or divides it. */
  record Factor(Part part, boolean divides) {}

  /** A condition, and what it must come to. */
  record Gate(Part condition, boolean wanted) {}

  Weight negated() {
    return new Weight(number.negate(), factors, gates);
  }

  Weight times(Part part) {
    Rational literal = literal(part);
    return literal == null
        ? with(new Factor(part, false))
        : new Weight(number.times(literal), factors, gates);
  }

  Weight over(Part part) {
    Rational literal = literal(part);
    return literal == null || literal.signum() == 0
        ? with(new Factor(part, true))
        : new Weight(number.dividedBy(literal), factors, gates);
  }

  Weight where(Part condition, boolean wanted) {
    List<Gate> more = new ArrayList<>(gates);
    more.add(new Gate(condition, wanted));
    return new Weight(number, factors, more);
  }

  /** Whether it is a mere number. */
  boolean isNumber() {
    return factors.isEmpty() && gates.isEmpty();
  }

  private Weight with(Factor factor) {
    List<Factor> more = new ArrayList<>(factors);
    more.add(factor);
    return new Weight(number, more, gates);
  }

  /** The number that a part is written as; absent where it is more than a plain number. */
  private static @Nullable Rational literal(Part part) {
    Part meant = part.meant();
    return meant.formula().literal(meant.node()).orElse(null) instanceof Value.Amount amount
            && amount.quantity().dimension().isNone()
            && amount.quantity().number() instanceof Rational plain
        ? plain
        : null;
  }
}
