package org.battenbook.cli;

import java.util.List;
import org.battenbook.answer.ExactText;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.book.Edition;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Derivation.How;
import org.battenbook.source.DisplayText;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import org.battenbook.value.Value;

/**
 * Shows where a value came from: each value with its place, its formula, and below it its parts, as
 * deep as a person can still read.
 */
final class WhyReport {
  private static final String STEP = "  ";
  private static final int PLACE_AT = 64;

  /** So many values are told of, unless a person asks for more. */
  private static final int MOST_VALUES = 60;

  private final Output out;

  WhyReport(Output out) {
    this.out = out;
  }

  /** Which editions the values come from. */
  void printEditions(List<Edition> editions) {
    editions.forEach(edition -> aside("", "Calculated with " + edition.words() + "."));
  }

  /** To the depth that a person can still read. */
  void print(Derivation derivation) {
    int depth = 1;
    int below = count(derivation, depth + 1);
    while (below > count(derivation, depth) && below <= MOST_VALUES) {
      depth++;
      below = count(derivation, depth + 1);
    }
    print(derivation, depth);
  }

  /** To so many steps below the value asked for, but no deeper than answers go. */
  void print(Derivation derivation, int depth) {
    if (print(derivation, "", Math.min(depth, WhyAnswer.MOST_STEPS))) {
      aside("", "Deeper steps are hidden: ask why about one of these, or add --depth.");
    }
  }

  private static int count(Derivation node, int depth) {
    int below = depth == 0 ? 0 : node.from().stream().mapToInt(n -> count(n, depth - 1)).sum();
    return 1 + below;
  }

  /** Whether parts were left out. */
  private boolean print(Derivation node, String indent, int depth) {
    boolean cut = depth == 0 && !node.from().isEmpty();
    head(node, indent, cut);
    String inner = indent + STEP + STEP;
    formula(node, inner);
    exact(node, inner);
    rounding(node, inner);
    changed(node, inner);
    override(node, inner);
    for (Derivation part : depth == 0 ? List.<Derivation>of() : node.from()) {
      cut |= print(part, indent + STEP, depth - 1);
    }
    if (node.rowsLeftOut() > 0) {
      String what = node.how() == How.ROWS ? "values" : "rows";
      aside(indent + STEP, "and %s more %s like these".formatted(node.rowsLeftOut(), what));
    }
    return cut;
  }

  private void head(Derivation node, String indent, boolean cut) {
    String told = indent + node.place() + " = " + node.shown().text();
    String blanks = " ".repeat(Math.max(2, PLACE_AT - DisplayText.width(told)));
    out.line(InkedText.of(told + blanks).and(Ink.ASIDE, at(node) + (cut ? " …" : "")));
    if (!node.note().isEmpty()) {
      aside(indent + STEP + STEP, "-- " + node.note());
    }
  }

  private static String at(Derivation node) {
    String how =
        switch (node.how()) {
          case WORKED_OUT -> "";
          case GIVEN -> ", input";
          case OPENED -> ", from another table";
          case DEFAULT -> ", default";
          case MISSING -> ", not entered yet";
          case INHERITED, ROWS -> "";
        };
    return node.at().place() + how + (node.isRepeated() ? ", shown above" : "");
  }

  private void formula(Derivation node, String indent) {
    if (node.how() == How.ROWS) {
      opening(node, indent);
      return;
    }
    boolean isLiteral = node.from().isEmpty() && node.how() != How.WORKED_OUT;
    if (node.formula().isEmpty() || isLiteral || node.isRepeated()) {
      return;
    }
    line(indent, "= " + node.formula());
    boolean isPlain = node.withValues().equals(node.shown().text());
    if (!node.withValues().isEmpty() && !isPlain && !node.withValues().equals(node.formula())) {
      line(indent, "= " + node.withValues());
    }
  }

  private void opening(Derivation node, String indent) {
    if (!node.formula().isEmpty() && !node.isRepeated()) {
      line(indent, node.formula());
    }
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
          "rounded to a step of %s, a change of %s"
              .formatted(rounding.stepShown().text(), signed(rounding.movedBy())));
    }
  }

  private static String signed(Value value) {
    boolean up = value instanceof Value.Amount amount && amount.quantity().number().signum() > 0;
    return (up ? "+" : "") + ExactText.of(value);
  }

  private void changed(Derivation node, String indent) {
    Derivation.Changed changed = node.changed();
    if (changed != null) {
      String from = changed.from().isEmpty() ? "nothing" : changed.from();
      line(
          indent,
          "changed from %s (%s) because %s"
              .formatted(from, changed.fromAt().place(), changed.because()));
    }
  }

  private void override(Derivation node, String indent) {
    Derivation.FilledByHand override = node.override();
    if (override != null) {
      line(indent, "entered; the formula gives " + override.insteadShown().text());
    }
  }

  private void line(String indent, String text) {
    out.line(indent + text);
  }

  private void aside(String indent, String text) {
    out.line(InkedText.of(Ink.ASIDE, text).indented(indent));
  }
}
