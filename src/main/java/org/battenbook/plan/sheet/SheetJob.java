package org.battenbook.plan.sheet;

import java.util.List;
import java.util.OptionalInt;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Rectangles to cut from sheets by guillotine cuts: each cut runs from edge to edge of a panel. All
 * lengths are in one unit, all costs in one currency.
 *
 * <p>A stage is a round of parallel cuts, at a right angle to the round before. The cuts that trim
 * the sheet's edges do not count; all others do, including the last one that frees a piece. The
 * literature calls these <em>exact</em> stages. Its two non-exact stages, with a third round to
 * trim pieces, are three stages here.
 *
 * @param kerf the width of a cut, at least 0
 * @param stages the highest number of stages, at least 1; empty for no limit
 */
public record SheetJob(
    List<SheetPart> parts, List<SheetStock> stocks, Rational kerf, OptionalInt stages) {
  public SheetJob {
    parts = List.copyOf(parts);
    stocks = List.copyOf(stocks);
    Refusal.unless(kerf.signum() >= 0, "the kerf must be at least 0");
    Refusal.unless(stages.orElse(1) > 0, "the number of cutting stages must be at least 1");
    Refusal.unlessAtMost(Bound.PLAN_KINDS, parts.size(), "parts");
    Refusal.unlessAtMost(Bound.PLAN_KINDS, stocks.size(), "kinds of stock");
    Refusal.unlessAtMost(
        Bound.SHEET_PIECES, parts.stream().mapToLong(SheetPart::count).sum(), "pieces");
  }
}
