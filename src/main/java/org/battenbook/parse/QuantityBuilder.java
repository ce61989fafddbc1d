package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.battenbook.number.Rational;
import org.battenbook.parse.generated.WorkbookParser.PartContext;
import org.battenbook.parse.generated.WorkbookParser.QuantityContext;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.QuantityPart;

/** Reads a number with its unit, or feet and inches. */
final class QuantityBuilder {
  private static final Rational INCHES_IN_A_FOOT = Rational.of(12);

  private final SourceText source;
  private final LineFaults faults;

  private QuantityBuilder(SourceText source, LineFaults faults) {
    this.source = source;
    this.faults = faults;
  }

  static List<QuantityPart> parts(QuantityContext tree, SourceText source, LineFaults faults) {
    return new QuantityBuilder(source, faults).parts(tree);
  }

  private List<QuantityPart> parts(QuantityContext tree) {
    List<QuantityPart> parts = new ArrayList<>();
    for (PartContext part : tree.part()) {
      parts.add(part(part));
    }
    if (parts.size() > 1 && !isFeetAndInches(parts)) {
      sideBySide(tree, parts);
    }
    return parts;
  }

  private QuantityPart part(PartContext part) {
    if (part.number() == null) {
      return marked(part.getStart(), part.FEET() == null ? "in" : "ft");
    }
    refuseHyphen(part);
    Rational number = NumberText.read(part.number().getText());
    return part.UNIT() == null
        ? new QuantityPart(number, "", span(part))
        : new QuantityPart(
            number, part.UNIT().getText(), LineTokens.span(source, part.UNIT().getSymbol()));
  }

  /** A number with a mark for feet or inches glued to it. */
  private QuantityPart marked(Token token, String unit) {
    Span mark = source.span(token.getStopIndex(), LineTokens.end(token));
    String text = source.text().substring(token.getStartIndex(), token.getStopIndex());
    return new QuantityPart(NumberText.read(text), unit, mark);
  }

  /** {@code 10-3/8} without a unit may be a subtraction. */
  private void refuseHyphen(PartContext part) {
    String text = part.number().getText();
    if (part.UNIT() == null && text.indexOf('-') > 0) {
      faults.fault(
          "two-readings",
          span(part),
          "'%s' can be read in two ways".formatted(text),
          "write %s, or %s".formatted(text.replace('-', ' '), text.replace("-", " - ")));
    }
  }

  private static boolean isFeetAndInches(List<QuantityPart> parts) {
    return parts.size() == 2
        && parts.get(0).unit().equals("ft")
        && parts.get(1).unit().equals("in")
        && parts.get(1).number().compareTo(INCHES_IN_A_FOOT) < 0;
  }

  private void sideBySide(QuantityContext tree, List<QuantityPart> parts) {
    boolean feetFirst = parts.get(0).unit().equals("ft");
    String text = span(tree).text();
    if (feetFirst && parts.size() == 2 && parts.get(1).unit().isEmpty()) {
      String inches = span(tree.part(1)).text();
      faults.fault(
          "inches-without-unit",
          span(tree.part(1)),
          "'%s' after feet has no unit".formatted(inches),
          "write %s in".formatted(inches));
    } else if (feetFirst && parts.size() == 2 && parts.get(1).unit().equals("in")) {
      faults.fault(
          "inches-over-a-foot",
          span(tree.part(1)),
          "a length in feet and inches has 12 inches or more",
          "write all of it in inches, or put + between the two");
    } else if (isFractionBehindUnit(tree, parts)) {
      unitInside(tree);
    } else {
      String first = span(tree.part(0)).text();
      faults.fault(
          "operator-missing",
          span(tree),
          "'%s' is more than one number".formatted(text),
          "write + - * or / after %s; only feet and inches can be side by side".formatted(first));
    }
  }

  /** {@code 9 in 1/2}. */
  private boolean isFractionBehindUnit(QuantityContext tree, List<QuantityPart> parts) {
    QuantityPart second = parts.get(1);
    return parts.size() == 2
        && parts.get(0).number().isWhole()
        && tree.part(0).UNIT() != null
        && second.number().compareTo(Rational.ONE) < 0
        && !second.number().isWhole()
        && second.unit().isEmpty();
  }

  private void unitInside(QuantityContext tree) {
    PartContext whole = tree.part(0);
    faults.fault(
        "unit-inside-number",
        span(tree),
        "'%s' has its unit before the fraction".formatted(span(tree).text()),
        "write %s %s %s"
            .formatted(whole.number().getText(), tree.part(1).getText(), whole.UNIT().getText()));
  }

  private Span span(ParserRuleContext tree) {
    return LineTokens.span(source, tree);
  }
}
