package org.battenbook.derive;

import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.source.Span;
import org.battenbook.unit.Shown;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Where one value came from.
 *
 * @param spot the value's own; of an inherited value that which the change set, of a table's rows
 *     their names'
 * @param place as people say it
 * @param shown the value as people read it
 * @param formula as written; empty for a value that was written into a row or is missing
 * @param withValues the formula with values put in; empty where there is none
 * @param how how the value came to be
 * @param at the statement or cell that decides
 * @param note the note beside it, or empty
 * @param from what it was worked out from
 * @param isRepeated whether it is told of earlier in the same derivation, so that {@code from} is
 *     left out here
 * @param rowsLeftOut how many further rows a total goes over, or further values decide which rows
 *     there are, beyond those in {@code from}
 */
public record Derivation(
    Spot spot,
    String place,
    Value value,
    Shown shown,
    String formula,
    String withValues,
    How how,
    Span at,
    String note,
    List<Derivation> from,
    boolean isRepeated,
    int rowsLeftOut,
    @Nullable Changed changed,
    @Nullable FilledByHand override,
    @Nullable Rounded rounding) {

  public Derivation {
    from = List.copyOf(from);
  }

  /** How a value came to be. */
  public enum How {
    /** A formula worked it out. */
    WORKED_OUT,
    /** A person wrote it. */
    GIVEN,
    /** It came with a row that was opened from another table's. */
    OPENED,
    /** The row leaves it open, and the column has a formula for that. */
    DEFAULT,
    /** It is to be given and is not. */
    MISSING,
    /** What a change reads: the value that its place had before. */
    INHERITED,
    /** Which rows a table has; the value says how many. */
    ROWS
  }

  /**
   * An inherited formula was replaced.
   *
   * @param from the formula that it replaced, as written
   * @param fromAt where that one stands
   * @param because why
   */
  public record Changed(String from, Span fromAt, String because) {}

  /**
   * A row's cell was filled in by hand although the column has a formula.
   *
   * @param instead what the formula gives
   */
  public record FilledByHand(Value instead, Shown insteadShown) {}

  /**
   * A rounding step came in.
   *
   * @param step the step
   * @param movedBy the rounded value less the exact
   */
  public record Rounded(Value step, Shown stepShown, Value movedBy, Shown movedByShown) {}
}
