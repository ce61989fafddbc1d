package org.battenbook.syntax;

/** One case for each kind of {@link Expression}; no defaults, so that none is forgotten. */
public interface ExpressionVisitor<R> {
  R quantity(QuantityLiteral literal);

  R text(TextLiteral literal);

  R date(DateLiteral literal);

  R truth(TruthLiteral literal);

  R reference(Reference reference);

  R firstRow(FirstRow firstRow);

  R apply(Apply apply);

  R call(Call call);

  R choice(Choice choice);

  R atWorst(AtWorst atWorst);

  R aggregate(Aggregate aggregate);

  R selection(Selection selection);
}
