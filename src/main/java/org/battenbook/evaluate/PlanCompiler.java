package org.battenbook.evaluate;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.Rows;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFunction;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.operation.Operation;
import org.battenbook.operation.PixelCount;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.ExpressionVisitor;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TextPart;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.tolerance.Tolerances;
import org.battenbook.unit.Form;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Turns one checked formula into plans. */
final class PlanCompiler implements ExpressionVisitor<Plan> {
  private final Tolerances tolerances;
  private final CheckedBook book;
  private final Slots slots;
  private final CheckedFormula formula;

  /** For the formula of a single cell: the plan of the value that a change of it inherits. */
  private final @Nullable Plan inheritedInCell;

  private PlanCompiler(
      Tolerances tolerances, Slots slots, CheckedFormula formula, @Nullable Plan inheritedInCell) {
    this.tolerances = tolerances;
    this.book = tolerances.book();
    this.slots = slots;
    this.formula = formula;
    this.inheritedInCell = inheritedInCell;
  }

  static Plan compile(Tolerances tolerances, Slots slots, CheckedFormula formula) {
    return compile(tolerances, slots, formula, formula.expression());
  }

  static Plan compile(Tolerances tolerances, Slots slots, CheckedFormula formula, Expression part) {
    return new PlanCompiler(tolerances, slots, formula, null).plan(part);
  }

  /**
   * Compiles the formula of one cell.
   *
   * @param inherited what the cell's own name means in it; absent where it has no value otherwise
   */
  static Plan compileCell(
      Tolerances tolerances, Slots slots, CheckedFormula formula, @Nullable Plan inherited) {
    return new PlanCompiler(tolerances, slots, formula, inherited).plan(formula.expression());
  }

  private Plan plan(Expression node) {
    return node.accept(this);
  }

  private @Nullable Plan planOrNone(@Nullable Expression node) {
    return node == null ? null : plan(node);
  }

  private List<Plan> plans(List<Expression> nodes) {
    List<Plan> plans = new ArrayList<>(nodes.size());
    nodes.forEach(node -> plans.add(plan(node)));
    return plans;
  }

  @Override
  public Plan quantity(QuantityLiteral literal) {
    return new ConstantPlan(literal, formula.constant(literal));
  }

  @Override
  public Plan text(TextLiteral literal) {
    if (literal.parts().stream().noneMatch(TextPart.Hole.class::isInstance)) {
      return constant(literal, formula.constant(literal));
    }
    List<TextPlan.Part> parts = new ArrayList<>();
    for (TextPart part : literal.parts()) {
      parts.add(
          part instanceof TextPart.Hole hole
              ? new TextPlan.Part("", plan(hole.reference()), holeForm(hole.reference()))
              : new TextPlan.Part(((TextPart.Words) part).words(), null, null));
    }
    return new TextPlan(literal, parts);
  }

  private Plan constant(TextLiteral literal, Value value) {
    return value instanceof Value.Row row && row.row() == Rows.NO_ROW
        ? new NamedRowPlan(literal, requireNonNull(book.book().table(row.table())), row.name())
        : new ConstantPlan(literal, value);
  }

  private @Nullable Form holeForm(Reference hole) {
    Form asked = formula.holeForm(hole);
    return asked == null ? formOf(formula.path(hole)) : asked;
  }

  private @Nullable Form formOf(Path path) {
    Place place = path.place();
    return place == null ? null : book.place(place).form();
  }

  @Override
  public Plan date(DateLiteral literal) {
    return new ConstantPlan(literal, formula.constant(literal));
  }

  @Override
  public Plan truth(TruthLiteral literal) {
    return new ConstantPlan(literal, formula.constant(literal));
  }

  @Override
  public Plan reference(Reference reference) {
    Path path = formula.path(reference);
    Plan plan = path.target().accept(new TargetPlans(reference));
    for (Place place : path.through()) {
      plan = new ThroughPlan(reference, plan, slots.of(place));
    }
    return plan;
  }

  /** Plans that read a target. */
  private final class TargetPlans implements TargetVisitor<Plan> {
    private final Reference node;

    TargetPlans(Reference node) {
      this.node = node;
    }

    @Override
    public Plan here(Target.Here here) {
      Slot slot = slots.of(here.place());
      return read(slot, slot.isColumn() ? ReadPlan.From.SAME_ROW : ReadPlan.From.LINE);
    }

    @Override
    public Plan above(Target.Above above) {
      return read(slots.of(above.column()), ReadPlan.From.ROW_ABOVE);
    }

    @Override
    public Plan outer(Target.Outer outer) {
      return read(slots.of(outer.column()), ReadPlan.From.OUTER_ROW);
    }

    private Plan read(Slot slot, ReadPlan.From from) {
      return new ReadPlan(node, slot, from);
    }

    @Override
    public Plan outerRow(Target.OuterRow outerRow) {
      return new OuterRowPlan(node, outerRow.table());
    }

    @Override
    public Plan parameter(Target.Parameter parameter) {
      return new ArgumentPlan(node, parameter.index());
    }

    @Override
    public Plan inherited(Target.Inherited inherited) {
      Slot slot = slots.of(inherited.place());
      boolean ofCell =
          formula.scope().own() != null
              && formula.scope().own().layer() == inherited.place().layers().size();
      if (ofCell) {
        return new InheritedPlan(node, slot, inheritedInCell);
      }
      CheckedFormula replaced =
          book.place(inherited.place()).layers().get(inherited.layer()).formula();
      return new InheritedPlan(
          node, slot, replaced == null ? null : compile(tolerances, slots, replaced));
    }

    @Override
    public Plan setting(Target.Setting setting) {
      return new ConstantPlan(node, setting.value());
    }
  }

  @Override
  public Plan firstRow(FirstRow firstRow) {
    return new FirstRowPlan(firstRow);
  }

  @Override
  public Plan apply(Apply apply) {
    return new ApplyPlan(apply, formula.operation(apply), plans(apply.children()));
  }

  @Override
  public Plan call(Call call) {
    CheckedFunction function = formula.function(call);
    List<Plan> arguments = plans(call.arguments());
    if (function == null && formula.operation(call) instanceof PixelCount count) {
      return new PicturePlan(call, count, arguments.get(0), book.book().pictures());
    }
    return function == null
        ? new ApplyPlan(call, formula.operation(call), arguments)
        : new FunctionPlan(call, arguments, body(function));
  }

  private Plan body(CheckedFunction function) {
    return new PlanCompiler(tolerances, slots, function.body(), null)
        .plan(function.body().expression());
  }

  @Override
  public Plan choice(Choice choice) {
    return new ChoicePlan(
        choice, plan(choice.condition()), plan(choice.then()), plan(choice.otherwise()));
  }

  /**
   * The comparison with its left side moved towards the right by all that may be off. Among the
   * slots, what may be off stands in the comparison's.
   */
  @Override
  public Plan atWorst(AtWorst atWorst) {
    Apply comparison = atWorst.comparison();
    Plan left = plan(comparison.children().get(0));
    Plan right = plan(comparison.children().get(1));
    CheckedFormula margin = tolerances.margin(atWorst);
    if (margin != null) {
      Plan worked = new PlanCompiler(tolerances, slots, margin, null).plan(margin.expression());
      Plan off = new FunctionPlan(comparison, List.of(), worked);
      Operation move = formula.operation(comparison).worsening().orElseThrow();
      left = new ApplyPlan(atWorst, move, List.of(left, off));
    }
    return new ApplyPlan(atWorst, formula.operation(comparison), List.of(left, right));
  }

  @Override
  public Plan aggregate(Aggregate aggregate) {
    Table table = formula.table(aggregate);
    return new AggregatePlan(
        aggregate,
        table,
        formula.kind(aggregate),
        planOrNone(aggregate.of()),
        planOrNone(aggregate.where()),
        matching(aggregate.where(), aggregate.of()),
        dependsOnRow(aggregate));
  }

  /**
   * {@code where inner = outer}, or that first of several joined by {@code and}: one side free of
   * {@code this}, the other of the inner row. An {@code and} stops early, so that rows of other
   * groups decide nothing.
   */
  private @Nullable Matching matching(@Nullable Expression where, @Nullable Expression of) {
    Expression first = where;
    while (first instanceof Apply apply && formula.operation(apply).isConjunction()) {
      first = apply.children().get(0);
    }
    if (!(first instanceof Apply equality) || !formula.operation(equality).isEquality()) {
      return null;
    }
    boolean decides = first == where && (of == null || !readsAround(of));
    Expression left = equality.children().get(0);
    Expression right = equality.children().get(1);
    if (readsOnlyOuter(right) && !readsAround(left)) {
      return new Matching(plan(left), plan(right), decides);
    }
    if (readsOnlyOuter(left) && !readsAround(right)) {
      return new Matching(plan(right), plan(left), decides);
    }
    return null;
  }

  /** Whether it reads the row around it; inside a function it may, through the arguments. */
  private boolean dependsOnRow(Expression node) {
    boolean argument = !formula.scope().parameters().isEmpty();
    return argument || readsAround(node);
  }

  private static boolean readsOnlyOuter(Expression node) {
    return node instanceof Reference reference && reference.root() == Root.THIS;
  }

  /** Whether it reads the row around an aggregate, or an argument of the function around it. */
  private boolean readsAround(Expression node) {
    boolean around =
        node instanceof Reference reference
            && (reference.root() == Root.THIS
                || formula.path(reference).target() instanceof Target.Parameter);
    return around || node.children().stream().anyMatch(this::readsAround);
  }

  @Override
  public Plan selection(Selection selection) {
    Table table = formula.table(selection);
    Selection.Preference preference = selection.preference();
    Expression by = preference == null ? null : preference.by();
    return new SelectionPlan(
        selection,
        table,
        planOrNone(selection.where()),
        planOrNone(by),
        matching(selection.where(), by));
  }
}
