package org.battenbook.tolerance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Scope;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFormula.NodeFact;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.source.Span;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Root;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.tolerance.Propagation.Barrier;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Composes a formula out of nodes of formulas that people wrote. */
final class SyntheticFormula {
  /** A larger formula helps nobody, and every stage has to go through it. */
  private static final int MOST_NODES = 20_000;

  private final Span span;
  private final Map<Place, CheckedPlace> places;
  private final List<NodeFact> learned = new ArrayList<>();
  private final Set<Need> needs = new LinkedHashSet<>();

  /** A node cannot become part of the formula. */
  static final class OutOfReach extends RuntimeException {
    private final Barrier barrier;

    /**
     * Refuses a node.
     *
     * @param what it is, in words
     */
    OutOfReach(String what, Expression node) {
      super(what, null, false, false);
      barrier = Barrier.of(Sensitivity.ONE, what, node.span());
    }

    Barrier barrier() {
      return barrier;
    }
  }

  /**
   * Starts an empty formula, which takes no nodes of others.
   *
   * @param span where messages place it
   */
  SyntheticFormula(Span span) {
    this(span, Map.of());
  }

  /**
   * Starts an empty formula.
   *
   * @param span where messages place it
   * @param places whose formulas it may take nodes of
   */
  SyntheticFormula(Span span, Map<Place, CheckedPlace> places) {
    this.span = span;
    this.places = places;
  }

  /** The composed formula, which runs in a scope. */
  CheckedFormula formula(Expression whole, Scope around) {
    Scope scope =
        new Scope(around.file(), around.page(), around.table(), around.outer(), List.of(), null);
    Formula formula = new Formula(whole, learned.size(), null, null, span);
    return CheckedFormula.synthetic(formula, scope, learned, needs);
  }

  Expression number(Rational number) {
    return amount(number, Dimension.NONE);
  }

  /** A value that is no quantity, as a formula says it. */
  Expression constant(Value value, Kind kind) {
    Expression literal =
        value instanceof Value.YesNo yesNo
            ? new TruthLiteral(learned.size(), span, yesNo.yes())
            : new TextLiteral(learned.size(), span, List.of());
    return keep(literal, kind, value);
  }

  Expression amount(Rational number, Dimension dimension) {
    Value value = new Value.Amount(new Quantity(number, dimension));
    QuantityLiteral literal = new QuantityLiteral(learned.size(), span, List.of());
    return keep(literal, new Kind.Measured(dimension), value);
  }

  Expression apply(Operation operation, Kind kind, Expression... operands) {
    Apply apply = new Apply(learned.size(), span, operation.name(), List.of(operands));
    return keep(apply, kind, operation);
  }

  Expression size(Expression of, Kind kind) {
    Name name = new Name(Operations.ABSOLUTE.name(), span);
    Call call = new Call(learned.size(), span, name, List.of(of));
    return keep(call, kind, Operations.ABSOLUTE);
  }

  Expression choice(Expression condition, Expression then, Expression otherwise, Kind kind) {
    return keep(new Choice(learned.size(), span, condition, then, otherwise), kind, null);
  }

  /** What a place holds in the row that a path leads to; in the own row, or a line, without one. */
  Expression read(Place place, Optional<Path> row, Kind kind) {
    if (row.isEmpty()) {
      return read(new Path(new Target.Here(place), List.of()), kind);
    }
    List<Place> through = new ArrayList<>(row.get().through());
    through.add(place);
    return read(new Path(row.get().target(), through), kind);
  }

  Expression read(Path path, Kind kind) {
    need(path);
    Reference reference = new Reference(learned.size(), span, Root.HERE, List.of());
    return keep(reference, kind, path);
  }

  private void need(Path path) {
    path.target().accept(new TargetNeed()).ifPresent(needs::add);
    path.through().forEach(column -> needs.add(new Need(column, Reach.WHOLE)));
  }

  /** A copy of a node, as it is read from here. */
  Expression copy(NodeInScope part) {
    NodeInScope meant = part.meant();
    Expression node = meant.node();
    if (node instanceof Reference reference) {
      return copy(meant, reference);
    }
    boolean ofOwnRow = meant.row().isEmpty() && meant.arguments().isEmpty();
    boolean wholly = node instanceof Aggregate || node instanceof Selection;
    if ((wholly || node instanceof FirstRow) && !ofOwnRow) {
      throw onlyWhereItStands(node);
    }
    List<Expression> children =
        node.children().stream()
            .map(child -> wholly ? asItIs(meant.at(child)) : copy(meant.at(child)))
            .toList();
    if (wholly || node instanceof Call) {
      needs.addAll(meant.formula().needs());
    }
    return again(meant, children);
  }

  private Expression copy(NodeInScope part, Reference reference) {
    CheckedFormula formula = part.formula();
    Path path = part.seen(formula.path(reference)).orElseThrow(() -> onlyWhereItStands(reference));
    if (path.target() instanceof Target.Inherited inherited) {
      needs.addAll(Objects.requireNonNull(places.get(inherited.place())).needs());
    }
    return read(path, formula.kind(reference));
  }

  private static OutOfReach onlyWhereItStands(Expression node) {
    return new OutOfReach("a value that can be calculated in its own place only", node);
  }

  /** What stands inside an aggregate reads the rows that this goes through. */
  private Expression asItIs(NodeInScope part) {
    List<Expression> children = part.node().children();
    return again(part, children.stream().map(child -> asItIs(part.at(child))).toList());
  }

  private Expression again(NodeInScope part, List<Expression> children) {
    Expression node = part.node();
    return keep(
        CopiedNode.of(node, learned.size(), children),
        part.formula().kind(node),
        part.formula().fact(node));
  }

  private Expression keep(Expression node, Kind kind, @Nullable Object fact) {
    if (learned.size() >= MOST_NODES) {
      throw new OutOfReach("a formula of more than %d operations".formatted(MOST_NODES), node);
    }
    learned.add(new NodeFact(node, kind, fact));
    return node;
  }
}
