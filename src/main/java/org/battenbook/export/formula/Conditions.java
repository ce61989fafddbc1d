package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.battenbook.check.CheckedFormula;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.Expression;
import org.jspecify.annotations.Nullable;

/**
 * The conditions after {@code where}, split at each {@code and}.
 *
 * @param ofInner conditions that read only the row itself
 * @param ofOuter conditions that read the outer row
 */
record Conditions(List<Expression> ofInner, List<Expression> ofOuter) {

  static Conditions of(@Nullable Expression where, CheckedFormula formula) {
    Conditions conditions = new Conditions(new ArrayList<>(), new ArrayList<>());
    if (where != null) {
      conditions.add(where, formula);
    }
    return conditions;
  }

  private void add(Expression where, CheckedFormula formula) {
    if (where instanceof Apply apply && formula.operation(apply).isConjunction()) {
      apply.children().forEach(child -> add(child, formula));
    } else {
      (OuterReads.in(where, formula) ? ofOuter : ofInner).add(where);
    }
  }

  List<Expression> all() {
    List<Expression> all = new ArrayList<>(ofInner);
    all.addAll(ofOuter);
    return all;
  }

  /** One value if all conditions hold, else another. Conditions are checked from left to right. */
  static SpreadsheetText where(
      List<Expression> conditions,
      Function<Expression, SpreadsheetText> translate,
      SpreadsheetText then,
      SpreadsheetText otherwise) {
    SpreadsheetText text = then;
    for (int i = conditions.size() - 1; i >= 0; i--) {
      text = choice(translate.apply(conditions.get(i)), text, otherwise);
    }
    return text;
  }
}
