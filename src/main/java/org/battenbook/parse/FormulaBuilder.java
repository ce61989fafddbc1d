package org.battenbook.parse;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.battenbook.bound.Bound;
import org.battenbook.parse.generated.WorkbookBaseVisitor;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.AggregateContext;
import org.battenbook.parse.generated.WorkbookParser.BracketContext;
import org.battenbook.parse.generated.WorkbookParser.CallContext;
import org.battenbook.parse.generated.WorkbookParser.ChoiceContext;
import org.battenbook.parse.generated.WorkbookParser.ComparisonContext;
import org.battenbook.parse.generated.WorkbookParser.ConjunctionContext;
import org.battenbook.parse.generated.WorkbookParser.CountContext;
import org.battenbook.parse.generated.WorkbookParser.ExponentContext;
import org.battenbook.parse.generated.WorkbookParser.ExpressionContext;
import org.battenbook.parse.generated.WorkbookParser.FormContext;
import org.battenbook.parse.generated.WorkbookParser.FormulaContext;
import org.battenbook.parse.generated.WorkbookParser.LiteralDateContext;
import org.battenbook.parse.generated.WorkbookParser.LiteralQuantityContext;
import org.battenbook.parse.generated.WorkbookParser.LiteralTextContext;
import org.battenbook.parse.generated.WorkbookParser.LiteralTruthContext;
import org.battenbook.parse.generated.WorkbookParser.NameContext;
import org.battenbook.parse.generated.WorkbookParser.NegationContext;
import org.battenbook.parse.generated.WorkbookParser.PathContext;
import org.battenbook.parse.generated.WorkbookParser.PowerContext;
import org.battenbook.parse.generated.WorkbookParser.ProductContext;
import org.battenbook.parse.generated.WorkbookParser.RoundingContext;
import org.battenbook.parse.generated.WorkbookParser.SelectionContext;
import org.battenbook.parse.generated.WorkbookParser.SignedContext;
import org.battenbook.parse.generated.WorkbookParser.SumContext;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.QuantityPart;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.ShownAs;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TextPart;
import org.battenbook.syntax.TruthLiteral;
import org.jspecify.annotations.Nullable;

/**
 * From the parser's tree to the syntax tree of one formula. Ids are given as nodes are made, so a
 * part's id is less than that of its whole.
 */
final class FormulaBuilder extends WorkbookBaseVisitor<Expression> {
  private final SourceText source;
  private final LineFaults faults;
  private int nextId;

  FormulaBuilder(SourceText source, LineFaults faults) {
    this.source = source;
    this.faults = faults;
  }

  /** A line's formula; absent, with a fault, where it cannot be read. */
  @Nullable Formula formula(FormulaContext tree) {
    AmbiguityCheck.refuse(tree, source, faults);
    if (faults.any()) {
      return null;
    }
    Expression expression = result(tree.expression(0));
    int nodeCount = nextId;
    Formula tolerance = tree.PLUS_MINUS() == null ? null : tolerance(tree.expression(1));
    return sound(new Formula(expression, nodeCount, tolerance, shownAs(tree), span(tree)));
  }

  /** What stands behind {@code ±}: a formula by itself. */
  private Formula tolerance(ExpressionContext tree) {
    nextId = 0;
    Expression tolerance = visit(tree);
    Expression whole = new Apply(nextId++, span(tree), "±", List.of(tolerance));
    return new Formula(whole, nextId, null, null, span(tree));
  }

  /** The condition of a requirement or caution; absent, with a fault, where it cannot be read. */
  @Nullable Formula condition(ExpressionContext tree) {
    AmbiguityCheck.refuse(tree, source, faults);
    if (faults.any()) {
      return null;
    }
    Expression expression = visit(tree);
    return sound(new Formula(expression, nextId, null, null, span(tree)));
  }

  /** A message in quotes, its holes read. */
  @Nullable Formula message(Token text) {
    Expression message = text(text, true);
    return sound(Formula.plain(message, nextId));
  }

  private @Nullable Formula sound(Formula formula) {
    boolean mayBeDeep = Bound.TERMS.isPassedBy(formula.nodeCount());
    if (mayBeDeep && Bound.TERMS.isPassedBy(depth(formula.expression()))) {
      tooLong(formula.span(), "operators");
    }
    return faults.any() ? null : formula;
  }

  private void tooLong(Span span, String what) {
    faults.fault(
        "formula-too-long",
        span,
        "this formula has more than %s %s".formatted(Bound.TERMS.shown(), what),
        "write parts of it on their own lines");
  }

  private static int depth(Expression root) {
    int depth = 0;
    Deque<Expression> level = new ArrayDeque<>(List.of(root));
    while (!level.isEmpty()) {
      depth++;
      for (int left = level.size(); left > 0; left--) {
        level.addAll(level.remove().children());
      }
    }
    return depth;
  }

  /** How a formula says that its value is to be shown. */
  @Nullable ShownAs shownAs(FormulaContext tree) {
    if (tree.form().isEmpty()) {
      return null;
    }
    ShownAs metric = tree.form().size() == 1 ? null : form(tree.form(1), null);
    return form(tree.form(0), metric);
  }

  /** The form after {@code lengths in}. */
  ShownAs form(FormContext form) {
    return form(form, null);
  }

  private ShownAs form(FormContext form, @Nullable ShownAs metric) {
    boolean decimal = form.number() != null && form.number().DECIMAL() != null;
    return new ShownAs(
        form.number() == null ? null : NumberText.read(form.number().getText()),
        decimal,
        form.UNIT().getText(),
        metric,
        span(form));
  }

  /** What a line gives: a text in such a place may have holes. */
  private Expression result(ExpressionContext tree) {
    ParseTree only = GrammarRun.only(tree);
    if (only instanceof LiteralTextContext text) {
      return text(text.TEXT().getSymbol(), true);
    }
    if (only instanceof BracketContext bracket) {
      return result(bracket.expression());
    }
    if (only instanceof ChoiceContext choice) {
      Expression condition = visit(choice.expression(0));
      return choice(choice, condition, result(choice.expression(1)), result(choice.expression(2)));
    }
    return visit(tree);
  }

  @Override
  public Expression visit(ParseTree tree) {
    return super.visit(GrammarRun.only(tree));
  }

  @Override
  public Expression visitExpression(ExpressionContext or) {
    return chain(or);
  }

  @Override
  public Expression visitConjunction(ConjunctionContext and) {
    return chain(and);
  }

  @Override
  public Expression visitComparison(ComparisonContext comparison) {
    if (comparison.AT_WORST() == null) {
      return chain(comparison);
    }
    Expression left = visit(comparison.rounding(0));
    Expression right = visit(comparison.rounding(1));
    Span sides = LineTokens.span(source, comparison.rounding(0)).to(span(comparison.rounding(1)));
    String operation = operation(comparison.relation(0));
    Apply compared = new Apply(nextId++, sides, operation, List.of(left, right));
    return new AtWorst(nextId++, span(comparison), compared);
  }

  @Override
  public Expression visitRounding(RoundingContext rounding) {
    return chain(rounding);
  }

  @Override
  public Expression visitSum(SumContext sum) {
    return chain(sum);
  }

  @Override
  public Expression visitProduct(ProductContext product) {
    return chain(product);
  }

  /** Operands with operators between them, applied from the left. */
  private Expression chain(ParserRuleContext tree) {
    Expression left = visit(tree.getChild(0));
    for (int i = 1; i < tree.getChildCount(); i += 2) {
      Expression right = visit(tree.getChild(i + 1));
      ParserRuleContext last = (ParserRuleContext) tree.getChild(i + 1);
      Span span = source.span(tree.getStart().getStartIndex(), LineTokens.end(last.getStop()));
      left = new Apply(nextId++, span, operation(tree.getChild(i)), List.of(left, right));
    }
    return left;
  }

  private static String operation(ParseTree operator) {
    TerminalNode sign = (TerminalNode) leaf(operator);
    return switch (sign.getSymbol().getType()) {
      case WorkbookParser.PLUS -> "+";
      case WorkbookParser.MINUS -> "-";
      case WorkbookParser.TIMES -> "*";
      case WorkbookParser.SLASH -> "/";
      case WorkbookParser.EQUALS -> "=";
      case WorkbookParser.UNEQUAL -> "<>";
      case WorkbookParser.LESS -> "<";
      case WorkbookParser.AT_MOST -> "<=";
      case WorkbookParser.GREATER -> ">";
      case WorkbookParser.AT_LEAST -> ">=";
      case WorkbookParser.AND -> "and";
      case WorkbookParser.OR -> "or";
      default -> rounding(sign.getText());
    };
  }

  private static ParseTree leaf(ParseTree tree) {
    return tree.getChildCount() == 0 ? tree : leaf(tree.getChild(0));
  }

  /** {@code rounded up to} by its name in the catalogue of operations. */
  private static String rounding(String words) {
    String spaced = Spaces.single(words.strip()).toLowerCase(Locale.ROOT);
    return spaced.substring(0, spaced.length() - " to".length());
  }

  @Override
  public Expression visitNegation(NegationContext negation) {
    return negation.NOT() == null
        ? visit(negation.comparison())
        : apply(negation, "not", List.of(visit(negation.negation())));
  }

  @Override
  public Expression visitSigned(SignedContext signed) {
    return signed.MINUS() == null
        ? visit(signed.power())
        : apply(signed, "negate", List.of(visit(signed.signed())));
  }

  @Override
  public Expression visitPower(PowerContext power) {
    Expression base = visit(power.primary());
    return power.POWER().isEmpty()
        ? base
        : apply(power, "^", List.of(base, visit(power.exponent(0))));
  }

  @Override
  public Expression visitExponent(ExponentContext exponent) {
    Expression power = visit(exponent.primary());
    if (exponent.MINUS() == null) {
      return power;
    }
    if (power instanceof QuantityLiteral literal) {
      QuantityPart part = literal.parts().get(0);
      QuantityPart signed = new QuantityPart(part.number().negate(), part.unit(), part.unitSpan());
      return new QuantityLiteral(literal.id(), span(exponent), List.of(signed));
    }
    return apply(exponent, "negate", List.of(power));
  }

  private Expression apply(ParserRuleContext tree, String operation, List<Expression> operands) {
    return new Apply(nextId++, span(tree), operation, operands);
  }

  @Override
  public Expression visitLiteralQuantity(LiteralQuantityContext literal) {
    List<QuantityPart> parts = QuantityBuilder.parts(literal.quantity(), source, faults);
    return new QuantityLiteral(nextId++, span(literal), parts);
  }

  @Override
  public Expression visitLiteralText(LiteralTextContext literal) {
    return text(literal.TEXT().getSymbol(), false);
  }

  private Expression text(Token token, boolean mayShowValues) {
    Span span = LineTokens.span(source, token);
    List<TextPart> parts = new TextBuilder(this, source, faults).read(span, mayShowValues);
    return new TextLiteral(nextId++, span, parts);
  }

  /** What stands in a hole of a text; a part of this formula. */
  Expression hole(ExpressionContext tree) {
    return visit(tree);
  }

  @Override
  public Expression visitLiteralDate(LiteralDateContext literal) {
    return new DateLiteral(nextId++, span(literal), date(literal));
  }

  private LocalDate date(LiteralDateContext literal) {
    try {
      return LocalDate.parse(literal.getText());
    } catch (DateTimeException none) {
      faults.fault(
          "no-such-date",
          span(literal),
          "there is no date '%s'".formatted(literal.getText()),
          "write year, month and day: 2026-03-14");
      return LocalDate.EPOCH;
    }
  }

  @Override
  public Expression visitLiteralTruth(LiteralTruthContext literal) {
    return new TruthLiteral(nextId++, span(literal), literal.TRUE() != null);
  }

  @Override
  public Expression visitChoice(ChoiceContext choice) {
    List<Expression> parts = visitAll(choice.expression());
    return choice(choice, parts.get(0), parts.get(1), parts.get(2));
  }

  private Expression choice(
      ChoiceContext tree, Expression condition, Expression then, Expression otherwise) {
    return new Choice(nextId++, span(tree), condition, then, otherwise);
  }

  @Override
  public Expression visitAggregate(AggregateContext aggregate) {
    Expression of = visit(aggregate.expression(0));
    Expression where = aggregate.WHERE() == null ? null : visit(aggregate.expression(1));
    String word = aggregate.AGGREGATE().getText().split("\\s", 2)[0].toUpperCase(Locale.ROOT);
    AggregateFunction function = AggregateFunction.valueOf(word);
    return new Aggregate(nextId++, span(aggregate), function, of, name(aggregate.name()), where);
  }

  @Override
  public Expression visitCount(CountContext count) {
    Expression where = count.WHERE() == null ? null : visit(count.expression());
    return new Aggregate(
        nextId++, span(count), AggregateFunction.COUNT, null, name(count.name()), where);
  }

  @Override
  public Expression visitSelection(SelectionContext selection) {
    List<Expression> parts = visitAll(selection.expression());
    Expression where = selection.WHERE() == null ? null : parts.get(0);
    Selection.Preference preference =
        selection.WITH() == null
            ? null
            : new Selection.Preference(
                selection.WITH().getText().toLowerCase(Locale.ROOT).endsWith("largest"),
                parts.get(parts.size() - 1));
    return new Selection(nextId++, span(selection), name(selection.name()), where, preference);
  }

  @Override
  public Expression visitCall(CallContext call) {
    List<Expression> arguments = visitAll(call.expression());
    return new Call(nextId++, span(call), name(call.name()), arguments);
  }

  private List<Expression> visitAll(List<ExpressionContext> trees) {
    List<Expression> expressions = new ArrayList<>();
    for (ExpressionContext tree : trees) {
      expressions.add(visit(tree));
    }
    return expressions;
  }

  @Override
  public Expression visitPath(PathContext path) {
    List<Name> names = new ArrayList<>();
    path.name().forEach(name -> names.add(name(name)));
    if (Bound.TERMS.isPassedBy(names.size())) {
      tooLong(span(path), "dots");
    }
    String first = names.get(0).key();
    boolean alone = names.size() == 1;
    if (first.equals("first row") && alone) {
      return new FirstRow(nextId++, span(path));
    }
    if (first.equals("this")) {
      return new Reference(nextId++, span(path), Root.THIS, names.subList(1, names.size()));
    }
    if (first.equals("above") && !alone) {
      return new Reference(nextId++, span(path), Root.ABOVE, names.subList(1, names.size()));
    }
    if (first.equals("above")) {
      faults.fault(
          "above-alone",
          span(path),
          "'above' needs the name of a column",
          "write the column's name after a dot: above.left");
    }
    return new Reference(nextId++, span(path), Root.HERE, names);
  }

  @Override
  public Expression visitBracket(BracketContext bracket) {
    return visit(bracket.expression());
  }

  Name name(NameContext name) {
    String words = words(name);
    if (Bound.NAME.isPassedBy(words.length())) {
      faults.fault(
          "name-too-long",
          span(name),
          "this name has more than %s".formatted(Bound.NAME.shown()),
          "shorten it");
    }
    return new Name(words, span(name));
  }

  private static String words(NameContext name) {
    StringBuilder words = new StringBuilder(name.getChild(0).getText());
    for (int i = 1; i < name.getChildCount(); i++) {
      words.append(' ').append(name.getChild(i).getText());
    }
    return words.toString();
  }

  private Span span(ParserRuleContext tree) {
    return LineTokens.span(source, tree);
  }
}
