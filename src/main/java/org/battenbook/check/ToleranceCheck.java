package org.battenbook.check;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.battenbook.bind.Scope;
import org.battenbook.book.Column;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Layer;
import org.battenbook.book.Place;
import org.battenbook.book.RowOpening;
import org.battenbook.check.Beside.Source;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Expression;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Adds what tolerances need to a book whose formulas are checked: a place beside each that has a
 * {@code ±}, and for each comparison that is to hold even at worst a formula of how far its sides
 * may come together. After an edit, what it leaves as it was is the same object again.
 */
final class ToleranceCheck {
  private final Map<Place, CheckedPlace> places = new LinkedHashMap<>();
  private final @Nullable Settled before;
  private final Beside beside = new Beside();
  private final IdentityHashMap<AtWorst, CheckedFormula> margins = new IdentityHashMap<>();
  private final Diagnostics diagnostics;

  /**
   * A book's places with all that tolerances need.
   *
   * @param places those of the book, then those beside them
   * @param margins by how much the sides of a comparison may come together at worst; none where
   *     nothing in them is off
   */
  record Settled(
      Map<Place, CheckedPlace> places,
      Beside beside,
      IdentityHashMap<AtWorst, CheckedFormula> margins) {}

  private ToleranceCheck(@Nullable Settled before, Diagnostics diagnostics) {
    this.before = before;
    this.diagnostics = diagnostics;
  }

  /**
   * Settles the tolerances of a book.
   *
   * @param checked its places; those beside them are passed over and made anew
   * @param before what was settled before an edit; absent for a book that was just read
   */
  static Settled settle(
      Map<Place, CheckedPlace> checked, @Nullable Settled before, Diagnostics diagnostics) {
    ToleranceCheck check = new ToleranceCheck(before, diagnostics);
    checked.forEach(
        (place, known) -> {
          if (!(place instanceof ErrorBound)) {
            check.places.put(place, known);
          }
        });
    return check.settle();
  }

  private Settled settle() {
    List<CheckedPlace> own = List.copyOf(places.values());
    own.forEach(this::addTolerances);
    Reaches reaches = new Reaches(places, beside);
    if (!beside.isEmpty()) {
      own.forEach(checked -> addFilled(checked, reaches));
      own.forEach(checked -> addOpened(checked, reaches));
    }
    own.forEach(checked -> addMargins(checked, reaches));
    return new Settled(places, beside, margins);
  }

  /** For each layer, since a change may read what the one below it gave. */
  private void addTolerances(CheckedPlace checked) {
    for (int i = 0; i < checked.layers().size(); i++) {
      Source source = new Source(checked.place(), i);
      CheckedFormula formula = checked.layers().get(i).formula();
      boolean holds = i == checked.layers().size() - 1;
      boolean said =
          (formula != null && formula.tolerance() != null)
              || (holds && checked.entries().hasTolerances())
              || (before != null && before.beside().tolerance(source) != null);
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
    Beside earlier = before == null ? null : before.beside();
    Place place = beside.addTolerance(source, layer, earlier);
    places.put(
        place, kept(place, checked, () -> tolerance(place, checked, formula, holds, dimension)));
  }

  /** As it was before an edit that did not touch what it stands beside. */
  @SuppressWarnings("ReferenceEquality")
  private CheckedPlace kept(Place place, CheckedPlace of, Supplier<CheckedPlace> anew) {
    CheckedPlace known = before == null ? null : before.places().get(place);
    boolean same = before != null && before.places().get(of.place()) == of;
    return known != null && same ? known : anew.get();
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
        holds && !of.entries().isEmpty()
            ? of.entries().map(cells -> tolerances(cells, none))
            : Entries.NONE;
    return new CheckedPlace(
        place, of.kind(), of.form(), List.of(new CheckedPlace.Layered(holding)), entries, Set.of());
  }

  private static CheckedFormula none(CheckedPlace of, Dimension dimension) {
    Span span = of.place().layer().span();
    Composition zero = new Composition(span);
    Expression amount = zero.amount(Rational.ZERO, dimension);
    return zero.formula(amount, Scope.of(of.place(), 0));
  }

  /** What rows say: a filled cell is as far off as it says itself, or not at all. */
  private static Cells tolerances(Cells written, Value none) {
    Cells cells = new Cells(written.size());
    for (int row = 0; row < written.size(); row++) {
      if (written.isFilled(row)) {
        CheckedFormula tolerance = written.tolerances().get(row);
        Optional<Value> literal = tolerance == null ? Optional.of(none) : literal(tolerance);
        if (tolerance != null && literal.isEmpty()) {
          cells.set(row, tolerance);
        } else {
          cells.set(row, literal.orElse(none));
        }
      }
    }
    return cells;
  }

  /** A number that is zero or more; any other is left to be found at fault as it is worked out. */
  private static Optional<Value> literal(CheckedFormula tolerance) {
    return tolerance
        .literal()
        .filter(v -> v instanceof Value.Amount a && a.quantity().number().signum() >= 0);
  }

  /** Where a formula that is off may have no say, whether a row is filled in decides. */
  private void addFilled(CheckedPlace checked, Reaches reaches) {
    CheckedFormula formula = checked.formula();
    boolean matters =
        checked.place() instanceof Column
            && formula != null
            && checked.kind() instanceof Kind.Measured
            && !checked.entries().isEmpty()
            && reaches.into(Part.of(formula, formula.expression()));
    if (!matters || !(checked.place() instanceof Column column)) {
      return;
    }
    Place place = beside.addFilled(column, before == null ? null : before.beside());
    places.put(place, kept(place, checked, () -> told(place, column, checked.entries().filled())));
  }

  /** Yes where the entries say so, else no. */
  private static CheckedPlace told(Place place, Column column, Entries entries) {
    Composition no = new Composition(column.origin());
    CheckedFormula open =
        no.formula(no.constant(new Value.YesNo(false), Kind.YES_NO), Scope.of(column, 0));
    return new CheckedPlace(
        place, Kind.YES_NO, null, List.of(new CheckedPlace.Layered(open)), entries, Set.of());
  }

  /** Where an error comes in by the cell of an opening, whether that decides a row. */
  private void addOpened(CheckedPlace checked, Reaches reaches) {
    if (checked.place() instanceof Column column && checked.kind() instanceof Kind.Measured) {
      checked
          .entries()
          .openingFormulas()
          .forEach(
              (opening, formula) -> {
                if (reaches.into(Part.of(formula, formula.expression()))) {
                  addOpened(checked, column, opening);
                }
              });
    }
  }

  private void addOpened(CheckedPlace checked, Column column, RowOpening opening) {
    Place place = beside.addOpened(column, opening, before == null ? null : before.beside());
    places.put(
        place,
        kept(place, checked, () -> told(place, column, checked.entries().decidedBy(opening))));
  }

  private void addMargins(CheckedPlace checked, Reaches reaches) {
    Set<Need> needs = new LinkedHashSet<>();
    boolean same = true;
    for (CheckedFormula formula : checked.formulas()) {
      for (CheckedFormula.Compared compared : formula.atWorst()) {
        CheckedFormula known = before == null ? null : before.margins().get(compared.node());
        CheckedFormula margin = margin(formula, compared.node(), reaches);
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
      CheckedFormula formula, AtWorst atWorst, Reaches reaches) {
    Expression left = atWorst.comparison().children().get(0);
    Expression right = atWorst.comparison().children().get(1);
    Propagation followed = new Propagation(places, beside, reaches, null);
    followed.follow(Part.of(formula, left), Weight.ONE);
    followed.follow(Part.of(formula, right), Weight.ONE.negated());
    if (!followed.barriers().isEmpty()) {
      Propagation.Barrier first = followed.barriers().get(0);
      fault(atWorst, first.what(), first.at());
      return null;
    }
    Dimension dimension = ((Kind.Measured) formula.kind(left)).dimension();
    try {
      return new ErrorFormulas(beside, dimension, atWorst.span())
          .worst(followed.terms(), places, formula.scope());
    } catch (Composition.OutOfReach reason) {
      fault(atWorst, String.valueOf(reason.getMessage()), atWorst.span());
      return null;
    }
  }

  private void fault(AtWorst atWorst, String what, Span at) {
    diagnostics.report(
        new Diagnostic(
            Diagnostic.Severity.FAULT,
            "no-way-for-tolerance",
            atWorst.span(),
            at.equals(atWorst.span()) ? List.of() : List.of(at),
            "a tolerance does not go through " + what,
            "compare what comes before it, or round it to a step and give that its own ±"));
  }
}
