package org.battenbook.parse;

import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.RuleNode;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.battenbook.parse.generated.WorkbookBaseVisitor;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.AggregateContext;
import org.battenbook.parse.generated.WorkbookParser.ChoiceContext;
import org.battenbook.parse.generated.WorkbookParser.ComparisonContext;
import org.battenbook.parse.generated.WorkbookParser.CountContext;
import org.battenbook.parse.generated.WorkbookParser.ExpressionContext;
import org.battenbook.parse.generated.WorkbookParser.LiteralQuantityContext;
import org.battenbook.parse.generated.WorkbookParser.PartContext;
import org.battenbook.parse.generated.WorkbookParser.PowerContext;
import org.battenbook.parse.generated.WorkbookParser.PrimaryContext;
import org.battenbook.parse.generated.WorkbookParser.ProductContext;
import org.battenbook.parse.generated.WorkbookParser.RoundingContext;
import org.battenbook.parse.generated.WorkbookParser.SelectionContext;
import org.battenbook.parse.generated.WorkbookParser.SignedContext;
import org.battenbook.parse.generated.WorkbookParser.SumContext;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/**
 * Refuses what the grammar reads in one way and a person may read in another. The message spells
 * out both. Only the first such place of a line is reported, outermost first.
 */
final class AmbiguityCheck extends WorkbookBaseVisitor<@Nullable Void> {
  private final SourceText source;
  private final LineFaults faults;

  private AmbiguityCheck(SourceText source, LineFaults faults) {
    this.source = source;
    this.faults = faults;
  }

  /** Reports the first place under a tree that can be read in two ways. */
  static void refuse(ParserRuleContext tree, SourceText source, LineFaults faults) {
    tree.accept(new AmbiguityCheck(source, faults));
  }

  /** Levels without an operator are passed over: nothing in them reads in two ways. */
  @Override
  public @Nullable Void visitChildren(RuleNode node) {
    for (int i = 0; i < node.getChildCount() && !faults.any(); i++) {
      GrammarRun.only(node.getChild(i)).accept(this);
    }
    return null;
  }

  @Override
  public @Nullable Void visitExpression(ExpressionContext or) {
    boolean holdsAnd = or.conjunction().stream().anyMatch(c -> !c.AND().isEmpty());
    if (!or.OR().isEmpty() && holdsAnd) {
      refuse(
          "and-or-mixed",
          or,
          "'and' and 'or' need brackets between them",
          "write (a and b) or c, or a and (b or c)");
    }
    return visitChildren(or);
  }

  @Override
  public @Nullable Void visitComparison(ComparisonContext comparison) {
    if (comparison.AT_WORST() != null && !isOrder(comparison)) {
      refuse(
          "at-worst-of-no-order",
          comparison,
          "'even at worst' can follow <, <=, > and >= only",
          "write for example width <= room even at worst");
    } else if (comparison.relation().size() > 1) {
      String first =
          text(comparison.getChild(0)) + between(comparison, 1) + text(comparison.getChild(2));
      String second =
          text(comparison.getChild(2)) + between(comparison, 3) + text(comparison.getChild(4));
      refuse(
          "comparison-chain",
          comparison,
          "a comparison can have two sides only",
          "write %s and %s, or put one comparison in brackets".formatted(first, second));
    }
    return visitChildren(comparison);
  }

  private static boolean isOrder(ComparisonContext comparison) {
    return comparison.relation().size() == 1
        && comparison.relation(0).EQUALS() == null
        && comparison.relation(0).UNEQUAL() == null;
  }

  @Override
  public @Nullable Void visitRounding(RoundingContext rounding) {
    if (rounding.ROUND().size() > 1) {
      refuse(
          "two-roundings",
          rounding,
          "two roundings in a row need brackets",
          "write (%s %s %s) %s …"
              .formatted(
                  text(rounding.sum(0)),
                  rounding.ROUND(0).getText(),
                  text(rounding.sum(1)),
                  rounding.ROUND(1).getText()));
    } else if (!rounding.ROUND().isEmpty()) {
      step(rounding);
    }
    return visitChildren(rounding);
  }

  private void step(RoundingContext rounding) {
    SumContext step = rounding.sum(1);
    if (single(step) != null) {
      return;
    }
    String how = rounding.ROUND(0).getText();
    String left = text(rounding.sum(0));
    String bracketed = "%s %s (%s)".formatted(left, how, text(step));
    PowerContext first = step.product(0).signed(0).power();
    String alone = first == null ? text(step) : text(first.primary());
    String rest = text(step).substring(alone.length());
    refuse(
        "rounding-step",
        step,
        "'%s' is more than the step of a rounding".formatted(text(step)),
        rest.isEmpty()
            ? "write " + bracketed
            : "write (%s %s %s)%s, or %s".formatted(left, how, alone, rest, bracketed));
  }

  @Override
  public @Nullable Void visitSum(SumContext sum) {
    for (int i = 1; i < sum.product().size(); i++) {
      if (sum.getChild(2 * i - 1).getText().equals("+")) {
        continue;
      }
      hyphenatedLength(sum, i);
    }
    return visitChildren(sum);
  }

  /** {@code 10 -3/8 in}, {@code 6'-0"}: a hyphen inside a length, or a minus. */
  private void hyphenatedLength(SumContext sum, int right) {
    PartContext whole = onlyPart(sum.product(right - 1));
    PartContext part = onlyPart(sum.product(right));
    Token minus = ((TerminalNode) sum.getChild(2 * right - 1)).getSymbol();
    boolean glued = part != null && minus.getStopIndex() + 1 == part.getStart().getStartIndex();
    if (whole == null || part == null || !glued) {
      return;
    }
    Span both = source.span(start(whole), end(part));
    String first = text(whole);
    String second = text(part);
    if (first.matches("\\d+") && isFraction(part) && unit(part) != null) {
      refuse(both, first + "-" + second, first + " " + unit(part) + " - " + second);
    } else if ("ft".equals(unit(whole)) && "in".equals(unit(part))) {
      refuse(both, first + " " + second, first + " - " + second);
    }
  }

  @Override
  public @Nullable Void visitProduct(ProductContext product) {
    for (int i = 1; i < product.signed().size(); i++) {
      if (!product.getChild(2 * i - 1).getText().equals("*")) {
        division(product, i);
      }
    }
    return visitChildren(product);
  }

  private void division(ProductContext product, int right) {
    Token sign = ((TerminalNode) product.getChild(2 * right - 1)).getSymbol();
    PartContext over = onlyPart(product.signed(right - 1));
    PartContext under = onlyPart(product.signed(right));
    if (sign.getType() != WorkbookParser.SLASH) {
      return;
    }
    if (under != null && isFraction(under)) {
      byFraction(product, right, under);
    } else if (over != null && isFraction(over) && isGlued(over, sign, product.signed(right))) {
      String[] parts = text(over).split("[/⁄]", -1);
      String below = text(product.signed(right));
      refuse(
          source.span(start(over), end(product.signed(right))),
          "(%s) / %s".formatted(text(over), below),
          "%s / (%s/%s)".formatted(parts[0], parts[1], below));
    } else if (over != null && under != null && unit(over) == null && unit(under) != null) {
      plainOverUnit(over, under);
    }
  }

  private boolean isGlued(PartContext over, Token sign, SignedContext under) {
    return end(over) == sign.getStartIndex() && sign.getStopIndex() + 1 == start(under);
  }

  /** {@code a/3/8 in}. */
  private void byFraction(ProductContext product, int right, PartContext fraction) {
    String left = source.text().substring(start(product), end(product.signed(right - 1)));
    String[] parts = text(fraction).split("[/⁄]", 2);
    String below = unit(fraction) == null ? parts[1] : "(" + parts[1] + ")";
    refuse(
        source.span(start(product.signed(right - 1)), end(fraction)),
        "%s / (%s)".formatted(left, text(fraction)),
        "%s / %s / %s".formatted(left, parts[0], below));
  }

  /** {@code 15 / 16 in}: fifteen sixteenths, or fifteen over sixteen inches. */
  private void plainOverUnit(PartContext over, PartContext under) {
    String number = text(over);
    String divided = text(under);
    boolean wholes = number.matches("\\d+") && divided.matches("\\d+\\D.*");
    refuse(
        source.span(start(over), end(under)),
        wholes
            ? number + "/" + divided
            : "(%s / %s) * 1 %s".formatted(number, divided, unit(under)),
        "%s / (%s)".formatted(number, divided));
  }

  @Override
  public @Nullable Void visitSigned(SignedContext signed) {
    boolean ofPower = signed.signed() != null && holdsPower(signed.signed());
    if (ofPower) {
      String power = text(signed.signed());
      int sign = power.lastIndexOf('^');
      twoReadings(
          signed,
          "-(" + power + ")",
          "(-" + power.substring(0, sign) + ")" + power.substring(sign));
    }
    return visitChildren(signed);
  }

  private static boolean holdsPower(SignedContext signed) {
    return signed.power() != null && !signed.power().POWER().isEmpty();
  }

  @Override
  public @Nullable Void visitPower(PowerContext power) {
    if (power.POWER().size() > 1) {
      refuse(
          "two-readings",
          power,
          "'%s' can be read in two ways".formatted(text(power)),
          "write (%s^%s)^%s, or the upper powers as one whole number"
              .formatted(text(power.primary()), text(power.exponent(0)), text(power.exponent(1))));
    } else if (!power.POWER().isEmpty()) {
      base(power);
      exponent(power);
    }
    return visitChildren(power);
  }

  private void base(PowerContext power) {
    PartContext base = onlyPart(power.primary());
    if (base == null) {
      return;
    }
    String written = text(base);
    String exponent = text(power.exponent(0));
    if (unit(base) != null) {
      twoReadings(power, written + "^" + exponent, "(%s)^%s".formatted(written, exponent));
    } else if (isFraction(base)) {
      String[] parts = written.split("[/⁄]", 2);
      twoReadings(
          power,
          "(%s)^%s".formatted(written, exponent),
          "%s / %s^%s".formatted(parts[0], parts[1], exponent));
    } else if (base.number().MIXED() != null) {
      String[] parts = written.split("[\\s\\p{Zs}-]+", 2);
      twoReadings(
          power,
          "(%s)^%s".formatted(written, exponent),
          "%s + (%s)^%s".formatted(parts[0], parts[parts.length - 1], exponent));
    }
  }

  /** {@code a^2/3}. */
  private void exponent(PowerContext power) {
    PartContext exponent = onlyPart(power.exponent(0).primary());
    if (exponent == null || !isFraction(exponent)) {
      return;
    }
    String[] parts = text(power.exponent(0)).split("[/⁄]", 2);
    refuse(
        "two-readings",
        power,
        "'%s' can be read in two ways".formatted(text(power)),
        "write %s^%s / %s; a power itself is a whole number"
            .formatted(text(power.primary()), parts[0], parts[1]));
  }

  @Override
  public @Nullable Void visitChoice(ChoiceContext choice) {
    if (!isWhole(choice)) {
      bracket("if-inside-formula", choice, "an 'if' inside a larger formula needs brackets");
    }
    RoundingContext rounded = openRounding(choice.expression(2));
    if (rounded != null && !faults.any()) {
      String how = rounded.ROUND(0).getText() + " " + text(rounded.sum(1));
      String upToRounding = source.text().substring(start(choice), end(rounded.sum(0)));
      refuse(
          "two-readings",
          rounded,
          "the rounding can apply to the last branch or to the whole 'if'",
          "write (%s) %s, or … else (%s)".formatted(upToRounding, how, text(rounded)));
    }
    return visitChildren(choice);
  }

  @Override
  public @Nullable Void visitAggregate(AggregateContext aggregate) {
    if (aggregate.WHERE() != null) {
      where(aggregate, aggregate.expression(1));
    }
    return visitChildren(aggregate);
  }

  @Override
  public @Nullable Void visitCount(CountContext count) {
    if (count.WHERE() != null) {
      where(count, count.expression());
    }
    return visitChildren(count);
  }

  @Override
  public @Nullable Void visitSelection(SelectionContext selection) {
    List<ExpressionContext> parts = selection.expression();
    if (!parts.isEmpty()) {
      where(selection, parts.get(parts.size() - 1));
    }
    return visitChildren(selection);
  }

  /** What ends with an open condition takes all that follows, so it stands alone or in brackets. */
  private void where(PrimaryContext whole, ExpressionContext last) {
    String first = whole.getStart().getText();
    if (!isWhole(whole) || isWithinAnother(whole)) {
      bracket(
          "where-inside-formula",
          whole,
          "'%s' with 'where' inside a larger formula needs brackets".formatted(first));
      return;
    }
    RoundingContext rounded = openRounding(last);
    if (rounded != null) {
      String how = rounded.ROUND(0).getText() + " " + text(rounded.sum(1));
      String upToRounding = source.text().substring(start(whole), end(rounded.sum(0)));
      refuse(
          "two-readings",
          rounded,
          "the rounding can apply to the last condition or to the whole '%s'".formatted(first),
          "write (%s) %s, or put the condition in brackets".formatted(upToRounding, how));
    }
  }

  private void bracket(String code, ParserRuleContext inner, String message) {
    refuse(code, inner, message, "write (%s)".formatted(text(inner)));
  }

  /** The first rounding under a tree that stands amid its operators, if any. */
  private static @Nullable RoundingContext openRounding(ParseTree tree) {
    if (tree instanceof RoundingContext rounding && !rounding.ROUND().isEmpty()) {
      return rounding;
    }
    if (tree instanceof PrimaryContext) {
      return null;
    }
    for (int i = 0; i < tree.getChildCount(); i++) {
      RoundingContext found = openRounding(tree.getChild(i));
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Whether nothing stands beside it within its brackets, branch, argument or line. */
  private static boolean isWhole(PrimaryContext primary) {
    ParserRuleContext at = primary;
    while (!(at instanceof ExpressionContext)) {
      at = at.getParent();
      if (at.getChildCount() > 1) {
        return false;
      }
    }
    return true;
  }

  /** Whether another {@code sum of} or {@code row of} goes on behind it, or might. */
  private static boolean isWithinAnother(PrimaryContext primary) {
    ParserRuleContext at = primary;
    while (!(at instanceof ExpressionContext)) {
      at = at.getParent();
    }
    ParserRuleContext around = at.getParent();
    return around instanceof AggregateContext
        || around instanceof CountContext
        || around instanceof SelectionContext;
  }

  /** The one operand that a tree is, without operators around it; absent if it is more. */
  private static @Nullable PrimaryContext single(ParseTree tree) {
    ParseTree at = tree;
    while (!(at instanceof PrimaryContext)) {
      if (at.getChildCount() != 1) {
        return null;
      }
      at = at.getChild(0);
    }
    boolean goesOn =
        at instanceof ChoiceContext
            || at instanceof AggregateContext
            || at instanceof CountContext
            || at instanceof SelectionContext;
    return goesOn ? null : (PrimaryContext) at;
  }

  /** The only number of a tree that is nothing else. */
  private static @Nullable PartContext onlyPart(ParseTree tree) {
    return single(tree) instanceof LiteralQuantityContext literal
            && literal.quantity().part().size() == 1
        ? literal.quantity().part(0)
        : null;
  }

  /** Whether a number is written with a fraction bar and without a whole before it. */
  private boolean isFraction(PartContext part) {
    return part.getStart().getText().matches("\\d+[/⁄]\\d+[\"″”]?");
  }

  private static @Nullable String unit(PartContext part) {
    if (part.UNIT() != null) {
      return part.UNIT().getText();
    }
    if (part.FEET() != null) {
      return "ft";
    }
    return part.INCHES() != null ? "in" : null;
  }

  private void refuse(String code, ParserRuleContext at, String message, String repair) {
    if (!faults.any()) {
      faults.fault(code, LineTokens.span(source, at), message, repair);
    }
  }

  private void refuse(Span span, String oneReading, String otherReading) {
    if (!faults.any()) {
      faults.fault(
          "two-readings",
          span,
          "'%s' can be read in two ways".formatted(span.text()),
          "write %s, or %s".formatted(oneReading, otherReading));
    }
  }

  private void twoReadings(ParserRuleContext at, String oneReading, String otherReading) {
    refuse(LineTokens.span(source, at), oneReading, otherReading);
  }

  private static String between(ParserRuleContext context, int operator) {
    return " " + context.getChild(operator).getText() + " ";
  }

  private String text(ParseTree tree) {
    ParserRuleContext context = (ParserRuleContext) tree;
    return source.text().substring(start(context), end(context));
  }

  private static int start(ParserRuleContext context) {
    return context.getStart().getStartIndex();
  }

  private static int end(ParserRuleContext context) {
    return LineTokens.end(context.getStop());
  }
}
