package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.TruthLiteral;

/**
 * A requirement or a caution.
 *
 * @param condition decides by its value, yes or no
 * @param required whether it must hold (a requirement), rather than warn when it fires (a caution)
 * @param message what to say: a text with holes
 */
public record Rule(Condition condition, boolean required, Formula message, String note, Span span) {

  /** Whether it is {@code caution when true}: it does not fire, it stands for every job. */
  public boolean isStanding() {
    Formula formula = condition.layer().formula();
    return !required
        && formula != null
        && formula.expression() instanceof TruthLiteral truth
        && truth.truth();
  }
}
