package org.battenbook.syntax;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A formula's tree in a compact form for tables of expectations: {@code (+ a (* 2 [mat overlap]))}.
 * Names of several words stand in square brackets, numbers in lowest terms, and ids and spans are
 * left out, holes of texts stand in ‹ ›, so that two texts are equal where two trees mean the same.
 */
public final class TreeText implements ExpressionVisitor<String> {
  private TreeText() {}

  public static String of(Formula formula) {
    Formula tolerance = formula.tolerance();
    String within = tolerance == null ? "" : " " + of(tolerance.expression());
    return of(formula.expression()) + within + form(formula.shownAs());
  }

  public static String of(Expression expression) {
    return expression.accept(new TreeText());
  }

  private static String form(@Nullable ShownAs form) {
    if (form == null) {
      return "";
    }
    String step = form.step() == null ? "" : form.step() + (form.decimal() ? " decimal " : " ");
    String metric = form.metric() == null ? "" : form(form.metric()).replace(" shown as", " or");
    return " shown as " + step + form.unit() + metric;
  }

  private static String name(Name name) {
    return name.text().contains(" ") ? "[" + name.text() + "]" : name.text();
  }

  private String list(String head, List<? extends @Nullable Expression> parts) {
    return parts.stream()
        .map(part -> part == null ? "-" : part.accept(this))
        .collect(Collectors.joining(" ", "(" + head + " ", ")"));
  }

  @Override
  public String quantity(QuantityLiteral literal) {
    return literal.parts().stream()
        .map(part -> (part.number() + " " + part.unit()).strip())
        .collect(Collectors.joining(" & "))
        .replace(' ', '_');
  }

  @Override
  public String text(TextLiteral literal) {
    return literal.parts().stream().map(this::part).collect(Collectors.joining("", "\"", "\""));
  }

  private String part(TextPart part) {
    if (part instanceof TextPart.Hole hole) {
      return "‹" + hole.reference().accept(this) + form(hole.shownAs()) + "›";
    }
    return ((TextPart.Words) part).words();
  }

  @Override
  public String date(DateLiteral literal) {
    return literal.date().toString();
  }

  @Override
  public String truth(TruthLiteral literal) {
    return String.valueOf(literal.truth());
  }

  @Override
  public String reference(Reference reference) {
    String names = reference.names().stream().map(TreeText::name).collect(Collectors.joining("."));
    return switch (reference.root()) {
      case HERE -> names;
      case THIS -> names.isEmpty() ? "this" : "this." + names;
      case ABOVE -> "above." + names;
    };
  }

  @Override
  public String firstRow(FirstRow firstRow) {
    return "first-row";
  }

  @Override
  public String apply(Apply apply) {
    return list(apply.operation().replace(' ', '-'), apply.children());
  }

  @Override
  public String call(Call call) {
    return list("call " + name(call.function()), call.arguments());
  }

  @Override
  public String choice(Choice choice) {
    return list("if", choice.children());
  }

  @Override
  public String atWorst(AtWorst atWorst) {
    return list("even-at-worst", atWorst.children());
  }

  @Override
  public String aggregate(Aggregate aggregate) {
    String over = aggregate.of() == null ? "" : aggregate.of().accept(this) + " ";
    String where = aggregate.where() == null ? "" : " where " + aggregate.where().accept(this);
    String head = aggregate.function().words().replace(' ', '-');
    return "(" + head + " " + over + "over " + name(aggregate.table()) + where + ")";
  }

  @Override
  public String selection(Selection selection) {
    String where = selection.where() == null ? "" : " where " + selection.where().accept(this);
    Selection.Preference preference = selection.preference();
    String with =
        preference == null
            ? ""
            : (preference.largest() ? " with-largest " : " with-smallest ")
                + preference.by().accept(this);
    return "(row-of " + name(selection.table()) + where + with + ")";
  }
}
