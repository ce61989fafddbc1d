package org.battenbook.derive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Layer;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.derive.Derivation.How;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Shown;
import org.battenbook.value.Kind;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Answers where a value came from, down to what people wrote. */
public final class Why {
  private final Results results;
  private final CheckedBook book;
  private final Set<Spot> told = new HashSet<>();

  private Why(Results results) {
    this.results = results;
    this.book = results.program().book();
  }

  /** The derivation of one value; what is used twice is derived where it is met first. */
  public static Derivation of(Results results, Spot spot) {
    return new Why(results).derive(spot);
  }

  /** How one value came about, without what it was worked out from. */
  public static Derivation step(Results results, Spot spot) {
    return new Why(results).told(spot, Trace.of(results, spot), List.of(), false, 0);
  }

  private Derivation derive(Spot spot) {
    boolean repeated = !told.add(spot);
    Trace trace = Trace.of(results, spot);
    Reads reads = trace == null ? null : Reads.of(results, trace, spot.row());
    List<Derivation> from = new ArrayList<>();
    if (reads != null && !repeated) {
      reads.spots().forEach(read -> from.add(derive(read)));
    }
    boolean elsewhere = repeated && reads != null && !reads.spots().isEmpty();
    int leftOut = reads == null || repeated ? 0 : reads.rowsLeftOut();
    return told(spot, trace, from, elsewhere, leftOut);
  }

  private Derivation told(
      Spot spot, @Nullable Trace trace, List<Derivation> from, boolean elsewhere, int leftOut) {
    Formula formula = trace == null ? null : trace.formula().formula();
    Value value = results.value(spot);
    return new Derivation(
        spot,
        book.words(spot),
        value,
        book.show(spot, value),
        formula == null ? "" : formula.text(),
        trace == null ? "" : WithValues.of(book, results, trace, spot.row()),
        how(spot, trace),
        book.origin(spot),
        note(spot),
        from,
        elsewhere,
        leftOut,
        changed(spot),
        override(spot),
        trace == null ? null : rounding(trace, spot));
  }

  private How how(Spot spot, @Nullable Trace trace) {
    CheckedPlace checked = book.place(spot.place());
    boolean cell = checked.cells().value(spot.row()) != null;
    if (trace == null) {
      boolean opened = spot.place() instanceof Column column && column.comesWithRow();
      return opened ? How.OPENED : cell ? How.GIVEN : How.MISSING;
    }
    if (trace.formula().literal().isPresent()) {
      return spot.place().isGiven() && spot.place().layers().size() == 1 && !isLine(spot)
          ? How.DEFAULT
          : How.GIVEN;
    }
    return spot.place().isGiven() && !isLine(spot) ? How.DEFAULT : How.WORKED_OUT;
  }

  private static boolean isLine(Spot spot) {
    return spot.place() instanceof Line;
  }

  private static String note(Spot spot) {
    String own = spot.place().layer().note();
    return own.isEmpty() ? spot.place().note() : own;
  }

  private Derivation.@Nullable Changed changed(Spot spot) {
    Place place = spot.place();
    Change cell = book.place(place).cells().changes().get(spot.row());
    List<Layer> layers = place.layers();
    if (cell != null) {
      return new Derivation.Changed(
          inheritedCell(spot), layers.get(layers.size() - 1).span(), cell.because().text());
    }
    Layer nearest = place.layer();
    if (nearest.because() == null || book.place(place).cells().value(spot.row()) != null) {
      return null;
    }
    Layer replaced = layers.get(layers.size() - 2);
    Formula formula = replaced.formula();
    return new Derivation.Changed(
        formula == null ? "" : formula.text(), replaced.span(), nearest.because().text());
  }

  private String inheritedCell(Spot spot) {
    Value written = book.place(spot.place()).cells().value(spot.row());
    Formula formula = spot.place().layer().formula();
    return written != null
        ? ShownValue.of(written, book.place(spot.place()).form()).text()
        : formula == null ? "" : formula.text();
  }

  private Derivation.@Nullable FilledByHand override(Spot spot) {
    CheckedPlace checked = book.place(spot.place());
    if (spot.place().isGiven() || checked.cells().value(spot.row()) == null) {
      return null;
    }
    Value instead = Trace.withoutCell(results, spot);
    return instead == null
        ? null
        : new Derivation.FilledByHand(instead, ShownValue.of(instead, checked.form()));
  }

  private Derivation.@Nullable Rounded rounding(Trace trace, Spot spot) {
    Apply rounding = firstRounding(trace, trace.formula().expression());
    if (rounding == null
        || !(trace.value(rounding.children().get(0)) instanceof Value.Amount exact)
        || !(trace.value(rounding.children().get(1)) instanceof Value.Amount step)
        || !(trace.value(rounding) instanceof Value.Amount rounded)) {
      return null;
    }
    Quantity moved =
        new Quantity(
            rounded.quantity().number().minus(exact.quantity().number()),
            rounded.quantity().dimension());
    Value.Amount movedBy = new Value.Amount(moved);
    return new Derivation.Rounded(step, shown(spot, step), movedBy, shown(spot, movedBy));
  }

  /** A quantity as its place shows it; one that is rounded within may be of another dimension. */
  private Shown shown(Spot spot, Value.Amount value) {
    CheckedPlace place = book.place(spot.place());
    Dimension dimension = value.quantity().dimension();
    boolean same = place.kind().equals(new Kind.Measured(dimension));
    return ShownValue.of(value, same ? place.form() : book.forms().form(dimension));
  }

  /** The outermost rounding that was worked out. */
  private static @Nullable Apply firstRounding(Trace trace, Expression node) {
    if (node instanceof Apply apply
        && apply.operation().startsWith("rounded")
        && trace.value(apply) != null) {
      return apply;
    }
    for (Expression child : node.children()) {
      Apply found = firstRounding(trace, child);
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
