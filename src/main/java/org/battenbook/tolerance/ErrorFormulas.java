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
 * Makes formulas of errors: the factor of each {@code ±}, and the worst case of all of them. The
 * ways of one error into a value are added before the absolute value is taken.
 */
final class ErrorFormulas {
  private final ErrorBoundPlaces bounds;
  private final Dimension dimension;
  private final SyntheticFormula synthetic;

  /**
   * The errors from one place, by the path to the row that they come from.
   *
   * @param dimension of the place
   */
  private record Ways(
      Place tolerance, Dimension dimension, Map<Optional<Path>, List<Sensitivity>> rows) {}

  /**
   * Formulas of errors of a value.
   *
   * @param dimension of the value
   * @param span where messages place them
   */
  ErrorFormulas(ErrorBoundPlaces bounds, Dimension dimension, Span span) {
    this.bounds = bounds;
    this.dimension = dimension;
    this.synthetic = new SyntheticFormula(span);
  }

  /** The sum of the sizes of all errors; absent where there is none. */
  @Nullable CheckedFormula worst(List<Term> terms, Map<Place, CheckedPlace> places, Scope around) {
    Kind kind = new Kind.Measured(dimension);
    Expression sum = null;
    for (Ways ways : ways(terms, places)) {
      List<Optional<Path>> rows = new ArrayList<>(ways.rows().keySet());
      for (int i = 0; i < rows.size(); i++) {
        Expression size = size(ways, rows, i);
        if (size != null) {
          sum = sum == null ? size : synthetic.apply(Operations.ADD, kind, sum, size);
        }
      }
    }
    return sum == null ? null : synthetic.formula(sum, around);
  }

  private List<Ways> ways(List<Term> terms, Map<Place, CheckedPlace> places) {
    Map<Source, Ways> bySource = new LinkedHashMap<>();
    for (Term term : terms) {
      Source source = term.source();
      Place tolerance = bounds.tolerance(source);
      CheckedPlace checked = places.get(source.place());
      if (tolerance != null && checked != null && checked.kind() instanceof Kind.Measured of) {
        bySource
            .computeIfAbsent(
                source, s -> new Ways(tolerance, of.dimension(), new LinkedHashMap<>()))
            .rows()
            .computeIfAbsent(term.row(), r -> new ArrayList<>())
            .add(term.sensitivity());
      }
    }
    return List.copyOf(bySource.values());
  }

  /**
   * The error from one row; absent where there is none. Paths that lead to the same row are added
   * at the first of them.
   */
  private @Nullable Expression size(Ways ways, List<Optional<Path>> rows, int at) {
    Kind kind = new Kind.Measured(dimension.dividedBy(ways.dimension()));
    List<Sensitivity> own = ways.rows().getOrDefault(rows.get(at), List.of());
    Rational number = rows.size() == 1 ? number(own) : null;
    if (number != null && number.signum() == 0) {
      return null;
    }
    Expression tolerance =
        synthetic.read(ways.tolerance(), rows.get(at), new Kind.Measured(ways.dimension()));
    if (number != null) {
      return number.abs().equals(Rational.ONE)
          ? tolerance
          : product(synthetic.number(number.abs()), tolerance);
    }
    Expression coefficient = coefficient(own, kind);
    for (int later = at + 1; later < rows.size(); later++) {
      Expression more = coefficient(ways.rows().getOrDefault(rows.get(later), List.of()), kind);
      Expression same = sameRow(ways, rows.get(at), rows.get(later));
      Expression added = synthetic.choice(same, more, zero(kind), kind);
      coefficient = synthetic.apply(Operations.ADD, kind, coefficient, added);
    }
    Expression size = product(synthetic.size(coefficient, kind), tolerance);
    for (int earlier = 0; earlier < at; earlier++) {
      Kind whole = new Kind.Measured(dimension);
      Expression same = sameRow(ways, rows.get(earlier), rows.get(at));
      size = synthetic.choice(same, zero(whole), size, whole);
    }
    return size;
  }

  private Expression product(Expression coefficient, Expression tolerance) {
    return synthetic.apply(
        Operations.MULTIPLY, new Kind.Measured(dimension), coefficient, tolerance);
  }

  private Expression zero(Kind kind) {
    return synthetic.amount(Rational.ZERO, ((Kind.Measured) kind).dimension());
  }

  private Expression sameRow(Ways ways, Optional<Path> one, Optional<Path> other) {
    Table table = Objects.requireNonNull(ways.tolerance().table());
    Column key = table.keyColumn();
    return synthetic.apply(
        Operations.EQUAL,
        Kind.YES_NO,
        synthetic.read(key, one, Kind.TEXT),
        synthetic.read(key, other, Kind.TEXT));
  }

  /** The sum of sensitivities that are plain numbers; absent where one is more than that. */
  private static @Nullable Rational number(List<Sensitivity> sensitivities) {
    Rational sum = Rational.ZERO;
    for (Sensitivity sensitivity : sensitivities) {
      if (!sensitivity.isNumber()) {
        return null;
      }
      sum = sum.plus(sensitivity.number());
    }
    return sum;
  }

  private Expression coefficient(List<Sensitivity> sensitivities, Kind kind) {
    Expression sum = null;
    for (Sensitivity sensitivity : sensitivities) {
      Expression one = coefficient(sensitivity, kind);
      sum = sum == null ? one : synthetic.apply(Operations.ADD, kind, sum, one);
    }
    return sum == null ? zero(kind) : sum;
  }

  private Expression coefficient(Sensitivity sensitivity, Kind kind) {
    Expression product = synthetic.number(sensitivity.number());
    Kind soFar = Kind.NUMBER;
    for (Sensitivity.Factor factor : sensitivity.factors()) {
      Expression part = synthetic.copy(factor.part());
      soFar = times(soFar, factor.part().formula().kind(factor.part().node()), factor.divides());
      Operation by = factor.divides() ? Operations.DIVIDE : Operations.MULTIPLY;
      product = synthetic.apply(by, soFar, product, part);
    }
    for (int i = sensitivity.gates().size() - 1; i >= 0; i--) {
      Sensitivity.Gate gate = sensitivity.gates().get(i);
      Expression condition = synthetic.copy(gate.condition());
      product =
          gate.wanted()
              ? synthetic.choice(condition, product, zero(kind), kind)
              : synthetic.choice(condition, zero(kind), product, kind);
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

  /** Each way of an error into a value, in the order of the text. */
  static List<ErrorTerm> terms(
      ErrorBoundPlaces bounds,
      Propagation followed,
      CheckedFormula into,
      Map<Place, CheckedPlace> places) {
    List<ErrorTerm> terms = new ArrayList<>();
    for (Term term : followed.terms()) {
      ErrorFormulas formulas = of(bounds, into);
      for (Ways ways : formulas.ways(List.of(term), places)) {
        Kind kind = new Kind.Measured(formulas.dimension.dividedBy(ways.dimension()));
        Expression coefficient = formulas.coefficient(term.sensitivity(), kind);
        terms.add(
            new ErrorTerm(
                ways.tolerance(),
                term.source().place(),
                key(bounds, term, into),
                formulas.synthetic.formula(coefficient, into.scope())));
      }
    }
    return terms;
  }

  private static @Nullable CheckedFormula key(
      ErrorBoundPlaces bounds, Term term, CheckedFormula into) {
    Table table = term.source().place().table();
    if (term.row().isEmpty() || table == null) {
      return null;
    }
    SyntheticFormula key = of(bounds, into).synthetic;
    return key.formula(key.read(table.keyColumn(), term.row(), Kind.TEXT), into.scope());
  }

  /** The barriers, each with the condition under which an error reaches it. */
  static List<ErrorTerm.Barrier> barriers(
      ErrorBoundPlaces bounds, Propagation followed, CheckedFormula into) {
    List<ErrorTerm.Barrier> barriers = new ArrayList<>();
    for (Propagation.Barrier barrier : followed.barriers()) {
      barriers.add(
          new ErrorTerm.Barrier(
              barrier.sensitivity().gates().isEmpty() ? null : when(bounds, barrier, into),
              barrier.what(),
              barrier.at()));
    }
    return barriers;
  }

  /** One where an error reaches a barrier, else zero. */
  private static CheckedFormula when(
      ErrorBoundPlaces bounds, Propagation.Barrier barrier, CheckedFormula into) {
    ErrorFormulas formulas = of(bounds, into);
    Sensitivity gates = new Sensitivity(Rational.ONE, List.of(), barrier.sensitivity().gates());
    Expression when = formulas.coefficient(gates, Kind.NUMBER);
    return formulas.synthetic.formula(when, into.scope());
  }

  private static ErrorFormulas of(ErrorBoundPlaces bounds, CheckedFormula into) {
    Formula formula = into.formula();
    Dimension dimension =
        into.kind() instanceof Kind.Measured measured ? measured.dimension() : Dimension.NONE;
    return new ErrorFormulas(bounds, dimension, formula.span());
  }
}
