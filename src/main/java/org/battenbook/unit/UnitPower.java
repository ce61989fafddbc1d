package org.battenbook.unit;

import java.util.List;
import java.util.stream.Collectors;
import org.battenbook.number.Rational;

/** A unit to a whole power other than zero, one factor of a compound unit. */
record UnitPower(Unit unit, int power) {

  /** The compound unit of all factors, what multiplies before what divides: {@code lb/in^3}. */
  static Unit product(List<UnitPower> factors) {
    Dimension dimension = Dimension.NONE;
    Rational factor = Rational.ONE;
    for (UnitPower each : factors) {
      dimension = dimension.times(each.unit.dimension().pow(each.power));
      factor = factor.times(each.unit.factor().pow(each.power));
    }
    return new Unit(symbol(factors), dimension, factor);
  }

  private static String symbol(List<UnitPower> factors) {
    String above =
        factors.stream()
            .filter(each -> each.power > 0)
            .map(UnitPower::written)
            .collect(Collectors.joining("*"));
    String below =
        factors.stream()
            .filter(each -> each.power < 0)
            .map(each -> "/" + each.written())
            .collect(Collectors.joining());
    return above.isEmpty() && !below.isEmpty() ? "1" + below : above + below;
  }

  private String written() {
    int size = Math.abs(power);
    return size == 1 ? unit.symbol() : unit.symbol() + "^" + size;
  }
}
