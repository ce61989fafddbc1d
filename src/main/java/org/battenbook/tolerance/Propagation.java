package org.battenbook.tolerance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFunction;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Entries;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.operation.Slope;
import org.battenbook.source.Span;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.tolerance.ErrorBoundPlaces.Source;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Follows each {@code ±} into a formula, through the places that it reads. An error goes on through
 * sums and differences, and through a product or a quotient whose other operand has no error. A
 * rounding ends it, since what is rounded is a decision. Anything else that an error reaches is a
 * barrier.
 */
final class Propagation {
  /** The most ways that are followed. Formulas that read formulas multiply them. */
  private static final int MOST_WAYS = 5_000;

  private final Map<Place, CheckedPlace> places;
  private final ErrorBoundPlaces bounds;
  private final ToleranceDependence dependence;

  /** A place whose value before a change is written, so that no formula gives it. */
  private final @Nullable Place written;

  private final List<Term> terms = new ArrayList<>();
  private final List<Barrier> barriers = new ArrayList<>();
  private final Set<Place> underway = new HashSet<>();
  private int ways;

  /**
   * One way of an error into the value.
   *
   * @param row the path to the source's row; empty for a line, and for the own row
   */
  record Term(Source source, Optional<Path> row, Sensitivity sensitivity) {}

  /**
   * Something that no error can be followed through.
   *
   * @param sensitivity with the conditions under which an error reaches it
   * @param what in words, with where it stands
   */
  record Barrier(Sensitivity sensitivity, String what, Span at) {
    static Barrier of(Sensitivity sensitivity, String what, Span at) {
      String placed = "%s, '%s' (%s)".formatted(what, at.text(), at.place());
      return new Barrier(sensitivity, placed, at);
    }
  }

  Propagation(
      Map<Place, CheckedPlace> places,
      ErrorBoundPlaces bounds,
      ToleranceDependence dependence,
      @Nullable Place written) {
    this.places = places;
    this.bounds = bounds;
    this.dependence = dependence;
    this.written = written;
  }

  /** Every way of an error into the nodes that were followed. */
  List<Term> terms() {
    return terms;
  }

  List<Barrier> barriers() {
    return barriers;
  }

  /** Follows what a node reads. */
  void follow(NodeInScope part, Sensitivity sensitivity) {
    if (!dependence.into(part)) {
      return;
    }
    Expression node = part.node();
    if (ways > MOST_WAYS) {
      return;
    }
    if (++ways > MOST_WAYS) {
      // Under any condition: ways that are followed no more may have others.
      barrier(Sensitivity.ONE, "more than %d paths into".formatted(MOST_WAYS), part);
    } else if (node instanceof Reference reference) {
      reference(part, reference, sensitivity);
    } else if (node instanceof Apply apply) {
      apply(part, apply, sensitivity);
    } else if (node instanceof Call call) {
      call(part, call, sensitivity);
    } else if (node instanceof Choice choice) {
      NodeInScope condition = part.at(choice.condition());
      follow(part.at(choice.then()), sensitivity.where(condition, true));
      follow(part.at(choice.otherwise()), sensitivity.where(condition, false));
    } else if (node instanceof Aggregate) {
      barrier(sensitivity, "a total over rows", part);
    }
  }

  private void apply(NodeInScope part, Apply apply, Sensitivity sensitivity) {
    operation(part, part.formula().operation(apply), apply.children(), sensitivity);
  }

  private void operation(
      NodeInScope part, Operation operation, List<Expression> nodes, Sensitivity sensitivity) {
    List<NodeInScope> operands = nodes.stream().map(part::at).toList();
    if (IntStream.range(0, operands.size()).anyMatch(i -> isStopped(operation, operands, i))) {
      barrier(sensitivity, operation.obstacle(), part);
      return;
    }
    for (int i = 0; i < operands.size(); i++) {
      if (operation.slope(i) != Slope.NONE && dependence.into(operands.get(i))) {
        follow(operands.get(i), times(sensitivity, operation.slope(i), other(operands, i)));
      }
    }
  }

  /** Whether an operand has an error that cannot go on into the result. */
  private boolean isStopped(Operation operation, List<NodeInScope> operands, int operand) {
    Slope slope = operation.slope(operand);
    return dependence.into(operands.get(operand))
        && (slope == Slope.CURVED
            || (slope.needsExactOther() && dependence.into(other(operands, operand))));
  }

  /** The other of two operands; of one, the operand itself. */
  private static NodeInScope other(List<NodeInScope> operands, int operand) {
    return operands.get(operand == 0 ? operands.size() - 1 : 0);
  }

  private static Sensitivity times(Sensitivity sensitivity, Slope slope, NodeInScope other) {
    return switch (slope) {
      case ONE -> sensitivity;
      case MINUS_ONE -> sensitivity.negated();
      case OTHER -> sensitivity.times(other);
      case ONE_OVER_OTHER -> sensitivity.over(other);
      case NONE, CURVED -> throw new IllegalArgumentException("no factor: " + slope);
    };
  }

  private void call(NodeInScope part, Call call, Sensitivity sensitivity) {
    CheckedFunction function = part.formula().function(call);
    if (function == null) {
      operation(part, part.formula().operation(call), call.arguments(), sensitivity);
      return;
    }
    List<NodeInScope> arguments = call.arguments().stream().map(part::at).toList();
    follow(part.calling(function.body(), arguments), sensitivity);
  }

  private void reference(NodeInScope part, Reference reference, Sensitivity sensitivity) {
    Path path = part.formula().path(reference);
    if (path.through().isEmpty()) {
      path.target().accept(new Reading(part, sensitivity)).run();
    } else {
      through(part, path, sensitivity);
    }
  }

  /** How to follow what a reference reads. */
  private final class Reading implements TargetVisitor<Runnable> {
    private final NodeInScope part;
    private final Sensitivity sensitivity;

    Reading(NodeInScope part, Sensitivity sensitivity) {
      this.part = part;
      this.sensitivity = sensitivity;
    }

    @Override
    public Runnable here(Target.Here here) {
      return () -> enter(here.place(), part, sensitivity);
    }

    @Override
    public Runnable above(Target.Above above) {
      return this::otherRow;
    }

    @Override
    public Runnable outer(Target.Outer outer) {
      return this::otherRow;
    }

    @Override
    public Runnable outerRow(Target.OuterRow outerRow) {
      return this::otherRow;
    }

    @Override
    public Runnable parameter(Target.Parameter parameter) {
      return () -> follow(part.meant(), sensitivity);
    }

    @Override
    public Runnable inherited(Target.Inherited inherited) {
      return () -> Propagation.this.inherited(inherited, part, sensitivity);
    }

    @Override
    public Runnable setting(Target.Setting setting) {
      return () -> {};
    }

    private void otherRow() {
      barrier(sensitivity, "a value that reads another row of its table", part);
    }
  }

  private void through(NodeInScope part, Path path, Sensitivity sensitivity) {
    int last = path.through().size() - 1;
    Path rowPath = new Path(path.target(), path.through().subList(0, last));
    Optional<Path> row = part.seen(rowPath);
    if (row.isEmpty()) {
      barrier(sensitivity, "a row that comes from another row", part);
      return;
    }
    Place place = path.through().get(last);
    enter(place, new NodeInScope(part.formula(), part.node(), row, List.of()), sensitivity);
  }

  /** Into a place that is read, in the row of the part that reads it. */
  private void enter(Place place, NodeInScope reader, Sensitivity sensitivity) {
    CheckedPlace checked = places.get(place);
    if (checked == null || !(checked.kind() instanceof Kind.Measured) || !underway.add(place)) {
      return;
    }
    addSource(Source.of(place), reader, sensitivity);
    CheckedFormula formula = checked.formula();
    Sensitivity unfilled = sensitivity;
    if (place instanceof Column column) {
      CheckedFormula filled = bounds.filled(column);
      unfilled = filled == null ? sensitivity : sensitivity.where(reader.reading(filled), false);
      cellFormulas(checked, column, reader, sensitivity);
    }
    if (formula != null) {
      boolean inRow = place.table() != null;
      NodeInScope part =
          inRow ? reader.reading(formula) : NodeInScope.of(formula, formula.expression());
      follow(part, unfilled);
    }
    underway.remove(place);
  }

  /** A formula that stands in cells counts in their rows alone. */
  private void cellFormulas(
      CheckedPlace checked, Column column, NodeInScope reader, Sensitivity sensitivity) {
    namedFormulas(checked, column)
        .forEach((row, cell) -> inCell(cell, isRow(column, row, cell), reader, sensitivity));
    checked
        .entries()
        .openingFormulas()
        .forEach((by, cell) -> inCell(cell, bounds.opened(column, by), reader, sensitivity));
  }

  /** A formula of cells; the condition that they decide is absent where no error comes in. */
  private void inCell(
      CheckedFormula cell,
      @Nullable CheckedFormula decides,
      NodeInScope reader,
      Sensitivity sensitivity) {
    if (decides == null || !dependence.into(NodeInScope.of(cell, cell.expression()))) {
      return;
    }
    NodeInScope inCell = reader.reading(cell);
    Sensitivity inItsRow = sensitivity.where(reader.reading(decides), true);
    if (cell.readsInherited()) {
      barrier(inItsRow, "a change that reads the cell it changes", inCell);
    } else {
      follow(inCell, inItsRow);
    }
  }

  /** The formulas of single rows, by the names of these. */
  private Map<String, CheckedFormula> namedFormulas(CheckedPlace checked, Column column) {
    CheckedPlace names = places.get(column.table().keyColumn());
    return checked.entries().namedFormulas(names == null ? Entries.NONE : names.entries());
  }

  private CheckedFormula isRow(Column column, String row, CheckedFormula cell) {
    Column key = column.table().keyColumn();
    SyntheticFormula compared = new SyntheticFormula(cell.formula().span());
    Expression read = compared.read(key, Optional.empty(), Kind.TEXT);
    Expression text = compared.constant(new Value.Text(row), Kind.TEXT);
    return compared.formula(
        compared.apply(Operations.EQUAL, Kind.YES_NO, read, text), cell.scope());
  }

  private void inherited(Target.Inherited inherited, NodeInScope reader, Sensitivity sensitivity) {
    Source source = new Source(inherited.place(), inherited.layer());
    boolean ofCell = source.equals(Source.of(inherited.place()));
    if (ofCell && bounds.tolerance(source) != null) {
      barrier(sensitivity, "a change that reads the cell it changes", reader);
      return;
    }
    CheckedPlace checked = places.get(inherited.place());
    if (checked == null || inherited.place() == written) {
      return;
    }
    addSource(source, reader, sensitivity);
    CheckedFormula replaced = checked.layers().get(inherited.layer()).formula();
    if (replaced != null) {
      follow(reader.reading(replaced), sensitivity);
    }
  }

  private void addSource(Source source, NodeInScope reader, Sensitivity sensitivity) {
    if (bounds.tolerance(source) != null) {
      boolean inRow = source.place().table() != null;
      terms.add(new Term(source, inRow ? reader.row() : Optional.empty(), sensitivity));
    }
  }

  private void barrier(Sensitivity sensitivity, String what, NodeInScope part) {
    barriers.add(Barrier.of(sensitivity, what, part.node().span()));
  }
}
