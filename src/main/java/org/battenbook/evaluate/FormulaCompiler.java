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
import org.battenbook.check.Counts;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
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

/** Compiles a checked formula: a node to run for each node of its tree. */
final class FormulaCompiler implements ExpressionVisitor<FormulaNode> {
  private final Tolerances tolerances;
  private final CheckedBook book;
  private final Slots slots;
  private final CheckedFormula formula;

  /** For the formula of a single cell: what gives the value that a change of it inherits. */
  private final @Nullable FormulaNode inheritedInCell;

  private FormulaCompiler(
      Tolerances tolerances,
      Slots slots,
      CheckedFormula formula,
      @Nullable FormulaNode inheritedInCell) {
    this.tolerances = tolerances;
    this.book = tolerances.book();
    this.slots = slots;
    this.formula = formula;
    this.inheritedInCell = inheritedInCell;
  }

  static FormulaNode compile(Tolerances tolerances, Slots slots, CheckedFormula formula) {
    return compile(tolerances, slots, formula, formula.expression());
  }

  static FormulaNode compile(
      Tolerances tolerances, Slots slots, CheckedFormula formula, Expression part) {
    return new FormulaCompiler(tolerances, slots, formula, null).compiled(part);
  }

  /**
   * Compiles the formula of one cell.
   *
   * @param inherited what the cell's own name means in it; absent where it has no value otherwise
   */
  static FormulaNode compileCell(
      Tolerances tolerances, Slots slots, CheckedFormula formula, @Nullable FormulaNode inherited) {
    return new FormulaCompiler(tolerances, slots, formula, inherited)
        .compiled(formula.expression());
  }

  /** The formula of a place, with the check that its value is a count where it must be one. */
  static FormulaNode counted(Place place, CheckedFormula formula, FormulaNode node) {
    return Counts.mustBeChecked(place, formula)
        ? new ApplyNode(formula.expression(), Operations.COUNT, List.of(node))
        : node;
  }

  private FormulaNode compiled(Expression node) {
    return node.accept(this);
  }

  private @Nullable FormulaNode planOrNone(@Nullable Expression node) {
    return node == null ? null : compiled(node);
  }

  private List<FormulaNode> allCompiled(List<Expression> nodes) {
    return nodes.stream().map(this::compiled).toList();
  }

  @Override
  public FormulaNode quantity(QuantityLiteral literal) {
    return new ConstantNode(literal, formula.constant(literal));
  }

  @Override
  public FormulaNode text(TextLiteral literal) {
    if (literal.parts().stream().noneMatch(TextPart.Hole.class::isInstance)) {
      return constant(literal, formula.constant(literal));
    }
    List<TextNode.Part> parts = new ArrayList<>();
    for (TextPart part : literal.parts()) {
      parts.add(
          part instanceof TextPart.Hole hole
              ? new TextNode.Part("", compiled(hole.reference()), holeForm(hole.reference()))
              : new TextNode.Part(((TextPart.Words) part).words(), null, null));
    }
    return new TextNode(literal, parts);
  }

  private FormulaNode constant(TextLiteral literal, Value value) {
    return value instanceof Value.Row row && row.row() == Rows.NO_ROW
        ? new NamedRowNode(literal, requireNonNull(book.book().table(row.table())), row.name())
        : new ConstantNode(literal, value);
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
  public FormulaNode date(DateLiteral literal) {
    return new ConstantNode(literal, formula.constant(literal));
  }

  @Override
  public FormulaNode truth(TruthLiteral literal) {
    return new ConstantNode(literal, formula.constant(literal));
  }

  @Override
  public FormulaNode reference(Reference reference) {
    Path path = formula.path(reference);
    FormulaNode read = path.target().accept(new TargetNodes(reference));
    for (Place place : path.through()) {
      read = new ThroughNode(reference, read, slots.of(place));
    }
    return read;
  }

  /** Nodes that read a target. */
  private final class TargetNodes implements TargetVisitor<FormulaNode> {
    private final Reference node;

    TargetNodes(Reference node) {
      this.node = node;
    }

    @Override
    public FormulaNode here(Target.Here here) {
      Slot slot = slots.of(here.place());
      return read(slot, slot.isColumn() ? ReadNode.From.SAME_ROW : ReadNode.From.LINE);
    }

    @Override
    public FormulaNode above(Target.Above above) {
      return read(slots.of(above.column()), ReadNode.From.ROW_ABOVE);
    }

    @Override
    public FormulaNode outer(Target.Outer outer) {
      return read(slots.of(outer.column()), ReadNode.From.OUTER_ROW);
    }

    private FormulaNode read(Slot slot, ReadNode.From from) {
      return new ReadNode(node, slot, from);
    }

    @Override
    public FormulaNode outerRow(Target.OuterRow outerRow) {
      return new OuterRowNode(node, outerRow.table());
    }

    @Override
    public FormulaNode parameter(Target.Parameter parameter) {
      return new ArgumentNode(node, parameter.index());
    }

    @Override
    public FormulaNode inherited(Target.Inherited inherited) {
      Slot slot = slots.of(inherited.place());
      boolean ofCell =
          formula.scope().own() != null
              && formula.scope().own().layer() == inherited.place().layers().size();
      if (ofCell) {
        return new InheritedNode(node, slot, inheritedInCell);
      }
      CheckedFormula replaced =
          book.place(inherited.place()).layers().get(inherited.layer()).formula();
      return new InheritedNode(
          node, slot, replaced == null ? null : compile(tolerances, slots, replaced));
    }

    @Override
    public FormulaNode setting(Target.Setting setting) {
      return new ConstantNode(node, setting.value());
    }
  }

  @Override
  public FormulaNode firstRow(FirstRow firstRow) {
    return new FirstRowNode(firstRow);
  }

  @Override
  public FormulaNode apply(Apply apply) {
    return new ApplyNode(apply, formula.operation(apply), allCompiled(apply.children()));
  }

  @Override
  public FormulaNode call(Call call) {
    CheckedFunction function = formula.function(call);
    List<FormulaNode> arguments = allCompiled(call.arguments());
    if (function == null && formula.operation(call) instanceof PixelCount count) {
      return new PictureNode(call, count, arguments.get(0), book.book().pictures());
    }
    return function == null
        ? new ApplyNode(call, formula.operation(call), arguments)
        : new CallNode(call, arguments, body(function));
  }

  private FormulaNode body(CheckedFunction function) {
    return new FormulaCompiler(tolerances, slots, function.body(), null)
        .compiled(function.body().expression());
  }

  @Override
  public FormulaNode choice(Choice choice) {
    return new ChoiceNode(
        choice,
        compiled(choice.condition()),
        compiled(choice.then()),
        compiled(choice.otherwise()));
  }

  /**
   * A comparison whose left side is moved toward the right side by all that may be off. A
   * derivation finds what may be off under the comparison itself.
   */
  @Override
  public FormulaNode atWorst(AtWorst atWorst) {
    Apply comparison = atWorst.comparison();
    FormulaNode left = compiled(comparison.children().get(0));
    FormulaNode right = compiled(comparison.children().get(1));
    CheckedFormula margin = tolerances.margin(atWorst);
    if (margin != null) {
      FormulaNode worked =
          new FormulaCompiler(tolerances, slots, margin, null).compiled(margin.expression());
      FormulaNode off = new CallNode(comparison, List.of(), worked);
      Operation move = formula.operation(comparison).worsening().orElseThrow();
      left = new ApplyNode(atWorst, move, List.of(left, off));
    }
    return new ApplyNode(atWorst, formula.operation(comparison), List.of(left, right));
  }

  @Override
  public FormulaNode aggregate(Aggregate aggregate) {
    Table table = formula.table(aggregate);
    return new AggregateNode(
        aggregate,
        table,
        formula.kind(aggregate),
        planOrNone(aggregate.of()),
        planOrNone(aggregate.where()),
        matching(aggregate.where(), aggregate.of()),
        dependsOnRow(aggregate));
  }

  /**
   * {@code where inner = outer}, alone or first of several joined by {@code and}. One side does not
   * read {@code this}, the other does not read the inner row. An {@code and} stops early, so that
   * rows of other groups decide nothing.
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
      return new Matching(compiled(left), compiled(right), decides);
    }
    if (readsOnlyOuter(left) && !readsAround(right)) {
      return new Matching(compiled(right), compiled(left), decides);
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
  public FormulaNode selection(Selection selection) {
    Table table = formula.table(selection);
    Selection.Preference preference = selection.preference();
    Expression by = preference == null ? null : preference.by();
    return new SelectionNode(
        selection,
        table,
        planOrNone(selection.where()),
        planOrNone(by),
        matching(selection.where(), by));
  }
}
