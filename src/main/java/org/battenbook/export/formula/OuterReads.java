package org.battenbook.export.formula;

import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Target;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.Selection;

/** Whether a part of an aggregate reads what lies around it: {@code this}, or an argument. */
final class OuterReads {
  private OuterReads() {}

  static boolean in(Expression node, CheckedFormula formula) {
    return in(node, formula, false);
  }

  /** An aggregate inside means by {@code this} the row that is gone through. */
  private static boolean in(Expression node, CheckedFormula formula, boolean deeper) {
    if (node instanceof Reference reference) {
      boolean argument = formula.path(reference).target() instanceof Target.Parameter;
      return argument || (!deeper && reference.root() == Root.THIS);
    }
    boolean aggregate = node instanceof Aggregate || node instanceof Selection;
    return node.children().stream().anyMatch(child -> in(child, formula, deeper || aggregate));
  }
}
