package org.battenbook.tolerance;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFunction;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Slope;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.tolerance.ErrorBoundPlaces.Source;
import org.battenbook.value.Kind;

/** Whether any {@code ±} reaches a formula, in whatever way. */
final class ToleranceDependence {
  private final Map<Place, CheckedPlace> places;
  private final ErrorBoundPlaces bounds;
  private final Set<Place> reached = new HashSet<>();
  private final Set<Place> unreached = new HashSet<>();

  /**
   * The places that were looked into for one question: places that read each other are looked into
   * once.
   */
  private final Set<Place> seen = new HashSet<>();

  private int depth;

  ToleranceDependence(Map<Place, CheckedPlace> places, ErrorBoundPlaces bounds) {
    this.places = places;
    this.bounds = bounds;
  }

  boolean into(NodeInScope part) {
    Expression node = part.node();
    if (node instanceof Reference reference) {
      return intoReference(part, reference);
    }
    if (node instanceof Apply apply) {
      return into(part, part.formula().operation(apply), apply.children());
    }
    if (node instanceof Call call) {
      CheckedFunction function = part.formula().function(call);
      List<NodeInScope> arguments = call.arguments().stream().map(part::at).toList();
      return function == null
          ? into(part, part.formula().operation(call), call.arguments())
          : into(part.calling(function.body(), arguments));
    }
    if (node instanceof Choice choice) {
      return into(part.at(choice.then())) || into(part.at(choice.otherwise()));
    }
    return node instanceof Aggregate aggregate
        && aggregate.of() != null
        && into(part.at(aggregate.of()));
  }

  private boolean into(NodeInScope part, Operation operation, List<Expression> operands) {
    return IntStream.range(0, operands.size())
        .anyMatch(i -> operation.slope(i) != Slope.NONE && into(part.at(operands.get(i))));
  }

  private boolean intoReference(NodeInScope part, Reference reference) {
    Path path = part.formula().path(reference);
    return path.through().isEmpty()
        ? path.target().accept(new Into(part))
        : into(path.through().get(path.through().size() - 1));
  }

  /** Whether a {@code ±} reaches what a node reads. */
  private final class Into implements TargetVisitor<Boolean> {
    private final NodeInScope part;

    Into(NodeInScope part) {
      this.part = part;
    }

    @Override
    public Boolean here(Target.Here here) {
      return into(here.place());
    }

    @Override
    public Boolean above(Target.Above above) {
      return into(above.column());
    }

    @Override
    public Boolean outer(Target.Outer outer) {
      return into(outer.column());
    }

    @Override
    public Boolean outerRow(Target.OuterRow outerRow) {
      return false;
    }

    @Override
    public Boolean parameter(Target.Parameter parameter) {
      return into(part.meant());
    }

    @Override
    public Boolean inherited(Target.Inherited inherited) {
      return intoInherited(inherited);
    }

    @Override
    public Boolean setting(Target.Setting setting) {
      return false;
    }
  }

  private boolean intoInherited(Target.Inherited inherited) {
    CheckedPlace checked = places.get(inherited.place());
    CheckedFormula replaced =
        checked == null ? null : checked.layers().get(inherited.layer()).formula();
    return bounds.tolerance(new Source(inherited.place(), inherited.layer())) != null
        || (replaced != null && into(NodeInScope.of(replaced, replaced.expression())));
  }

  /** Whether a {@code ±} reaches the value of a place in any row. */
  boolean into(Place place) {
    if (reached.contains(place) || unreached.contains(place) || !seen.add(place)) {
      return reached.contains(place);
    }
    depth++;
    boolean found = bounds.tolerance(Source.of(place)) != null || intoFormulas(place);
    depth--;
    if (found) {
      reached.add(place);
    }
    if (depth == 0) {
      // Only of the whole is a no certain: what was met twice was not looked into again.
      if (!found) {
        unreached.addAll(seen);
      }
      seen.clear();
    }
    return found;
  }

  private boolean intoFormulas(Place place) {
    CheckedPlace checked = places.get(place);
    if (checked == null || !(checked.kind() instanceof Kind.Measured)) {
      return false;
    }
    CheckedFormula formula = checked.formula();
    return (formula != null && into(NodeInScope.of(formula, formula.expression())))
        || checked.entries().formulas().stream()
            .anyMatch(cell -> into(NodeInScope.of(cell, cell.expression())));
  }
}
