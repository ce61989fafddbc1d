package org.battenbook.export.formula;

import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Target;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.Selection;

/** Finds whether a part of an aggregate reads the outer row, {@code this}, or an argument. */
final class OuterReads {
  private OuterReads() {}

  static boolean in(Expression node, CheckedFormula formula) {
    return in(node, formula, false);
  }

  /** In an aggregate inside the part, {@code this} is the row of the aggregate around it. */
  private static boolean in(Expression node, CheckedFormula formula, boolean deeper) {
    if (node instanceof Reference reference) {
      boolean argument = formula.path(reference).target() instanceof Target.Parameter;
      return argument || (!deeper && reference.root() == Root.THIS);
    }
    boolean aggregate = node instanceof Aggregate || node instanceof Selection;
    return node.children().stream().anyMatch(child -> in(child, formula, deeper || aggregate));
  }
}
