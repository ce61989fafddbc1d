package org.battenbook.book;

import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.TruthLiteral;

/**
 * A check of a job: a requirement or a caution.
 *
 * @param condition its condition, which is yes or no
 * @param required whether it is a requirement, which fails if the condition is no; otherwise it is
 *     a caution, which applies if the condition is yes
 * @param message the message, a text with holes
 */
public record Rule(Condition condition, boolean required, Formula message, String note, Span span) {

  /** Whether it is {@code caution when true}, a general caution for every job. */
  public boolean isStanding() {
    Formula formula = condition.layer().formula();
    return !required
        && formula != null
        && formula.expression() instanceof TruthLiteral truth
        && truth.truth();
  }
}
