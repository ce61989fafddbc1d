package org.battenbook.syntax;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/** Formulas at random, of every kind of node: what a person might write, and what none would. */
public final class RandomFormulas {
  private static final Span NOWHERE = SourceText.of("", "").span(0, 0);

  private static final List<String> WORDS =
      List.of(
          "mat", "rail", "width", "über", "glass2", "of", "to", "above", "this", "in", "row", "by",
          "up", "down", "sum", "count", "first", "page", "given", "lines", "when", "with", "a",
          "e3");

  private static final List<String> UNITS =
      List.of("in", "ft", "mm", "%", "deg", "USD/ft", "lb/in^2", "bd ft", "in^3", "USD/bd ft");

  private static final List<String> BINARY =
      List.of(
          "+",
          "-",
          "*",
          "/",
          "=",
          "<>",
          "<",
          "<=",
          ">",
          ">=",
          "and",
          "or",
          "rounded",
          "rounded up",
          "rounded down",
          "rounded evenly");

  private final Random random;

  public RandomFormulas(long seed) {
    this.random = new Random(seed);
  }

  /** A formula at most so deep. */
  public Formula formula(int depth) {
    Expression expression = random.nextInt(8) == 0 ? textWithHoles() : expression(depth);
    ShownAs form = random.nextInt(4) == 0 ? form() : null;
    Formula tolerance = random.nextInt(6) == 0 ? tolerance(expression(1)) : null;
    return new Formula(expression, 0, tolerance, form, NOWHERE);
  }

  private static Formula tolerance(Expression of) {
    return new Formula(new Apply(0, NOWHERE, "±", List.of(of)), 0, null, null, NOWHERE);
  }

  private Expression expression(int depth) {
    return depth == 0 || random.nextInt(6) == 0 ? leaf() : inner(depth - 1);
  }

  private Expression inner(int depth) {
    IntFunction<Expression> next = i -> expression(depth);
    return switch (random.nextInt(13)) {
      case 0 -> new Choice(0, NOWHERE, next.apply(0), next.apply(1), next.apply(2));
      case 1 -> new Apply(0, NOWHERE, "not", List.of(next.apply(0)));
      case 2 -> new Apply(0, NOWHERE, "negate", List.of(next.apply(0)));
      case 3 -> new Apply(0, NOWHERE, "^", List.of(next.apply(0), exponent()));
      case 4 -> new Call(0, NOWHERE, name(), IntStream.range(0, 2).mapToObj(next).toList());
      case 5 -> aggregate(depth);
      case 6 -> selection(depth);
      case 7 -> atWorst(next.apply(0), next.apply(1));
      default -> new Apply(0, NOWHERE, of(BINARY), List.of(next.apply(0), next.apply(1)));
    };
  }

  private Expression atWorst(Expression left, Expression right) {
    String relation = of(List.of("<", "<=", ">", ">="));
    return new AtWorst(0, NOWHERE, new Apply(0, NOWHERE, relation, List.of(left, right)));
  }

  private Expression leaf() {
    return switch (random.nextInt(8)) {
      case 0 -> new TextLiteral(0, NOWHERE, List.of(words()));
      case 1 -> new DateLiteral(0, NOWHERE, LocalDate.of(2026, 3, 1).plusDays(random.nextInt(900)));
      case 2 -> new TruthLiteral(0, NOWHERE, random.nextBoolean());
      case 3 -> new FirstRow(0, NOWHERE);
      case 4, 5 -> quantity();
      default -> reference();
    };
  }

  private Expression exponent() {
    int power = random.nextInt(19) - 9;
    QuantityPart part = new QuantityPart(Rational.of(power), "", NOWHERE);
    return new QuantityLiteral(0, NOWHERE, List.of(part));
  }

  private Expression quantity() {
    List<QuantityPart> parts =
        switch (random.nextInt(4)) {
          case 0 -> List.of(part(""));
          case 1 ->
              List.of(
                  part("ft"), new QuantityPart(Rational.of(random.nextInt(48), 4), "in", NOWHERE));
          default -> List.of(part(of(UNITS)));
        };
    return new QuantityLiteral(0, NOWHERE, parts);
  }

  private QuantityPart part(String unit) {
    return new QuantityPart(number(), unit, NOWHERE);
  }

  private Rational number() {
    int[] denominators = {1, 1, 2, 3, 7, 16, 64, 100, 1000, 128};
    int denominator = denominators[random.nextInt(denominators.length)];
    return Rational.of(random.nextInt(5000), denominator);
  }

  private Expression aggregate(int depth) {
    AggregateFunction function = of(List.of(AggregateFunction.values()));
    Expression of = function == AggregateFunction.COUNT ? null : expression(depth);
    Expression where = random.nextBoolean() ? expression(depth) : null;
    return new Aggregate(0, NOWHERE, function, of, name(), where);
  }

  private Expression selection(int depth) {
    Expression where = random.nextBoolean() ? expression(depth) : null;
    Selection.Preference preference =
        random.nextBoolean()
            ? new Selection.Preference(random.nextBoolean(), expression(depth))
            : null;
    return new Selection(0, NOWHERE, name(), where, preference);
  }

  private Reference reference() {
    Root root = of(List.of(Root.HERE, Root.HERE, Root.HERE, Root.THIS, Root.ABOVE));
    int least = root == Root.THIS ? 0 : 1;
    int count = least + random.nextInt(2);
    List<Name> names = IntStream.range(0, count).mapToObj(i -> name()).toList();
    return new Reference(0, NOWHERE, root, names);
  }

  private Expression textWithHoles() {
    TextPart hole = new TextPart.Hole(reference(), random.nextBoolean() ? form() : null);
    return new TextLiteral(0, NOWHERE, List.of(words(), hole, words()));
  }

  private TextPart words() {
    List<String> some = List.of("a rail ", "17\" x 11\"", "{braces}", " é -- no note ", "|", "''");
    return new TextPart.Words(of(some) + of(some));
  }

  private ShownAs form() {
    return form(random.nextInt(3) == 0 ? form(null) : null);
  }

  private ShownAs form(@Nullable ShownAs metric) {
    if (random.nextInt(3) == 0) {
      return new ShownAs(null, false, of(UNITS), metric, NOWHERE);
    }
    boolean decimal = random.nextBoolean();
    Rational step = Rational.of(1 + random.nextInt(3), decimal ? 100 : 16);
    return new ShownAs(step, decimal, of(UNITS), metric, NOWHERE);
  }

  /** A name that a line may have. */
  private Name name() {
    while (true) {
      List<String> words = new ArrayList<>();
      for (int i = random.nextInt(3); i >= 0; i--) {
        words.add(of(WORDS));
      }
      String name = String.join(" ", words);
      if (!name.matches("(sum|count|row) of.*|first row|this|above|.*with (smallest|largest).*")) {
        return new Name(name, NOWHERE);
      }
    }
  }

  private <T> T of(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }
}
