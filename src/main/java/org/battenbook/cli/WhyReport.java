package org.battenbook.cli;

import org.battenbook.answer.ExactText;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Derivation.How;
import org.battenbook.source.DisplayText;
import org.battenbook.value.Value;

/**
 * Shows where a value came from: each value with its place, its formula, and below it its parts.
 */
final class WhyReport {
  private static final String STEP = "  ";
  private static final int PLACE_AT = 64;

  private final Terminal terminal;

  WhyReport(Terminal terminal) {
    this.terminal = terminal;
  }

  void print(Derivation derivation) {
    print(derivation, "");
  }

  private void print(Derivation node, String indent) {
    head(node, indent);
    String inner = indent + STEP + STEP;
    formula(node, inner);
    exact(node, inner);
    rounding(node, inner);
    changed(node, inner);
    override(node, inner);
    node.from().forEach(part -> print(part, indent + STEP));
    if (node.rowsLeftOut() > 0) {
      aside(indent + STEP, "and %s more rows alike".formatted(node.rowsLeftOut()));
    }
  }

  private void head(Derivation node, String indent) {
    String told = indent + DisplayText.safe(node.place() + " = " + node.shown().text());
    int blanks = Math.max(2, PLACE_AT - DisplayText.width(told));
    terminal
        .out()
        .println(told + " ".repeat(blanks) + terminal.paint(Ink.ASIDE, DisplayText.safe(at(node))));
    if (!node.note().isEmpty()) {
      aside(indent + STEP + STEP, "-- " + node.note());
    }
  }

  private static String at(Derivation node) {
    String how =
        switch (node.how()) {
          case WORKED_OUT -> "";
          case GIVEN -> ", given";
          case DEFAULT -> ", where the row leaves it open";
          case MISSING -> ", still to be filled in";
        };
    return node.at().place() + how + (node.isRepeated() ? ", told above" : "");
  }

  private void formula(Derivation node, String indent) {
    boolean isLiteral = node.from().isEmpty() && node.how() == How.GIVEN;
    if (node.formula().isEmpty() || isLiteral || node.isRepeated()) {
      return;
    }
    line(indent, "= " + oneLine(node.formula()));
    if (!node.withValues().isEmpty() && !node.withValues().equals(node.formula())) {
      line(indent, "= " + node.withValues());
    }
  }

  /** A formula may go on over several lines of its file. */
  private static String oneLine(String formula) {
    return String.join(" ", formula.lines().map(String::strip).toList());
  }

  /** What a shown value that is only near stands for. */
  private void exact(Derivation node, String indent) {
    if (node.shown().approximate()
        && node.value() instanceof Value.Amount amount
        && amount.quantity().number().isExact()) {
      line(indent, "exactly " + ExactText.of(node.value()));
    }
  }

  private void rounding(Derivation node, String indent) {
    Derivation.Rounded rounding = node.rounding();
    if (rounding != null && !node.isRepeated()) {
      line(
          indent,
          "rounded to a step of %s, which moved it by %s"
              .formatted(rounding.stepShown().text(), ExactText.of(rounding.movedBy())));
    }
  }

  private void changed(Derivation node, String indent) {
    Derivation.Changed changed = node.changed();
    if (changed != null) {
      String from = changed.from().isEmpty() ? "nothing" : oneLine(changed.from());
      line(
          indent,
          "changed from %s (%s) because %s"
              .formatted(from, changed.fromAt().place(), changed.because()));
    }
  }

  private void override(Derivation node, String indent) {
    Derivation.FilledByHand override = node.override();
    if (override != null) {
      line(indent, "filled in by hand; the formula gives " + override.insteadShown().text());
    }
  }

  private void line(String indent, String text) {
    terminal.out().println(indent + DisplayText.safe(text));
  }

  private void aside(String indent, String text) {
    terminal.out().println(indent + terminal.paint(Ink.ASIDE, DisplayText.safe(text)));
  }
}
