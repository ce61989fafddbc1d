package org.battenbook.workbook;

import org.battenbook.bind.Spot;
import org.battenbook.book.Rule;
import org.battenbook.evaluate.Results;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** The result of a requirement or a caution in one row, or on a page. */
public final class Verdict {
  private final Results results;
  private final Rule rule;
  private final int row;

  Verdict(Results results, Rule rule, int row) {
    this.results = results;
    this.rule = rule;
    this.row = row;
  }

  public Rule rule() {
    return rule;
  }

  /** The row, counted from 0; 0 for a page's rule. */
  public int row() {
    return row;
  }

  /** Yes, no, a fault, or waiting. */
  public Value value() {
    return results.value(new Spot(rule.condition(), row));
  }

  /** Whether it is known to be yes: the requirement holds, or the caution fires. */
  public boolean isYes() {
    return value() instanceof Value.YesNo yesNo && yesNo.yes();
  }

  /** Whether it is known to be no: the requirement is broken, or the caution does not fire. */
  public boolean isNo() {
    return value() instanceof Value.YesNo yesNo && !yesNo.yes();
  }

  /** What it says, with values put in. */
  public String text() {
    return ShownValue.of(results.message(rule, row), null).text();
  }

  /** Where it is written. */
  public String at() {
    return rule.span().place();
  }
}
