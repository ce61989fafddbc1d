package org.battenbook.tolerance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.battenbook.bind.Scope;
import org.battenbook.check.CheckedFormula;
import org.battenbook.number.Rational;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Expression;
import org.battenbook.unit.Dimension;
import org.junit.jupiter.api.Test;

class SensitivityTest {
  private static final SourceText TEXT = SourceText.of("formula", "4");
  private static final Span SPAN = TEXT.span(0, 1);
  private static final Scope SCOPE = new Scope(TEXT, null, null, null, List.of(), null);

  private static NodeInScope amount(long number, Dimension dimension) {
    SyntheticFormula formula = new SyntheticFormula(SPAN);
    Expression node = formula.amount(Rational.of(number), dimension);
    CheckedFormula checked = formula.formula(node, SCOPE);
    return new NodeInScope(checked, node, Optional.empty(), List.of());
  }

  @Test
  void plain_numbers_are_multiplied_at_once() {
    Sensitivity by =
        Sensitivity.ONE.times(amount(6, Dimension.NONE)).over(amount(4, Dimension.NONE)).negated();
    assertThat(by.isNumber()).isTrue();
    assertThat(by.number()).isEqualTo(Rational.of(-3, 2));
  }

  @Test
  void quantities_stay_factors() {
    Sensitivity by = Sensitivity.ONE.times(amount(6, Dimension.LENGTH));
    assertThat(by.isNumber()).isFalse();
    assertThat(by.number()).isEqualTo(Rational.ONE);
    assertThat(by.factors()).singleElement().matches(factor -> !factor.divides());
  }

  @Test
  void a_division_by_zero_is_left_to_the_calculation() {
    Sensitivity by = Sensitivity.ONE.over(amount(0, Dimension.NONE));
    assertThat(by.factors()).singleElement().matches(Sensitivity.Factor::divides);
  }

  @Test
  void conditions_are_kept_in_order() {
    NodeInScope first = amount(1, Dimension.NONE);
    NodeInScope second = amount(2, Dimension.NONE);
    Sensitivity by = Sensitivity.ONE.where(first, true).where(second, false);
    assertThat(by.isNumber()).isFalse();
    assertThat(by.gates())
        .containsExactly(new Sensitivity.Gate(first, true), new Sensitivity.Gate(second, false));
  }
}
