package org.battenbook.tolerance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Span;
import org.battenbook.tolerance.Propagation.Barrier;
import org.battenbook.tolerance.Propagation.Term;
import org.battenbook.tolerance.SyntheticFormula.OutOfReach;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Collects the ways of errors into the value of one formula, in the order of the text. A way whose
 * factor no formula can tell is a barrier.
 */
final class ErrorTerms {
  private final ErrorBoundPlaces bounds;
  private final Map<Place, CheckedPlace> places;
  private final CheckedFormula into;
  private final Dimension dimension;
  private final List<ErrorTerm> terms = new ArrayList<>();

  /** Each once: the same condition may stand before several ways. */
  private final Set<ErrorTerm.Barrier> barriers = new LinkedHashSet<>();

  /**
   * No ways yet.
   *
   * @param dimension of the formula
   */
  ErrorTerms(
      ErrorBoundPlaces bounds,
      Map<Place, CheckedPlace> places,
      CheckedFormula into,
      Dimension dimension) {
    this.bounds = bounds;
    this.places = places;
    this.into = into;
    this.dimension = dimension;
  }

  Tolerances.Errors of(Propagation followed) {
    followed.terms().forEach(this::add);
    followed.barriers().forEach(this::add);
    return new Tolerances.Errors(List.copyOf(terms), List.copyOf(barriers));
  }

  private void add(Term term) {
    try {
      terms.add(made(term));
    } catch (OutOfReach reason) {
      add(reason.barrier());
    }
  }

  private ErrorTerm made(Term term) {
    Place tolerance = Objects.requireNonNull(bounds.tolerance(term.source()));
    Kind of = Objects.requireNonNull(places.get(tolerance)).kind();
    Kind kind = new Kind.Measured(dimension.dividedBy(((Kind.Measured) of).dimension()));
    CheckedFormula coefficient = coefficient(term.sensitivity(), kind);
    return new ErrorTerm(tolerance, term.source().place(), key(term), coefficient);
  }

  private CheckedFormula coefficient(Sensitivity sensitivity, Kind kind) {
    return new ErrorFormulas(places, bounds, dimension, span())
        .coefficient(sensitivity, kind, into.scope());
  }

  private @Nullable CheckedFormula key(Term term) {
    Table table = term.source().place().table();
    if (term.row().isEmpty() || table == null) {
      return null;
    }
    SyntheticFormula key = new SyntheticFormula(span());
    return key.formula(key.read(table.keyColumn(), term.row(), Kind.TEXT), into.scope());
  }

  private void add(Barrier barrier) {
    barriers.add(new ErrorTerm.Barrier(when(barrier.sensitivity()), barrier.what(), barrier.at()));
  }

  /** One where an error reaches a barrier, else zero; absent where that is not known. */
  private @Nullable CheckedFormula when(Sensitivity sensitivity) {
    if (sensitivity.gates().isEmpty()) {
      return null;
    }
    try {
      return coefficient(sensitivity.gatesAlone(), Kind.NUMBER);
    } catch (OutOfReach unknown) {
      return null;
    }
  }

  private Span span() {
    return into.formula().span();
  }
}
