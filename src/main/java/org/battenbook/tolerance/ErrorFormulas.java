package org.battenbook.tolerance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Path;
import org.battenbook.number.Rational;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.source.Span;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.tolerance.ErrorBoundPlaces.Source;
import org.battenbook.tolerance.Propagation.Term;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Formulas of errors: by what a {@code ±} is multiplied, and what all together come to at worst.
 * The ways by which one and the same error comes in are added before their size is taken.
 */
final class ErrorFormulas {
  private final ErrorBoundPlaces beside;
  private final Dimension dimension;
  private final SyntheticFormula composition;

  /**
   * What comes from one place: in rows that are found in different ways, each way by itself.
   *
   * @param dimension of the place
   */
  private record Ways(
      Place tolerance, Dimension dimension, Map<Optional<Path>, List<Sensitivity>> rows) {}

  /**
   * Formulas of errors of a value.
   *
   * @param dimension of the value
   * @param span what they are told to be
   */
  ErrorFormulas(ErrorBoundPlaces beside, Dimension dimension, Span span) {
    this.beside = beside;
    this.dimension = dimension;
    this.composition = new SyntheticFormula(span);
  }

  /** The sum of all errors' sizes; absent where there is none. */
  @Nullable CheckedFormula worst(List<Term> terms, Map<Place, CheckedPlace> places, Scope around) {
    Kind kind = new Kind.Measured(dimension);
    Expression sum = null;
    for (Ways ways : ways(terms, places)) {
      List<Optional<Path>> rows = new ArrayList<>(ways.rows().keySet());
      for (int i = 0; i < rows.size(); i++) {
        Expression size = size(ways, rows, i);
        if (size != null) {
          sum = sum == null ? size : composition.apply(Operations.ADD, kind, sum, size);
        }
      }
    }
    return sum == null ? null : composition.formula(sum, around);
  }

  private List<Ways> ways(List<Term> terms, Map<Place, CheckedPlace> places) {
    Map<Source, Ways> bySource = new LinkedHashMap<>();
    for (Term term : terms) {
      Source source = term.source();
      Place tolerance = beside.tolerance(source);
      CheckedPlace checked = places.get(source.place());
      if (tolerance != null && checked != null && checked.kind() instanceof Kind.Measured of) {
        bySource
            .computeIfAbsent(
                source, s -> new Ways(tolerance, of.dimension(), new LinkedHashMap<>()))
            .rows()
            .computeIfAbsent(term.row(), r -> new ArrayList<>())
            .add(term.weight());
      }
    }
    return List.copyOf(bySource.values());
  }

  /** What comes from one row, or nothing; all of it is told with the first way to that row. */
  private @Nullable Expression size(Ways ways, List<Optional<Path>> rows, int at) {
    Kind kind = new Kind.Measured(dimension.dividedBy(ways.dimension()));
    List<Sensitivity> own = ways.rows().getOrDefault(rows.get(at), List.of());
    Rational number = rows.size() == 1 ? number(own) : null;
    if (number != null && number.signum() == 0) {
      return null;
    }
    Expression tolerance =
        composition.read(ways.tolerance(), rows.get(at), new Kind.Measured(ways.dimension()));
    if (number != null) {
      return number.abs().equals(Rational.ONE)
          ? tolerance
          : product(composition.number(number.abs()), tolerance);
    }
    Expression coefficient = coefficient(own, kind);
    for (int later = at + 1; later < rows.size(); later++) {
      Expression more = coefficient(ways.rows().getOrDefault(rows.get(later), List.of()), kind);
      Expression same = sameRow(ways, rows.get(at), rows.get(later));
      Expression added = composition.choice(same, more, zero(kind), kind);
      coefficient = composition.apply(Operations.ADD, kind, coefficient, added);
    }
    Expression size = product(composition.size(coefficient, kind), tolerance);
    for (int earlier = 0; earlier < at; earlier++) {
      Kind whole = new Kind.Measured(dimension);
      Expression same = sameRow(ways, rows.get(earlier), rows.get(at));
      size = composition.choice(same, zero(whole), size, whole);
    }
    return size;
  }

  private Expression product(Expression coefficient, Expression tolerance) {
    return composition.apply(
        Operations.MULTIPLY, new Kind.Measured(dimension), coefficient, tolerance);
  }

  private Expression zero(Kind kind) {
    return composition.amount(Rational.ZERO, ((Kind.Measured) kind).dimension());
  }

  private Expression sameRow(Ways ways, Optional<Path> one, Optional<Path> other) {
    Table table = Objects.requireNonNull(ways.tolerance().table());
    Column key = table.keyColumn();
    return composition.apply(
        Operations.EQUAL,
        Kind.YES_NO,
        composition.read(key, one, Kind.TEXT),
        composition.read(key, other, Kind.TEXT));
  }

  /** The sum of weights that are mere numbers; absent where one is more. */
  private static @Nullable Rational number(List<Sensitivity> weights) {
    Rational sum = Rational.ZERO;
    for (Sensitivity weight : weights) {
      if (!weight.isNumber()) {
        return null;
      }
      sum = sum.plus(weight.number());
    }
    return sum;
  }

  private Expression coefficient(List<Sensitivity> weights, Kind kind) {
    Expression sum = null;
    for (Sensitivity weight : weights) {
      Expression one = coefficient(weight, kind);
      sum = sum == null ? one : composition.apply(Operations.ADD, kind, sum, one);
    }
    return sum == null ? zero(kind) : sum;
  }

  private Expression coefficient(Sensitivity weight, Kind kind) {
    Expression product = composition.number(weight.number());
    Kind soFar = Kind.NUMBER;
    for (Sensitivity.Factor factor : weight.factors()) {
      Expression part = composition.copy(factor.part());
      soFar = times(soFar, factor.part().formula().kind(factor.part().node()), factor.divides());
      Operation by = factor.divides() ? Operations.DIVIDE : Operations.MULTIPLY;
      product = composition.apply(by, soFar, product, part);
    }
    for (int i = weight.gates().size() - 1; i >= 0; i--) {
      Sensitivity.Gate gate = weight.gates().get(i);
      Expression condition = composition.copy(gate.condition());
      product =
          gate.wanted()
              ? composition.choice(condition, product, zero(kind), kind)
              : composition.choice(condition, zero(kind), product, kind);
    }
    return product;
  }

  private static Kind times(Kind soFar, Kind factor, boolean divides) {
    if (!(soFar instanceof Kind.Measured a) || !(factor instanceof Kind.Measured b)) {
      return Kind.UNKNOWN;
    }
    return new Kind.Measured(
        divides ? a.dimension().dividedBy(b.dimension()) : a.dimension().times(b.dimension()));
  }

  /** Each way of an error into a value, in the order of the formulas' words. */
  static List<ErrorTerm> influences(
      ErrorBoundPlaces beside,
      Propagation followed,
      CheckedFormula into,
      Map<Place, CheckedPlace> places) {
    List<ErrorTerm> influences = new ArrayList<>();
    for (Term term : followed.terms()) {
      ErrorFormulas formulas = of(beside, into);
      for (Ways ways : formulas.ways(List.of(term), places)) {
        Kind kind = new Kind.Measured(formulas.dimension.dividedBy(ways.dimension()));
        Expression coefficient = formulas.coefficient(term.weight(), kind);
        influences.add(
            new ErrorTerm(
                ways.tolerance(),
                term.source().place(),
                key(beside, term, into),
                formulas.composition.formula(coefficient, into.scope())));
      }
    }
    return influences;
  }

  private static @Nullable CheckedFormula key(
      ErrorBoundPlaces beside, Term term, CheckedFormula into) {
    Table table = term.source().place().table();
    if (term.row().isEmpty() || table == null) {
      return null;
    }
    SyntheticFormula key = of(beside, into).composition;
    return key.formula(key.read(table.keyColumn(), term.row(), Kind.TEXT), into.scope());
  }

  /** The barriers, each with the condition under which an error comes there. */
  static List<ErrorTerm.Barrier> barriers(
      ErrorBoundPlaces beside, Propagation followed, CheckedFormula into) {
    List<ErrorTerm.Barrier> barriers = new ArrayList<>();
    for (Propagation.Barrier barrier : followed.barriers()) {
      barriers.add(
          new ErrorTerm.Barrier(
              barrier.weight().gates().isEmpty() ? null : when(beside, barrier, into),
              barrier.what(),
              barrier.at()));
    }
    return barriers;
  }

  /** One where an error comes to a barrier, else zero. */
  private static CheckedFormula when(
      ErrorBoundPlaces beside, Propagation.Barrier barrier, CheckedFormula into) {
    ErrorFormulas formulas = of(beside, into);
    Sensitivity gates = new Sensitivity(Rational.ONE, List.of(), barrier.weight().gates());
    Expression when = formulas.coefficient(gates, Kind.NUMBER);
    return formulas.composition.formula(when, into.scope());
  }

  private static ErrorFormulas of(ErrorBoundPlaces beside, CheckedFormula into) {
    Formula formula = into.formula();
    Dimension dimension =
        into.kind() instanceof Kind.Measured measured ? measured.dimension() : Dimension.NONE;
    return new ErrorFormulas(beside, dimension, formula.span());
  }
}
