package org.battenbook.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * Prints a formula as a person writes it: with the brackets it needs and no others, so that reading
 * the text gives the same tree again.
 */
public final class FormulaPrinter implements ExpressionVisitor<FormulaPrinter.Piece> {
  /** How tightly a piece holds together; what binds looser than its place is bracketed. */
  private static final int OPEN = 0;

  private static final int OR = 1;
  private static final int AND = 2;
  private static final int NOT = 3;
  private static final int COMPARISON = 4;
  private static final int ROUNDING = 5;
  private static final int SUM = 6;
  private static final int PRODUCT = 7;
  private static final int SIGN = 8;
  private static final int POWER = 9;
  private static final int OPERAND = 10;

  /** A printed part, and how tightly it holds together. */
  record Piece(String text, int level) {}

  private FormulaPrinter() {}

  /** A line's formula, its tolerance and its {@code shown as} included. */
  public static String print(Formula formula) {
    Formula tolerance = formula.tolerance();
    String within = tolerance == null ? "" : " " + print(tolerance.expression());
    return print(formula.expression()) + within + form(formula.shownAs());
  }

  public static String print(Expression expression) {
    return new FormulaPrinter().at(OPEN, expression);
  }

  private static String form(@Nullable ShownAs form) {
    if (form == null) {
      return "";
    }
    ShownAs metric = form.metric();
    String or = metric == null ? "" : " or " + step(metric) + metric.unit();
    return " shown as " + step(form) + form.unit() + or;
  }

  private static String step(ShownAs form) {
    Rational step = form.step();
    if (step == null) {
      return "";
    }
    return (form.decimal() ? NumberPrinter.decimal(step) : NumberPrinter.fraction(step)) + " ";
  }

  /** An expression where nothing looser than a level may stand without brackets. */
  private String at(int level, Expression expression) {
    Piece piece = expression.accept(this);
    return piece.level() < level ? "(" + piece.text() + ")" : piece.text();
  }

  @Override
  public Piece quantity(QuantityLiteral literal) {
    String parts =
        literal.parts().stream()
            .map(part -> (NumberPrinter.print(part.number()) + " " + part.unit()).strip())
            .collect(Collectors.joining(" "));
    return new Piece(parts, OPERAND);
  }

  @Override
  public Piece text(TextLiteral literal) {
    StringBuilder text = new StringBuilder("\"");
    for (TextPart part : literal.parts()) {
      text.append(part instanceof TextPart.Hole hole ? hole(hole) : words((TextPart.Words) part));
    }
    return new Piece(text.append('"').toString(), OPERAND);
  }

  private String hole(TextPart.Hole hole) {
    return "{" + at(OPEN, hole.reference()) + form(hole.shownAs()) + "}";
  }

  private static String words(TextPart.Words part) {
    return part.words().replace("\"", "\"\"").replace("{", "{{").replace("}", "}}");
  }

  @Override
  public Piece date(DateLiteral literal) {
    return new Piece(literal.date().toString(), OPERAND);
  }

  @Override
  public Piece truth(TruthLiteral literal) {
    return new Piece(String.valueOf(literal.truth()), OPERAND);
  }

  @Override
  public Piece reference(Reference reference) {
    List<String> words = new ArrayList<>();
    if (reference.root() != Root.HERE) {
      words.add(reference.root() == Root.THIS ? "this" : "above");
    }
    reference.names().forEach(name -> words.add(name.text()));
    return new Piece(String.join(".", words), OPERAND);
  }

  @Override
  public Piece firstRow(FirstRow firstRow) {
    return new Piece("first row", OPERAND);
  }

  @Override
  public Piece apply(Apply apply) {
    List<Expression> operands = apply.children();
    Expression first = operands.get(0);
    return switch (apply.operation()) {
      case "or" -> logical(apply, OR);
      case "and" -> logical(apply, AND);
      case "not" -> new Piece("not " + at(NOT, first), NOT);
      case "negate" -> negated(first);
      case "±" -> new Piece("± " + at(OPEN, first), OPEN);
      case "+", "-" -> infix(apply, SUM, at(SUM, first), at(PRODUCT, operands.get(1)));
      case "*" -> infix(apply, PRODUCT, at(PRODUCT, first), at(SIGN, operands.get(1)));
      case "/" -> infix(apply, PRODUCT, at(PRODUCT, first), divisor(first, operands.get(1)));
      case "^" -> new Piece(base(first) + "^" + exponent(operands.get(1)), POWER);
      case "=", "<>", "<", "<=", ">", ">=" ->
          infix(apply, COMPARISON, at(ROUNDING, first), at(ROUNDING, operands.get(1)));
      default -> rounding(apply);
    };
  }

  private static Piece infix(Apply apply, int level, String left, String right) {
    return new Piece(left + " " + apply.operation() + " " + right, level);
  }

  /**
   * {@code and} beside {@code or} is bracketed, though one binds tighter: so the language wants.
   */
  private Piece logical(Apply apply, int level) {
    Expression first = apply.children().get(0);
    boolean same = first instanceof Apply left && left.operation().equals(apply.operation());
    return infix(apply, level, at(same ? level : NOT, first), at(NOT, apply.children().get(1)));
  }

  private Piece negated(Expression operand) {
    Piece piece = operand.accept(this);
    boolean bare = piece.level() == SIGN || piece.level() == OPERAND;
    String text = bare ? piece.text() : "(" + piece.text() + ")";
    return new Piece((text.startsWith("-") ? "- " : "-") + text, SIGN);
  }

  /** A fraction below a fraction bar, and a unit below a plain number, can be read in two ways. */
  private String divisor(Expression dividend, Expression divisor) {
    boolean fraction = divisor instanceof QuantityLiteral && holdsFraction(divisor);
    boolean unit = hasUnit(divisor) && isPlain(lastOperand(dividend));
    return at(fraction || unit ? OPERAND + 1 : SIGN, divisor);
  }

  private static Expression lastOperand(Expression expression) {
    boolean product =
        expression instanceof Apply apply
            && (apply.operation().equals("*") || apply.operation().equals("/"));
    return product ? expression.children().get(1) : expression;
  }

  private static boolean hasUnit(Expression expression) {
    return expression instanceof QuantityLiteral literal
        && !literal.parts().get(0).unit().isEmpty();
  }

  private static boolean isPlain(Expression expression) {
    return expression instanceof QuantityLiteral && !hasUnit(expression);
  }

  private boolean holdsFraction(Expression literal) {
    return literal.accept(this).text().indexOf('/') >= 0;
  }

  private String base(Expression base) {
    boolean two = hasUnit(base) || (isPlain(base) && holdsFraction(base));
    return at(two ? OPERAND + 1 : OPERAND, base);
  }

  /** A power's own number has its sign; all else that is not a whole number is bracketed. */
  private String exponent(Expression exponent) {
    if (!(exponent instanceof QuantityLiteral literal)) {
      return at(OPERAND, exponent);
    }
    QuantityPart part = literal.parts().get(0);
    boolean negative = part.number().signum() < 0;
    Rational size = part.number().abs();
    String number = (NumberPrinter.print(size) + " " + part.unit()).strip();
    boolean bare = size.isWhole() && part.unit().isEmpty();
    return (negative ? "-" : "") + (bare ? number : "(" + number + ")");
  }

  private Piece rounding(Apply apply) {
    Expression step = apply.children().get(1);
    String left = at(SUM, apply.children().get(0));
    String single = at(step instanceof Aggregate ? OPERAND + 1 : OPERAND, step);
    return new Piece(left + " " + apply.operation() + " to " + single, ROUNDING);
  }

  @Override
  public Piece call(Call call) {
    String arguments =
        call.arguments().stream().map(a -> at(OPEN, a)).collect(Collectors.joining(", "));
    return new Piece(call.function().text() + "(" + arguments + ")", OPERAND);
  }

  @Override
  public Piece choice(Choice choice) {
    String text =
        "if %s then %s else %s"
            .formatted(
                at(OPEN, choice.condition()), at(OPEN, choice.then()), last(choice.otherwise()));
    return new Piece(text, OPEN);
  }

  @Override
  public Piece atWorst(AtWorst atWorst) {
    return new Piece(at(COMPARISON, atWorst.comparison()) + " even at worst", COMPARISON);
  }

  @Override
  public Piece aggregate(Aggregate aggregate) {
    StringJoiner text = new StringJoiner(" ").add(aggregate.function().words());
    if (aggregate.of() != null) {
      text.add(inner(aggregate.of())).add("over");
    }
    text.add(aggregate.table().text());
    if (aggregate.where() == null) {
      return new Piece(text.toString(), OPERAND);
    }
    return new Piece(text.add("where").add(condition(aggregate.where())).toString(), OPEN);
  }

  /** Open even without a condition: a preference behind it would be taken for its own. */
  @Override
  public Piece selection(Selection selection) {
    StringJoiner text = new StringJoiner(" ").add("row of").add(selection.table().text());
    if (selection.where() != null) {
      text.add("where").add(condition(selection.where()));
    }
    Selection.Preference preference = selection.preference();
    if (preference != null) {
      text.add(preference.largest() ? "with largest" : "with smallest");
      text.add(condition(preference.by()));
    }
    return new Piece(text.toString(), OPEN);
  }

  /** What ends an open piece: a rounding in it might be meant for the whole. */
  private String last(Expression expression) {
    return at(endsInRounding(expression) ? OPERAND + 1 : OPEN, expression);
  }

  private String condition(Expression expression) {
    return endsInRounding(expression) ? at(OPERAND + 1, expression) : inner(expression);
  }

  /** Inside of what goes on after it, another open condition is bracketed. */
  private String inner(Expression expression) {
    boolean open = expression instanceof Aggregate || expression instanceof Selection;
    return at(open ? OR : OPEN, expression);
  }

  /** Whether a rounding stands in it outside of all brackets. */
  private static boolean endsInRounding(Expression expression) {
    if (expression instanceof AtWorst atWorst) {
      return endsInRounding(atWorst.comparison());
    }
    if (!(expression instanceof Apply apply)) {
      return false;
    }
    return switch (apply.operation()) {
      case "or", "and", "not", "=", "<>", "<", "<=", ">", ">=" ->
          apply.children().stream().anyMatch(FormulaPrinter::endsInRounding);
      case "+", "-", "*", "/", "^", "negate" -> false;
      default -> true;
    };
  }
}
