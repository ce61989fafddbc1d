package org.battenbook.check;

import java.util.Optional;
import org.battenbook.number.Rational;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.ShownAs;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Form;
import org.battenbook.unit.Forms;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/** Reads the forms of {@code shown as} and {@code lengths in}. */
final class ShownForms {
  private final Forms defaults;

  ShownForms(@Nullable ShownAs lengths, Diagnostics diagnostics) {
    Kind length = new Kind.Measured(Dimension.LENGTH);
    Form form =
        Optional.ofNullable(lengths)
            .filter(written -> unit(written, length, diagnostics).isPresent())
            .map(w -> Form.of(w.step(), w.decimal(), Units.find(w.unit()).orElse(Units.INCH)))
            .orElseGet(() -> Form.of(Rational.of(1, 16), false, Units.INCH));
    this.defaults = Forms.of(form);
  }

  /** The forms of quantities without {@code shown as}. */
  Forms defaults() {
    return defaults;
  }

  /**
   * The form that is written.
   *
   * @param diagnostics receives a fault if the form does not fit the kind
   * @return empty after a fault
   */
  Optional<Form> form(ShownAs written, Kind kind, Diagnostics diagnostics) {
    Optional<Form> form = one(written, kind, diagnostics);
    if (written.metric() == null) {
      return form;
    }
    Optional<Form> metric = one(written.metric(), kind, diagnostics);
    return defaults.isMetric() ? metric : form;
  }

  private Optional<Form> one(ShownAs written, Kind kind, Diagnostics diagnostics) {
    return unit(written, kind, diagnostics)
        .map(unit -> defaults.shownAs(written.step(), written.decimal(), unit));
  }

  private static Optional<Unit> unit(ShownAs written, Kind kind, Diagnostics diagnostics) {
    Optional<Unit> unit = Units.find(written.unit());
    if (unit.isEmpty()) {
      diagnostics.fault(
          "unknown-unit",
          written.span(),
          "'%s' is not a unit".formatted(written.unit()),
          NearNames.question(Units.suggestions(written.unit())));
      return Optional.empty();
    }
    Kind shown = new Kind.Measured(unit.get().dimension());
    if (!FormulaCheck.agree(shown, kind)) {
      diagnostics.fault(
          "form-mismatch",
          written.span(),
          "this is %s, but '%s' shows %s".formatted(kind.words(), written.unit(), shown.words()),
          "remove 'shown as', or use a unit of that kind");
      return Optional.empty();
    }
    if (written.step() != null && written.step().signum() <= 0) {
      diagnostics.fault(
          "step-not-positive",
          written.span(),
          "a step must be more than 0",
          "write a step such as 1/16 in");
      return Optional.empty();
    }
    return unit;
  }
}
