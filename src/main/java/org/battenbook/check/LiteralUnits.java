package org.battenbook.check;

import java.util.Optional;
import org.battenbook.number.Rational;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.QuantityPart;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.jspecify.annotations.Nullable;

/** Resolves the units of a literal: {@code 5 ft 2 in} is 62 inches. */
final class LiteralUnits {
  private LiteralUnits() {}

  /**
   * The result of reading a literal: a quantity, or a fault.
   *
   * @param quantity the quantity in base units; null after a fault
   * @param unit the unit with the fault, as written; empty if there is none
   * @param unitSpan where that unit is written
   * @param message what is wrong; empty if nothing is
   * @param repair what to do about it
   */
  record Reading(
      @Nullable Quantity quantity, String unit, Span unitSpan, String message, String repair) {}

  static Reading read(QuantityLiteral literal) {
    Rational sum = Rational.ZERO;
    Dimension dimension = null;
    for (QuantityPart part : literal.parts()) {
      Optional<Unit> unit = part.unit().isEmpty() ? Optional.empty() : Units.find(part.unit());
      if (unit.isEmpty() && !part.unit().isEmpty()) {
        return unknown(part);
      }
      Dimension partDimension = unit.map(Unit::dimension).orElse(Dimension.NONE);
      if (dimension != null && !dimension.equals(partDimension)) {
        return mixed(literal, part);
      }
      dimension = partDimension;
      sum = sum.plus(unit.map(u -> part.number().times(u.factor())).orElse(part.number()));
    }
    Quantity quantity = new Quantity(sum, dimension == null ? Dimension.NONE : dimension);
    return new Reading(quantity, "", literal.span(), "", "");
  }

  private static Reading unknown(QuantityPart part) {
    return new Reading(
        null,
        part.unit(),
        part.unitSpan(),
        "'%s' is not a unit".formatted(part.unit()),
        NearNames.question(Units.suggestions(part.unit())));
  }

  private static Reading mixed(QuantityLiteral literal, QuantityPart part) {
    return new Reading(
        null,
        part.unit(),
        part.unitSpan(),
        "the parts of '%s' are of different kinds".formatted(literal.span().text()),
        "write an operator between them");
  }
}
