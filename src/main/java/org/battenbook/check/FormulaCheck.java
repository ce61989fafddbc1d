package org.battenbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.battenbook.bind.Meaning;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Rows;
import org.battenbook.bind.Scope;
import org.battenbook.book.Table;
import org.battenbook.bound.Bound;
import org.battenbook.check.Need.Reach;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.ExpressionVisitor;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TextPart;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Units;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Type-checks one formula: finds the meaning and the kind of each node, and stores both in its
 * {@link CheckedFormula}.
 */
final class FormulaCheck implements ExpressionVisitor<Kind> {
  private final TypingContext typing;
  private final CheckEnvironment environment;
  private final Diagnostics diagnostics;
  private final CheckedFormula checked;
  private final ReferenceCheck references;
  private Scope scope;

  FormulaCheck(
      TypingContext typing,
      Diagnostics diagnostics,
      CheckedFormula checked,
      List<Kind> argumentKinds) {
    this.typing = typing;
    this.environment = typing.environment();
    this.diagnostics = diagnostics;
    this.checked = checked;
    this.references = new ReferenceCheck(typing, diagnostics, checked, argumentKinds);
    this.scope = checked.scope();
  }

  /**
   * Checks the formula and its {@code ±}.
   *
   * @param expected the kind that the formula must have; null if any kind is fine
   * @return the kind of the formula; {@link Kind#UNKNOWN} after a fault
   */
  Kind check(@Nullable Kind expected) {
    Kind kind = value(expected);
    checkCount();
    if (checked.formula().tolerance() != null) {
      tolerance(checked.formula().tolerance(), kind);
    }
    return kind;
  }

  /** Checks that a number written for a place that is declared as a count is one. */
  private void checkCount() {
    Scope.Own own = scope.own();
    boolean isOfCount = own != null && DeclaredKinds.isCount(own.place().declaredKind());
    if (isOfCount && checked.literal().filter(value -> !Counts.isCount(value)).isPresent()) {
      Span written = checked.expression().span();
      fault(
          "not-a-count",
          written,
          "'%s' is not a count".formatted(written.text()),
          "write a whole number, 0 or more");
    }
  }

  /** Checks that the tolerance after {@code ±} has the same kind as the value before it. */
  private void tolerance(Formula written, Kind kind) {
    if (!(kind instanceof Kind.Measured)) {
      if (kind != Kind.UNKNOWN) {
        fault(
            "tolerance-of-no-number",
            written.span(),
            "only a number can have a tolerance, and this is " + kind.words(),
            "remove ±");
      }
      return;
    }
    CheckedFormula tolerance = new CheckedFormula(written, scope);
    Kind found = new FormulaCheck(typing, diagnostics, tolerance, List.of()).value(kind);
    if (found != Kind.UNKNOWN) {
      checked.setTolerance(tolerance);
    }
  }

  private Kind value(@Nullable Kind expected) {
    Expression whole = checked.expression();
    Kind kind = expected == null ? kind(whole) : kind(whole, expected);
    if (expected != null && !agree(kind, expected)) {
      wrongKind(kind, expected);
      return Kind.UNKNOWN;
    }
    return kind;
  }

  /** The advice for a wrong kind, above all for a missing unit or a missing currency. */
  private String kindRepair(Kind found, Kind expected) {
    return lacksCurrency(found, expected)
        ? "add a line 'currency %s' under the workbook's name"
            .formatted(currency(found).orElseThrow())
        : "write " + expected.words();
  }

  private static boolean lacksCurrency(Kind found, Kind expected) {
    return currency(found).isPresent()
        && currency(expected).filter(Dimension.NO_CURRENCY::equals).isPresent();
  }

  private void wrongKind(Kind found, Kind expected) {
    Span written = checked.expression().span();
    boolean isBare = found.equals(Kind.NUMBER) && checked.literal().isPresent();
    if (isBare && expected instanceof Kind.Measured wanted) {
      fault(
          "kind-mismatch",
          written,
          "'%s' needs a unit of %s".formatted(written.text(), noun(expected)),
          "write " + withUnits(written.text(), wanted.dimension()));
    } else {
      fault(
          "kind-mismatch",
          written,
          "'%s' is %s, but %s"
              .formatted(
                  written.text(),
                  found.words(),
                  lacksCurrency(found, expected)
                      ? "this workbook has no currency"
                      : expected.words() + " goes here"),
          kindRepair(found, expected));
    }
  }

  private static String noun(Kind kind) {
    return kind.words().replaceFirst("^an? ", "").replace(" of no currency", "");
  }

  /** A number with the unit that is usual for what it measures; a length in both systems. */
  private static String withUnits(String number, Dimension dimension) {
    String symbol = dimension.baseSymbol().replace(Dimension.NO_CURRENCY, "USD");
    String usual = "%s %s".formatted(number, symbol);
    return dimension.equals(Dimension.LENGTH)
        ? "%s or %s %s".formatted(usual, number, Units.MILLIMETRE.symbol())
        : usual;
  }

  private static Optional<String> currency(Kind kind) {
    return kind instanceof Kind.Measured measured
        ? measured.dimension().currency()
        : Optional.empty();
  }

  /** Whether two kinds are the same. An unknown kind agrees with any, to avoid a second fault. */
  static boolean agree(Kind a, Kind b) {
    return a.equals(b) || a == Kind.UNKNOWN || b == Kind.UNKNOWN;
  }

  private Kind kind(Expression node) {
    Kind kind = node.accept(this);
    checked.setKind(node, kind);
    return kind;
  }

  /**
   * The kind of a node if some kind is expected. If that is a row, a text in quotes names a row.
   */
  private Kind kind(Expression node, Kind expected) {
    if (expected instanceof Kind.RowOf rowOf) {
      if (node instanceof TextLiteral text) {
        return namedRow(text, rowOf);
      }
      if (node instanceof Choice choice) {
        Kind kind = choice(choice, expected);
        checked.setKind(node, kind);
        return kind;
      }
    }
    return kind(node);
  }

  private Kind namedRow(TextLiteral text, Kind.RowOf rowOf) {
    Table table = environment.table(rowOf.table());
    if (!text.children().isEmpty()) {
      refuseHole(text.children().get(0), table);
      checked.setKind(text, Kind.UNKNOWN);
      return Kind.UNKNOWN;
    }
    String name = plainText(text);
    checked.need(new Need(table.keyColumn(), Reach.ROWS));
    Kind kind =
        table.isWritten()
            ? writtenRow(text, table, name, rowOf)
            : lateRow(text, table, name, rowOf);
    checked.setKind(text, kind);
    return kind;
  }

  /** Reports a value shown in the name of a row, which is fixed before any value is known. */
  private void refuseHole(Expression shown, Table table) {
    fault(
        "hole-out-of-place",
        shown.span(),
        "a value cannot be shown inside the name of a row of '%s'".formatted(table),
        "write the whole name of the row; write {{ for a brace");
  }

  private Kind writtenRow(TextLiteral text, Table table, String name, Kind.RowOf rowOf) {
    RowKeys keys = environment.rows(table).keys();
    Optional<Integer> row = keys.row(name);
    row.ifPresent(r -> checked.setFact(text, new Value.Row(rowOf.table(), r, keys.name(r))));
    if (row.isEmpty()) {
      diagnostics.fault("no-such-row", text.span(), keys.missing(name), () -> keys.repair(name));
      return Kind.UNKNOWN;
    }
    return rowOf;
  }

  /**
   * Stores the name of a row of an opened or planned table; it is checked when its rows are known.
   */
  private Kind lateRow(TextLiteral text, Table table, String name, Kind.RowOf rowOf) {
    checked.setFact(text, new Value.Row(rowOf.table(), Rows.NO_ROW, name));
    checked.addLateNames(List.of(new LateName(table, name, text.span())));
    return rowOf;
  }

  private static String plainText(TextLiteral text) {
    StringBuilder words = new StringBuilder();
    for (TextPart part : text.parts()) {
      if (part instanceof TextPart.Words plain) {
        words.append(plain.words());
      }
    }
    return words.toString();
  }

  @Override
  public Kind quantity(QuantityLiteral literal) {
    LiteralUnits.Reading reading = LiteralUnits.read(literal);
    if (reading.quantity() == null) {
      unknownUnit(literal, reading);
      return Kind.UNKNOWN;
    }
    checked.setFact(literal, new Value.Amount(reading.quantity()));
    return new Kind.Measured(reading.quantity().dimension());
  }

  private void unknownUnit(QuantityLiteral literal, LiteralUnits.Reading reading) {
    String unit = reading.unit();
    String number =
        literal
            .span()
            .text()
            .substring(0, Math.max(0, reading.unitSpan().start() - literal.span().start()))
            .strip();
    fault("unknown-unit", reading.unitSpan(), reading.message(), unitRepair(number, unit, reading));
  }

  /** The advice for an unknown unit: {@code 3 lip} needs an operator, {@code 12 in/lip} a space. */
  private String unitRepair(String number, String unit, LiteralUnits.Reading reading) {
    if (isName(unit)) {
      return "write units after numbers; to multiply, write '%s * %s'".formatted(number, unit);
    }
    int slash = unit.indexOf('/');
    if (slash > 0 && isName(unit.substring(slash + 1).strip())) {
      return "to divide by '%s', write '%s %s / %s'"
          .formatted(
              unit.substring(slash + 1).strip(),
              number,
              unit.substring(0, slash).strip(),
              unit.substring(slash + 1).strip());
    }
    return reading.repair();
  }

  private boolean isName(String text) {
    return isName(new Name(text, checked.formula().span()));
  }

  private boolean isName(Name name) {
    return !(environment.binder().resolve(name, scope) instanceof Meaning.Unclear);
  }

  @Override
  public Kind text(TextLiteral literal) {
    boolean plain = true;
    for (TextPart part : literal.parts()) {
      if (part instanceof TextPart.Hole hole) {
        plain = false;
        hole(hole);
      }
    }
    if (plain) {
      checked.setFact(literal, new Value.Text(plainText(literal)));
    }
    return Kind.TEXT;
  }

  private void hole(TextPart.Hole hole) {
    Kind kind = kind(hole.reference());
    if (hole.shownAs() != null) {
      environment
          .shownForms()
          .form(hole.shownAs(), kind, diagnostics)
          .ifPresent(form -> checked.setHoleForm(hole.reference(), form));
    }
  }

  @Override
  public Kind date(DateLiteral literal) {
    checked.setFact(literal, new Value.Day(literal.date()));
    return Kind.DATE;
  }

  @Override
  public Kind truth(TruthLiteral literal) {
    checked.setFact(literal, new Value.YesNo(literal.truth()));
    return Kind.YES_NO;
  }

  @Override
  public Kind firstRow(FirstRow firstRow) {
    if (scope.table() == null || scope.outer() != null) {
      fault(
          "no-row-here",
          firstRow.span(),
          "'first row' can be used in columns of a table only",
          "use it in a formula under 'worked out'");
    }
    return Kind.YES_NO;
  }

  @Override
  public Kind reference(Reference reference) {
    return references.check(reference, scope);
  }

  @Override
  public Kind apply(Apply apply) {
    Operation operation = operationOf(apply);
    checked.setFact(apply, operation);
    return operation(apply, operation, operandKinds(apply.children()));
  }

  /**
   * The operation of an operator. Later stages get it from {@link CheckedFormula#operation} and do
   * not read its name.
   */
  static Operation operationOf(Apply apply) {
    return Operations.find(apply.operation())
        .orElseThrow(() -> new IllegalStateException("no operation " + apply.operation()));
  }

  /** The kinds of operands. If one of them is a row, a text in quotes names a row of its table. */
  private List<Kind> operandKinds(List<Expression> operands) {
    List<Kind> kinds = new ArrayList<>();
    operands.forEach(operand -> kinds.add(operand instanceof TextLiteral ? null : kind(operand)));
    Optional<Kind> row = kinds.stream().filter(Kind.RowOf.class::isInstance).findFirst();
    for (int i = 0; i < operands.size(); i++) {
      if (operands.get(i) instanceof TextLiteral text) {
        kinds.set(i, row.isPresent() ? kind(text, row.get()) : kind(text));
      }
    }
    return kinds;
  }

  private Kind operation(Expression node, Operation operation, List<Kind> kinds) {
    List<Expression> operands = node.children();
    List<Operation.Operand> described = new ArrayList<>();
    for (int i = 0; i < operands.size(); i++) {
      described.add(operand(operands.get(i), kinds.get(i)));
    }
    return operation.check(
        described,
        (code, at, message, repair) -> {
          List<Span> spans = at.stream().map(i -> operands.get(i).span()).toList();
          diagnostics.report(
              new Diagnostic(
                  Diagnostic.Severity.FAULT,
                  code,
                  spans.get(0),
                  spans.subList(1, spans.size()),
                  message,
                  repair));
        });
  }

  private Operation.Operand operand(Expression node, Kind kind) {
    Optional<Value> literal = checked.literal(node);
    boolean number =
        literal.isPresent()
            && literal.get() instanceof Value.Amount amount
            && amount.quantity().number() instanceof Rational;
    return new Operation.Operand(
        kind,
        node.span().text(),
        number ? (Rational) ((Value.Amount) literal.get()).quantity().number() : null);
  }

  @Override
  public Kind call(Call call) {
    FunctionDefinition own = environment.function(call.function().key(), scope);
    if (own != null) {
      return ownFunction(call, own);
    }
    Optional<Operation> operation = Operations.function(call.function().key());
    if (operation.isEmpty()) {
      call.arguments().forEach(this::kind);
      unknownFunction(call);
      return Kind.UNKNOWN;
    }
    List<Kind> kinds = operandKinds(call.arguments());
    Operation.Arity arity = operation.get().arity();
    if (kinds.size() < arity.least() || kinds.size() > arity.most()) {
      wrongCount(call, arity.least());
      return Kind.UNKNOWN;
    }
    checked.setFact(call, operation.get());
    return operation(call, operation.get(), kinds);
  }

  private void unknownFunction(Call call) {
    Name name = call.function();
    if (isName(name)) {
      fault(
          "unknown-function",
          name.span(),
          "'%s' is a value, but a bracket comes after it".formatted(name),
          "to multiply, write '%s * (…)'".formatted(name));
      return;
    }
    diagnostics.fault(
        "unknown-function",
        name.span(),
        "there is no function '%s'".formatted(name),
        () -> NearNames.question(name.text(), environment.functionNames()));
  }

  private void wrongCount(Call call, int wanted) {
    fault(
        "argument-count",
        call.span(),
        "'%s' needs %d %s, but it has %d"
            .formatted(
                call.function(), wanted, wanted == 1 ? "value" : "values", call.arguments().size()),
        call.arguments().size() < wanted ? "write one more after a comma" : "remove the last ones");
  }

  private Kind ownFunction(Call call, FunctionDefinition definition) {
    List<Kind> kinds = new ArrayList<>();
    if (call.arguments().size() != definition.parameters().size()) {
      call.arguments().forEach(this::kind);
      wrongCount(call, definition.parameters().size());
      return Kind.UNKNOWN;
    }
    for (int i = 0; i < call.arguments().size(); i++) {
      Expression argument = call.arguments().get(i);
      Kind declared = environment.parameterKind(definition.parameters().get(i));
      Kind kind = kind(argument, declared);
      if (!agree(kind, declared)) {
        fault(
            "argument-kind",
            argument.span(),
            "'%s' of '%s' is %s, but '%s' is %s"
                .formatted(
                    definition.parameters().get(i).name(),
                    definition.name(),
                    declared.words(),
                    argument.span().text(),
                    kind.words()),
            "use %s there".formatted(declared.words()));
        kind = Kind.UNKNOWN;
      }
      kinds.add(kind);
    }
    CheckedFunction function = typing.checkCall(definition, kinds, call.span(), diagnostics);
    if (function == null) {
      return Kind.UNKNOWN;
    }
    if (!fits(call, function)) {
      return Kind.UNKNOWN;
    }
    checked.setFact(call, function);
    function.body().needs().forEach(checked::need);
    checked.addLateNames(function.body().lateNames());
    return function.body().kind();
  }

  /**
   * Whether a formula stays small enough with one more call, once functions are expanded inline.
   * Derivations, tolerances and spreadsheets expand them, and each function that calls another one
   * twice doubles the formula. Only the first call past the bound is reported.
   */
  private boolean fits(Call call, CheckedFunction function) {
    boolean fitted = !Bound.OPERATIONS.isPassedBy(checked.expandedSize());
    checked.addCall(function);
    boolean fits = !Bound.OPERATIONS.isPassedBy(checked.expandedSize());
    if (fitted && !fits) {
      fault(
          "functions-too-large",
          call.span(),
          "with '%s' written out, this formula has more than %s operations"
              .formatted(call.function(), Bound.OPERATIONS.shown()),
          "calculate what is used more than once on its own line");
    }
    return fits;
  }

  @Override
  public Kind choice(Choice choice) {
    return choice(choice, Kind.UNKNOWN);
  }

  private Kind choice(Choice choice, Kind expected) {
    yesNo(choice.condition(), "the condition of 'if'");
    Kind then = kind(choice.then(), expected);
    Kind otherwise = kind(choice.otherwise(), expected == Kind.UNKNOWN ? then : expected);
    if (!agree(then, otherwise)) {
      diagnostics.report(
          new Diagnostic(
              Diagnostic.Severity.FAULT,
              "branch-mismatch",
              choice.otherwise().span(),
              List.of(choice.then().span()),
              "'then' gives %s and 'else' gives %s".formatted(then.words(), otherwise.words()),
              "make both the same kind of value"));
      return Kind.UNKNOWN;
    }
    return then == Kind.UNKNOWN ? otherwise : then;
  }

  @Override
  public Kind atWorst(AtWorst atWorst) {
    Kind kind = kind(atWorst.comparison());
    Kind side = checked.kind(atWorst.comparison().children().get(0));
    if (!scope.parameters().isEmpty()) {
      fault(
          "at-worst-in-function",
          atWorst.span(),
          "a function does not know how its arguments are calculated",
          "write 'even at worst' where the function is called");
    } else if (!(side instanceof Kind.Measured)) {
      if (side != Kind.UNKNOWN) {
        fault(
            "tolerance-of-no-number",
            atWorst.span(),
            "only numbers have tolerances, and these are each " + side.words(),
            "remove 'even at worst'");
      }
    } else {
      checked.atWorst().add(new CheckedFormula.Compared(atWorst, scope.outer() != null));
    }
    return kind;
  }

  private void yesNo(Expression node, String what) {
    Kind kind = kind(node);
    if (!agree(kind, Kind.YES_NO)) {
      fault(
          "not-yes-or-no",
          node.span(),
          "%s must be yes or no, but '%s' is %s".formatted(what, node.span().text(), kind.words()),
          "compare it with a value: '%s > …'".formatted(node.span().text()));
    }
  }

  @Override
  public Kind aggregate(Aggregate aggregate) {
    Table table = innerTable(aggregate, aggregate.table());
    if (table == null) {
      return Kind.UNKNOWN;
    }
    Scope around = scope;
    scope = scope.inside(table);
    Expression where = aggregate.where();
    if (where != null) {
      yesNo(where, "the condition after 'where'");
    }
    Expression of = aggregate.of();
    Kind kind = of == null ? Kind.NUMBER : aggregated(aggregate, of);
    scope = around;
    return kind;
  }

  private Kind aggregated(Aggregate aggregate, Expression of) {
    Kind kind = kind(of);
    boolean ordered = kind instanceof Kind.Measured || kind == Kind.DATE;
    boolean added =
        aggregate.function() == AggregateFunction.SUM
            || aggregate.function() == AggregateFunction.AVERAGE;
    if (aggregate.function() == AggregateFunction.COUNT) {
      return Kind.NUMBER;
    }
    if (kind != Kind.UNKNOWN && (!ordered || (added && kind == Kind.DATE))) {
      fault(
          "not-a-quantity",
          of.span(),
          "'%s' needs numbers, but '%s' is %s"
              .formatted(aggregate.function().words(), of.span().text(), kind.words()),
          kind == Kind.YES_NO
              ? "to count rows, write 'count of %s where %s'"
                  .formatted(aggregate.table(), of.span().text())
              : "");
      return Kind.UNKNOWN;
    }
    return kind;
  }

  private @Nullable Table innerTable(Expression node, Name name) {
    Table table = environment.visibleTable(name.key(), scope);
    if (table == null) {
      diagnostics.fault(
          "no-such-table",
          name.span(),
          "there is no table '%s'".formatted(name),
          () -> NearNames.question(name.text(), environment.tableNames()));
      return null;
    }
    checked.setFact(node, table);
    checked.need(new Need(table.keyColumn(), Reach.ROWS));
    return table;
  }

  @Override
  public Kind selection(Selection selection) {
    Table table = innerTable(selection, selection.table());
    if (table == null) {
      return Kind.UNKNOWN;
    }
    Scope around = scope;
    scope = scope.inside(table);
    Expression where = selection.where();
    if (where != null) {
      yesNo(where, "the condition after 'where'");
    }
    Selection.Preference preference = selection.preference();
    if (preference != null) {
      Kind kind = kind(preference.by());
      if (!(kind instanceof Kind.Measured) && kind != Kind.DATE && kind != Kind.UNKNOWN) {
        fault(
            "not-a-quantity",
            preference.by().span(),
            "'with %s' compares numbers, but '%s' is %s"
                .formatted(
                    preference.largest() ? "largest" : "smallest",
                    preference.by().span().text(),
                    kind.words()),
            "");
      }
    }
    scope = around;
    return new Kind.RowOf(table.key());
  }

  private void fault(String code, Span span, String message, String repair) {
    diagnostics.fault(code, span, message, repair);
  }
}
