package org.battenbook.syntax;

import java.util.List;
import org.battenbook.source.Span;

/**
 * A formula's tree, as written. Every node has an {@code id}, numbered from 0 within its formula,
 * by which later stages keep what they learn of it, and the span of its words.
 *
 * <p>Operators are data: {@code a + b} is an {@link Apply} named {@code +}. A further kind of node
 * is for further binding or laziness only.
 */
public sealed interface Expression
    permits QuantityLiteral,
        TextLiteral,
        DateLiteral,
        TruthLiteral,
        Reference,
        FirstRow,
        Apply,
        Call,
        Choice,
        AtWorst,
        Aggregate,
        Selection {

  int id();

  Span span();

  /** The parts in the order they are written. */
  List<Expression> children();

  <R> R accept(ExpressionVisitor<R> visitor);
}
