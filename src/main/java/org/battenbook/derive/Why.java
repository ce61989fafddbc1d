package org.battenbook.derive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Layer;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Decisions;
import org.battenbook.derive.Derivation.How;
import org.battenbook.evaluate.ReadLog;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.number.Rational;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Quoted;
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
  private final Decisions decided;
  private final Set<Spot> told = new HashSet<>();
  private final Set<Table> toldRows = new HashSet<>();

  private Why(Results results) {
    this.results = results;
    this.book = results.program().book();
    this.decided = results.decisions();
  }

  /** The derivation of one value; what is used twice is derived where it is met first. */
  public static Derivation of(Results results, Spot spot) {
    return new Why(results).derive(spot);
  }

  /** How one value came about, without what it was worked out from. */
  public static Derivation step(Results results, Spot spot) {
    return new Why(results).told(spot, Trace.of(results, spot), NOTHING);
  }

  /** As people say the rows of a table. */
  static String rowsOf(Table table) {
    return "rows of " + table;
  }

  /** So many rows, in words. */
  static String inRows(int count) {
    return count == 1 ? "1 row" : count + " rows";
  }

  /** Whether a plan wrote the value of a spot. */
  static boolean isPlanned(Decisions decided, Spot spot) {
    Table table = spot.place().table();
    return table != null && table.plan() != null && decided.written(spot) != null;
  }

  /** What a value was worked out from; nothing of it where that is told of elsewhere. */
  private record Parts(List<Derivation> from, boolean isRepeated, int leftOut) {}

  private static final Parts NOTHING = new Parts(List.of(), false, 0);

  private Derivation derive(Spot spot) {
    boolean repeated = !told.add(spot);
    Trace trace = Trace.reading(results, spot);
    return told(spot, trace, repeated ? repeated(spot, trace) : parts(spot, trace));
  }

  private Parts repeated(Spot spot, @Nullable Trace trace) {
    boolean hasParts = trace == null ? isPlanned(decided, spot) : !isEmpty(trace.reads());
    return new Parts(List.of(), hasParts, 0);
  }

  private static boolean isEmpty(ReadLog reads) {
    return reads.told().isEmpty() && reads.tables().isEmpty() && !reads.readsInherited();
  }

  private Parts parts(Spot spot, @Nullable Trace trace) {
    if (trace != null) {
      return parts(spot, trace, inheritedLayer(spot));
    }
    Table table = spot.place().table();
    return table != null && isPlanned(decided, spot)
        ? new Parts(List.of(rows(table)), false, 0)
        : NOTHING;
  }

  /**
   * What a formula of a spot read.
   *
   * @param inherited the layer that its own name means
   */
  private Parts parts(Spot spot, Trace trace, int inherited) {
    List<Derivation> from = new ArrayList<>();
    if (trace.reads().readsInherited()) {
      from.add(inherited(spot, inherited));
    }
    trace.reads().told().forEach(read -> from.add(derive(read)));
    trace.reads().tables().forEach(table -> from.add(rows(table)));
    return new Parts(from, false, trace.reads().rowsLeftOut());
  }

  /** The layer that a change read by its own name: in a cell's, that of the column's formula. */
  private int inheritedLayer(Spot spot) {
    int last = spot.place().layers().size() - 1;
    return decided.ownFormula(spot) != null ? last : last - 1;
  }

  /** The value that a place had before a change, and what that was worked out from. */
  private Derivation inherited(Spot spot, int layer) {
    CheckedPlace checked = book.place(spot.place());
    Value written = decided.written(spot);
    Trace trace = written == null ? Trace.ofLayer(results, spot, layer) : null;
    Value value = written;
    if (value == null) {
      value = trace == null ? new Value.Waiting(decided.words(spot), false) : trace.value();
    }
    Layer before = spot.place().layers().get(layer);
    Parts parts = trace == null ? NOTHING : parts(spot, trace, layer - 1);
    return new Derivation(
        spot,
        decided.words(spot) + ", inherited",
        value,
        ShownValue.of(value, checked.form()),
        trace == null ? "" : trace.formula().formula().text(),
        trace == null ? "" : WithValues.of(book, results, trace, spot.row()),
        How.INHERITED,
        decided.replaced(spot, layer),
        before.note(),
        parts.from(),
        false,
        parts.leftOut(),
        written == null ? changed(spot.place(), layer) : null,
        null,
        trace == null ? null : rounding(trace, spot));
  }

  /** Which rows a table has, and what says so. */
  private Derivation rows(Table table) {
    boolean repeated = !toldRows.add(table);
    RowSources sources = RowSources.of(table);
    List<Derivation> from = new ArrayList<>();
    List<Spot> spots = sources.spots(results);
    int count = results.rows(table).count();
    if (!repeated) {
      sources.tables().forEach(opening -> from.add(rows(opening)));
      spots.stream().limit(ReadLog.MOST_ROWS).forEach(spot -> from.add(derive(spot)));
    }
    return new Derivation(
        new Spot(Objects.requireNonNull(table.keyColumn()), 0),
        rowsOf(table),
        new Value.Amount(Quantity.of(Rational.of(count))),
        new Shown(inRows(count), false),
        sources.words(),
        "",
        How.ROWS,
        sources.at(),
        "",
        from,
        repeated && sources.areAny(),
        repeated ? 0 : Math.max(0, spots.size() - ReadLog.MOST_ROWS),
        null,
        null,
        null);
  }

  private Derivation told(Spot spot, @Nullable Trace trace, Parts parts) {
    Formula formula = trace == null ? null : trace.formula().formula();
    Value value = results.value(spot);
    return new Derivation(
        spot,
        decided.words(spot),
        value,
        decided.show(spot, value),
        formula == null ? "" : formula.text(),
        trace == null ? "" : WithValues.of(book, results, trace, spot.row()),
        how(spot, trace),
        decided.origin(spot),
        note(spot),
        parts.from(),
        parts.isRepeated(),
        parts.leftOut(),
        changed(spot),
        override(spot),
        trace == null ? null : rounding(trace, spot));
  }

  private How how(Spot spot, @Nullable Trace trace) {
    boolean cell = decided.written(spot) != null;
    if (trace == null) {
      boolean opened = spot.place().comesWithRow();
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
    Change cell = decided.change(spot);
    int last = place.layers().size() - 1;
    if (cell != null) {
      return new Derivation.Changed(
          inheritedCell(spot), decided.replaced(spot, last), cell.because().text());
    }
    return decided.cells(place).isFilled(spot.row()) ? null : changed(place, last);
  }

  /** The change that a layer is; absent where it is none, or is of a place that this is beside. */
  private static Derivation.@Nullable Changed changed(Place place, int layer) {
    Quoted because = place.layers().get(layer).because();
    if (because == null || layer == 0) {
      return null;
    }
    Layer replaced = place.layers().get(layer - 1);
    Formula formula = replaced.formula();
    return new Derivation.Changed(
        formula == null ? "" : formula.text(), replaced.span(), because.text());
  }

  private String inheritedCell(Spot spot) {
    Value written = decided.written(spot);
    Formula formula = spot.place().layer().formula();
    return written != null
        ? ShownValue.of(written, book.place(spot.place()).form()).text()
        : formula == null ? "" : formula.text();
  }

  private Derivation.@Nullable FilledByHand override(Spot spot) {
    CheckedPlace checked = book.place(spot.place());
    if (spot.place().isGiven() || decided.written(spot) == null) {
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
        && trace.formula().operation(apply).isRounding()
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
