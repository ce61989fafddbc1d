package org.battenbook.tolerance;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Decisions;
import org.battenbook.source.Diagnostics;
import org.battenbook.syntax.AtWorst;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/** The tolerances of a book: the error bounds of its places, and how errors reach values. */
public final class Tolerances {
  private final CheckedBook book;
  private final ErrorBoundPlaces bounds;
  private final IdentityHashMap<AtWorst, CheckedFormula> margins;
  private final Set<Place> comparing;

  Tolerances(
      CheckedBook book,
      ErrorBoundPlaces bounds,
      IdentityHashMap<AtWorst, CheckedFormula> margins,
      Set<Place> comparing) {
    this.book = book;
    this.bounds = bounds;
    this.margins = margins;
    this.comparing = comparing;
  }

  /**
   * Finds the tolerances of a book that has no faults.
   *
   * @param diagnostics takes each comparison that a tolerance reaches in a way that cannot be
   *     followed
   */
  public static Tolerances of(CheckedBook book, Diagnostics diagnostics) {
    return ToleranceStage.of(book, null, diagnostics);
  }

  /**
   * The tolerances after an edit of this book. What the edit leaves as it was is the same object.
   *
   * @return empty where a tolerance reaches a comparison in a way that cannot be followed
   */
  public Optional<Tolerances> after(CheckedBook edited) {
    Diagnostics found = new Diagnostics();
    Tolerances after = ToleranceStage.of(edited, this, found);
    return found.inOrder().isEmpty() ? Optional.of(after) : Optional.empty();
  }

  /** The book, with a place for each error bound. */
  public CheckedBook book() {
    return book;
  }

  ErrorBoundPlaces bounds() {
    return bounds;
  }

  /** Whether a place has a comparison that is to hold even at worst. */
  boolean compares(Place place) {
    return comparing.contains(place);
  }

  /** The place that holds how large the {@code ±} of a place is; absent where it has none. */
  public @Nullable ErrorBound bound(Place place) {
    return bounds.tolerance(ErrorBoundPlaces.Source.of(place));
  }

  /** How far both sides of a comparison may come together; absent where neither has an error. */
  public @Nullable CheckedFormula margin(AtWorst comparison) {
    return margins.get(comparison);
  }

  /**
   * How errors reach a value through the formula that decides it.
   *
   * @param terms each way of an error into it
   * @param barriers what no error can be followed through
   */
  public record Errors(List<ErrorTerm> terms, List<ErrorTerm.Barrier> barriers) {}

  /** The errors of what the formula of a spot reads; without those of its own {@code ±}. */
  public Errors errors(Decisions decided, Spot spot) {
    CheckedFormula formula = decided.formula(spot);
    return formula != null && formula.kind() instanceof Kind.Measured of
        ? errors(formula, of.dimension(), decided.written(spot) == null ? null : spot.place())
        : new Errors(List.of(), List.of());
  }

  /**
   * The errors of what a formula reads.
   *
   * @param dimension of the formula
   * @param written the place whose own value is written in the formula's row; absent where none is
   */
  private Errors errors(CheckedFormula formula, Dimension dimension, @Nullable Place written) {
    Map<Place, CheckedPlace> places = book.byPlace();
    ToleranceDependence dependence = new ToleranceDependence(places, bounds);
    Propagation followed = new Propagation(places, bounds, dependence, written);
    followed.follow(NodeInScope.of(formula, formula.expression()), Sensitivity.ONE);
    return new ErrorTerms(bounds, places, formula, dimension).of(followed);
  }
}
