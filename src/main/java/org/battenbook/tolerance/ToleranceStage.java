package org.battenbook.tolerance;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Layer;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Entries;
import org.battenbook.check.Need;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Expression;
import org.battenbook.tolerance.ErrorBoundPlaces.Source;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Adds to a checked book what tolerances need: an error bound for each place with a {@code ±}, and
 * for each comparison that is to hold even at worst a formula of how far its sides may come
 * together. After an edit, whatever the edit left is the same object again.
 */
final class ToleranceStage {
  private final Map<Place, CheckedPlace> places = new LinkedHashMap<>();
  private final @Nullable Tolerances before;
  private final ErrorBoundPlaces bounds = new ErrorBoundPlaces();
  private final IdentityHashMap<AtWorst, CheckedFormula> margins = new IdentityHashMap<>();

  /** The places with comparisons that are to hold even at worst. */
  private final Set<Place> comparing = new HashSet<>();

  private final Diagnostics diagnostics;

  private ToleranceStage(@Nullable Tolerances before, Diagnostics diagnostics) {
    this.before = before;
    this.diagnostics = diagnostics;
  }

  /**
   * Finds the tolerances of a book.
   *
   * @param checked the book; error bounds that it has are replaced
   * @param before what was found before an edit; absent for a book that was just read
   */
  static Tolerances of(CheckedBook checked, @Nullable Tolerances before, Diagnostics diagnostics) {
    ToleranceStage stage = new ToleranceStage(before, diagnostics);
    checked
        .places()
        .forEach(
            known -> {
              if (!(known.place() instanceof ErrorBound)) {
                stage.places.put(known.place(), known);
              }
            });
    return stage.found(checked);
  }

  private Tolerances found(CheckedBook book) {
    List<CheckedPlace> own = List.copyOf(places.values());
    own.forEach(this::addTolerances);
    ToleranceDependence dependence = new ToleranceDependence(places, bounds);
    if (!bounds.isEmpty()) {
      own.forEach(checked -> addFilled(checked, dependence));
      own.forEach(checked -> addOpened(checked, dependence));
    }
    List.copyOf(places.values()).forEach(checked -> addMargins(checked, dependence));
    return new Tolerances(book.withPlaces(places), bounds, margins, comparing);
  }

  /** Adds a bound for each layer, since a change may read the value of the layer below it. */
  private void addTolerances(CheckedPlace checked) {
    for (int i = 0; i < checked.layers().size(); i++) {
      Source source = new Source(checked.place(), i);
      CheckedFormula formula = checked.layers().get(i).formula();
      boolean holds = i == checked.layers().size() - 1;
      boolean said =
          (before != null && before.bounds().tolerance(source) != null)
              || (!isAsBefore(checked)
                  && ((formula != null && formula.tolerance() != null)
                      || (holds && checked.entries().hasTolerances())));
      if (said && checked.kind() instanceof Kind.Measured measured) {
        addTolerance(source, checked, formula, holds, measured.dimension());
      }
    }
  }

  private void addTolerance(
      Source source,
      CheckedPlace checked,
      @Nullable CheckedFormula formula,
      boolean holds,
      Dimension dimension) {
    Layer layer = checked.place().layers().get(source.layer());
    ErrorBoundPlaces earlier = before == null ? null : before.bounds();
    Place place = bounds.addTolerance(source, layer, earlier);
    places.put(
        place, kept(place, checked, () -> tolerance(place, checked, formula, holds, dimension)));
  }

  /** The bound as it was before, if the edit left the place that it belongs to; else a new one. */
  private CheckedPlace kept(Place place, CheckedPlace of, Supplier<CheckedPlace> made) {
    CheckedPlace known = before == null ? null : before.book().byPlace().get(place);
    return known != null && isAsBefore(of) ? known : made.get();
  }

  /** Whether an edit left a place as it was. */
  @SuppressWarnings("ReferenceEquality")
  private boolean isAsBefore(CheckedPlace checked) {
    return before != null && before.book().byPlace().get(checked.place()) == checked;
  }

  private static CheckedPlace tolerance(
      Place place,
      CheckedPlace of,
      @Nullable CheckedFormula formula,
      boolean holds,
      Dimension dimension) {
    CheckedFormula own = formula == null ? null : formula.tolerance();
    Value none = new Value.Amount(new Quantity(Rational.ZERO, dimension));
    CheckedFormula holding = own == null ? none(of, dimension) : own;
    Entries entries =
        holds && !of.entries().isEmpty() ? of.entries().tolerances(none) : Entries.NONE;
    return new CheckedPlace(
        place, of.kind(), of.form(), List.of(new CheckedPlace.Layered(holding)), entries, Set.of());
  }

  private static CheckedFormula none(CheckedPlace of, Dimension dimension) {
    Span span = of.place().layer().span();
    SyntheticFormula zero = new SyntheticFormula(span);
    Expression amount = zero.amount(Rational.ZERO, dimension);
    return zero.formula(amount, Scope.of(of.place(), 0));
  }

  /** Adds whether a row is filled in, where that decides if the error of the formula counts. */
  private void addFilled(CheckedPlace checked, ToleranceDependence dependence) {
    CheckedFormula formula = checked.formula();
    boolean matters =
        checked.place() instanceof Column
            && formula != null
            && checked.kind() instanceof Kind.Measured
            && !checked.entries().isEmpty()
            && dependence.into(NodeInScope.of(formula, formula.expression()));
    if (!matters || !(checked.place() instanceof Column column)) {
      return;
    }
    Place place = bounds.addFilled(column, before == null ? null : before.bounds());
    places.put(place, kept(place, checked, () -> told(place, column, checked.entries().filled())));
  }

  /** A yes or no for each row: yes where the entries say so. */
  private static CheckedPlace told(Place place, Column column, Entries entries) {
    SyntheticFormula no = new SyntheticFormula(column.origin());
    CheckedFormula open =
        no.formula(no.constant(new Value.YesNo(false), Kind.YES_NO), Scope.of(column, 0));
    return new CheckedPlace(
        place, Kind.YES_NO, null, List.of(new CheckedPlace.Layered(open)), entries, Set.of());
  }

  /** Adds whether the cell of an opening decides a row, where an error comes in by it. */
  private void addOpened(CheckedPlace checked, ToleranceDependence dependence) {
    if (checked.place() instanceof Column column && checked.kind() instanceof Kind.Measured) {
      checked
          .entries()
          .openingFormulas()
          .forEach(
              (opening, formula) -> {
                if (dependence.into(NodeInScope.of(formula, formula.expression()))) {
                  addOpened(checked, column, opening);
                }
              });
    }
  }

  private void addOpened(CheckedPlace checked, Column column, RowOpening opening) {
    Place place = bounds.addOpened(column, opening, before == null ? null : before.bounds());
    places.put(
        place,
        kept(place, checked, () -> told(place, column, checked.entries().decidedBy(opening))));
  }

  private void addMargins(CheckedPlace checked, ToleranceDependence dependence) {
    if (before != null && isAsBefore(checked) && !before.compares(checked.place())) {
      return;
    }
    Set<Need> needs = new LinkedHashSet<>();
    boolean same = true;
    for (CheckedFormula formula : checked.formulas()) {
      for (CheckedFormula.Compared compared : formula.atWorst()) {
        comparing.add(checked.place());
        CheckedFormula known = before == null ? null : before.margin(compared.node());
        CheckedFormula margin = margin(formula, compared.node(), dependence);
        if (known != null && margin != null && known.saysSameAs(margin)) {
          margin = known;
        }
        same &= known == margin;
        if (margin != null) {
          margins.put(compared.node(), margin);
          margin.needs().forEach(need -> needs.add(compared.overRows() ? need.whole() : need));
        }
      }
    }
    if (!same || !needs.equals(checked.furtherNeeds())) {
      places.put(checked.place(), checked.needing(needs));
    }
  }

  private @Nullable CheckedFormula margin(
      CheckedFormula formula, AtWorst atWorst, ToleranceDependence dependence) {
    Expression left = atWorst.comparison().children().get(0);
    Expression right = atWorst.comparison().children().get(1);
    Propagation followed = new Propagation(places, bounds, dependence, null);
    followed.follow(NodeInScope.of(formula, left), Sensitivity.ONE);
    followed.follow(NodeInScope.of(formula, right), Sensitivity.ONE.negated());
    if (!followed.barriers().isEmpty()) {
      fault(atWorst, followed.barriers().get(0));
      return null;
    }
    Dimension dimension = ((Kind.Measured) formula.kind(left)).dimension();
    try {
      return new ErrorFormulas(places, bounds, dimension, atWorst.span())
          .worst(followed.terms(), formula.scope());
    } catch (SyntheticFormula.OutOfReach reason) {
      fault(atWorst, reason.barrier());
      return null;
    }
  }

  private void fault(AtWorst atWorst, Propagation.Barrier barrier) {
    diagnostics.report(
        new Diagnostic(
            Diagnostic.Severity.FAULT,
            "no-way-for-tolerance",
            atWorst.span(),
            List.of(barrier.at()),
            "a tolerance cannot be followed through " + barrier.what(),
            "compare the value before it, or round it to a step with a ± of its own"));
  }
}
