package org.battenbook.plan.sheet;

import java.util.List;
import java.util.OptionalInt;
import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/**
 * Rectangles to be cut from sheets by through-cuts: each goes right across the panel that is there.
 *
 * <p>A stage is a round of parallel cuts, turned by a quarter from the round before. Every cut that
 * frees a piece counts, its last one too; the trims of the sheet's edges do not. In the words of
 * the literature these are <em>exact</em> stages: what it calls two non-exact stages, with a third
 * round to trim pieces, are three here.
 *
 * @param kerf what a cut takes between two neighbours
 * @param stages the most rounds; empty where any number may be cut
 */
public record SheetJob(
    List<SheetPart> parts, List<SheetStock> stocks, Rational kerf, OptionalInt stages) {
  public SheetJob {
    parts = List.copyOf(parts);
    stocks = List.copyOf(stocks);
    Refusal.unless(kerf.signum() >= 0, "the kerf is below zero: correct it, or say 0");
    Refusal.unless(stages.orElse(1) > 0, "sheets are cut in one stage at least");
    Refusal.unlessAtMost(Bound.PLAN_KINDS, parts.size(), "parts");
    Refusal.unlessAtMost(Bound.PLAN_KINDS, stocks.size(), "kinds of stock");
    Refusal.unlessAtMost(
        Bound.SHEET_PIECES, parts.stream().mapToLong(SheetPart::count).sum(), "pieces");
  }
}
