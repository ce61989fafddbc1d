package org.battenbook.cutting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.SawStop;
import org.battenbook.planstore.Request;

/** Reads what a plan asks for of each material: the part that sticks and sheets share. */
abstract class OrderReader<J, P> {
  final PlanStatement plan;
  final PlanSettings settings;
  final SourceRows parts;
  final SourceRows stock;

  OrderReader(PlanStatement plan, Results results, PlanningLimit limit) {
    this.plan = plan;
    this.settings = new PlanSettings(results, plan, limit);
    this.parts = new SourceRows(results, plan.parts());
    this.stock = new SourceRows(results, plan.stock());
  }

  /** What is read beside the request itself. */
  static final class Draft {
    final Remarks remarks = new Remarks();
    final Map<String, String> called = new HashMap<>();
    List<SawStop> stops = List.of();
  }

  final String stockName(int row) {
    return "stock '%s'".formatted(stock.name(row));
  }

  /** How large a part is, in the base unit of what parts come to. */
  abstract Rational size(int part) throws NotPlannable;

  /** What is asked of the planner; absent where no part is to be cut. */
  abstract Optional<Request<J, P>> request(Material material, Draft draft) throws NotPlannable;

  /** An order for each material of which there is anything to tell. */
  final List<MaterialOrder<J, P>> orders() {
    return Material.of(plan, parts, stock).stream()
        .map(this::order)
        .filter(MaterialOrder::hasRow)
        .toList();
  }

  private MaterialOrder<J, P> order(Material material) {
    Draft draft = new Draft();
    Optional<Rational> asked = draft.remarks.read(() -> asked(material));
    Optional<Request<J, P>> request =
        asked.flatMap(
            known -> draft.remarks.read(() -> request(material, draft)).flatMap(one -> one));
    return new MaterialOrder<>(
        material.name(),
        parts.name(material.parts().get(0)),
        asked.orElse(Rational.ZERO),
        draft.remarks.refused(),
        request,
        draft.stops,
        draft.called);
  }

  /** What all parts of a material come to; those of no known size count nothing. */
  private Rational asked(Material material) throws NotPlannable {
    Rational all = Rational.ZERO;
    for (int row : material.parts()) {
      all = plus(all, sizeOfAll(row));
    }
    if (!DigitLimit.isWritable(all)) {
      throw tooManyDigits();
    }
    return all;
  }

  private Rational sizeOfAll(int row) {
    try {
      return size(row).times(Rational.of(parts.count(row, PlanRole.QUANTITY)));
    } catch (NotPlannable unknown) {
      // The workbook's own total waits for it, too.
      return Rational.ZERO;
    }
  }

  private static NotPlannable tooManyDigits() {
    return DigitLimit.tooManyDigits("the total of its parts", "their sizes");
  }

  private static Rational plus(Rational a, Rational b) throws NotPlannable {
    try {
      return a.plus(b);
    } catch (ArithmeticException pastAllDigits) {
      throw tooManyDigits();
    }
  }
}
