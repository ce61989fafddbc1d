package org.battenbook.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.RealFunctions;
import org.battenbook.tolerance.ErrorTerm;
import org.battenbook.tolerance.Tolerances;
import org.battenbook.unit.Quantity;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * How far one value may be off: at worst, when every {@code ±} that comes into it errs by all of it
 * in the direction that adds; and by the root of the sum of the squares, when errors are
 * independent of one another and as large one way as the other.
 *
 * @param worst the sum of the contributions; absent where {@link #open} says why
 * @param rootSumSquare absent like the sum
 * @param sources each {@code ±} that comes in, in the order of the formulas' words
 * @param open what keeps the sums from being told, in words; empty where they are
 */
public record ErrorBudget(
    @Nullable Quantity worst,
    @Nullable Quantity rootSumSquare,
    List<Source> sources,
    List<String> open) {

  /**
   * One {@code ±}, independent of all others.
   *
   * @param spot whose it is
   * @param toleranceSpot where the book holds what it comes to
   * @param tolerance what it comes to
   * @param coefficient by what its error is multiplied on the way
   * @param contribution the size of the two multiplied
   */
  public record Source(
      Spot spot,
      Spot toleranceSpot,
      Quantity tolerance,
      Quantity coefficient,
      Quantity contribution) {}

  public ErrorBudget {
    sources = List.copyOf(sources);
    open = List.copyOf(open);
  }

  /** The budget of one value; of what is no number it is empty. */
  public static ErrorBudget of(Results results, Spot spot) {
    return new Gathering(results, spot).budget();
  }

  private static final class Gathering {
    private final Results results;
    private final Spot spot;
    private final Tolerances tolerances;
    private final List<String> open = new ArrayList<>();
    private final Map<Spot, Quantity> sizes = new LinkedHashMap<>();
    private final Map<Spot, Quantity> coefficients = new LinkedHashMap<>();

    /** Whose each tolerance is. */
    private final Map<Spot, Spot> spots = new LinkedHashMap<>();

    Gathering(Results results, Spot spot) {
      this.results = results;
      this.spot = spot;
      this.tolerances = results.program().tolerances();
    }

    ErrorBudget budget() {
      if (!(results.value(spot) instanceof Value.Amount value)) {
        return new ErrorBudget(null, null, List.of(), List.of("it is no known number"));
      }
      own();
      Tolerances.Errors errors = tolerances.errors(results.decisions(), spot);
      errors.terms().forEach(this::term);
      errors.barriers().forEach(this::barrier);
      return open.isEmpty()
          ? summed(value.quantity())
          : new ErrorBudget(null, null, List.of(), open);
    }

    private void own() {
      Place tolerance = tolerances.bound(spot.place());
      if (tolerance != null) {
        add(spot, tolerance, new Value.Amount(Quantity.of(Rational.ONE)));
      }
    }

    private void term(ErrorTerm term) {
      Value coefficient = value(term.coefficient());
      if (coefficient instanceof Value.Amount amount && amount.quantity().number().signum() == 0) {
        return;
      }
      int row = row(term);
      if (row >= 0) {
        add(new Spot(term.place(), row), term.tolerance(), coefficient);
      }
    }

    private Value value(CheckedFormula formula) {
      return Trace.of(results, formula, spot.row()).value();
    }

    private int row(ErrorTerm term) {
      Table table = term.place().table();
      if (table == null) {
        return 0;
      }
      if (term.key() == null) {
        return spot.row();
      }
      Value key = value(term.key());
      if (!(key instanceof Value.Text name)) {
        open(key);
        return -1;
      }
      return results.rows(table).keys().row(name.text()).orElse(-1);
    }

    private void add(Spot source, Place tolerancePlace, Value coefficient) {
      Value tolerance = results.value(new Spot(tolerancePlace, source.row()));
      if (!(tolerance instanceof Value.Amount off)) {
        open(tolerance);
      } else if (!(coefficient instanceof Value.Amount by)) {
        open(coefficient);
      } else {
        Spot key = new Spot(tolerancePlace, source.row());
        spots.put(key, source);
        sizes.put(key, off.quantity());
        coefficients.merge(key, by.quantity(), Gathering::sum);
      }
    }

    private static Quantity sum(Quantity a, Quantity b) {
      return new Quantity(a.number().plus(b.number()), a.dimension());
    }

    private void open(Value value) {
      open.add(ShownValue.of(value, null).text());
    }

    private void barrier(ErrorTerm.Barrier barrier) {
      CheckedFormula when = barrier.when();
      boolean comesThere =
          when == null
              || (value(when) instanceof Value.Amount one && one.quantity().number().signum() != 0);
      if (comesThere) {
        open.add("a tolerance does not go through " + barrier.what());
      }
    }

    private ErrorBudget summed(Quantity value) {
      List<Source> sources = new ArrayList<>();
      Real worst = Rational.ZERO;
      Real squares = Rational.ZERO;
      for (Map.Entry<Spot, Quantity> entry : sizes.entrySet()) {
        Quantity off = entry.getValue();
        Quantity by = coefficients.getOrDefault(entry.getKey(), Quantity.of(Rational.ZERO));
        Real size = by.number().times(off.number()).abs();
        if (size.signum() != 0 || !size.isExact()) {
          worst = worst.plus(size);
          squares = squares.plus(size.times(size));
          Quantity contribution = new Quantity(size, value.dimension());
          sources.add(
              new Source(
                  spots.getOrDefault(entry.getKey(), spot), entry.getKey(), off, by, contribution));
        }
      }
      Real root = RealFunctions.squareRoot(squares);
      return new ErrorBudget(
          new Quantity(worst, value.dimension()),
          new Quantity(root, value.dimension()),
          sources,
          List.of());
    }
  }
}
