package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/** A kind as written after a colon. */
public sealed interface KindExpression {
  Span span();

  /** The kind of one name. */
  static KindExpression named(String name, Span span) {
    return new Product(List.of(new Factor(new Name(name, span), false, 1)), span);
  }

  /** {@code row of mouldings}. */
  record RowOf(Name table, Span span) implements KindExpression {}

  /**
   * {@code length}, {@code money / length}, {@code mass / length^3}, {@code text}, {@code count}.
   * The first factor's divided is false.
   */
  record Product(List<Factor> factors, Span span) implements KindExpression {
    public Product {
      factors = List.copyOf(factors);
    }
  }

  /** One factor of a product: a name of a kind, whether it divides, and its whole power. */
  record Factor(Name name, boolean divides, int power) {}
}
