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
import org.battenbook.tolerance.ErrorBoundPlaces.Source;
import org.battenbook.tolerance.Propagation.Term;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Makes formulas of errors: the factor of each {@code ±}, and the worst case of all of them. The
 * ways of one error into a value are added before the absolute value is taken.
 */
final class ErrorFormulas {
  private final Map<Place, CheckedPlace> places;
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
  ErrorFormulas(
      Map<Place, CheckedPlace> places, ErrorBoundPlaces bounds, Dimension dimension, Span span) {
    this.places = places;
    this.bounds = bounds;
    this.dimension = dimension;
    this.synthetic = new SyntheticFormula(span, places);
  }

  /** The sum of the sizes of all errors; absent where there is none. */
  @Nullable CheckedFormula worst(List<Term> terms, Scope around) {
    Kind kind = new Kind.Measured(dimension);
    Expression sum = null;
    for (Ways ways : ways(terms)) {
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

  private List<Ways> ways(List<Term> terms) {
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
    Kind whole = new Kind.Measured(dimension);
    Expression size = product(synthetic.size(coefficient, kind), tolerance);
    for (int earlier = 0; earlier < at; earlier++) {
      Expression same = sameRow(ways, rows.get(at), rows.get(earlier));
      size = synthetic.choice(same, zero(whole), size, whole);
    }
    Expression closed = closed(own);
    return closed == null ? size : synthetic.choice(closed, zero(whole), size, whole);
  }

  private Expression product(Expression coefficient, Expression tolerance) {
    return synthetic.apply(
        Operations.MULTIPLY, new Kind.Measured(dimension), coefficient, tolerance);
  }

  private Expression zero(Kind kind) {
    return synthetic.amount(Rational.ZERO, ((Kind.Measured) kind).dimension());
  }

  /** Whether two paths lead to one row. No error comes by a closed one, which may lead nowhere. */
  private Expression sameRow(Ways ways, Optional<Path> one, Optional<Path> other) {
    Table table = Objects.requireNonNull(ways.tolerance().table());
    Column key = table.keyColumn();
    Expression same =
        synthetic.apply(
            Operations.EQUAL,
            Kind.YES_NO,
            synthetic.read(key, one, Kind.TEXT),
            synthetic.read(key, other, Kind.TEXT));
    Expression closed = closed(ways.rows().getOrDefault(other, List.of()));
    Value no = new Value.YesNo(false);
    return closed == null
        ? same
        : synthetic.choice(closed, synthetic.constant(no, Kind.YES_NO), same, Kind.YES_NO);
  }

  /** Whether no sensitivity has its conditions met; absent where one has none. */
  private @Nullable Expression closed(List<Sensitivity> sensitivities) {
    if (sensitivities.stream().anyMatch(one -> one.gates().isEmpty())) {
      return null;
    }
    List<Sensitivity> gates = sensitivities.stream().map(Sensitivity::gatesAlone).toList();
    return synthetic.apply(
        Operations.EQUAL, Kind.YES_NO, coefficient(gates, Kind.NUMBER), zero(Kind.NUMBER));
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

  /**
   * The factor of one way of an error.
   *
   * @param kind of the factor
   */
  CheckedFormula coefficient(Sensitivity sensitivity, Kind kind, Scope around) {
    return synthetic.formula(coefficient(sensitivity, kind), around);
  }

  private Expression coefficient(Sensitivity sensitivity, Kind kind) {
    Expression product = synthetic.number(sensitivity.number());
    Dimension soFar = Dimension.NONE;
    for (Sensitivity.Factor factor : sensitivity.factors()) {
      Expression part = synthetic.copy(factor.part());
      Dimension other = factor.dimension();
      soFar = factor.divides() ? soFar.dividedBy(other) : soFar.times(other);
      Operation by = factor.divides() ? Operations.DIVIDE : Operations.MULTIPLY;
      product = synthetic.apply(by, new Kind.Measured(soFar), product, part);
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
}
