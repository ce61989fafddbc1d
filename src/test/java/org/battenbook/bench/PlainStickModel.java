package org.battenbook.bench;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.number.Rational;
import org.battenbook.plan.stick.Part;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.Stock;
import org.battenbook.plan.stick.Stretch;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The model of L. V. Kantorovich (1939, 1960): which sticks are taken, and how many of each length
 * come out of each. Written as it stands in textbooks, for comparison.
 */
final class PlainStickModel {
  private static final long MOST_MILLISECONDS = 30_000;

  private final StickJob job;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();

  private PlainStickModel(StickJob job) {
    this.job = job;
  }

  /** How it ended, and at what cost. */
  static String solve(StickJob job) {
    return new PlainStickModel(job).solve();
  }

  private String solve() {
    List<Expression> demands = new ArrayList<>();
    for (Part part : job.parts()) {
      demands.add(model.newExpression("demand of " + part.label()).lower(part.count()));
    }
    for (Stock stock : job.stocks()) {
      for (int stick = 0; stick < mostSticks(stock); stick++) {
        addStick(stock, stick, demands);
      }
    }
    model.options.time_abort = MOST_MILLISECONDS;
    model.options.time_suffice = MOST_MILLISECONDS;
    Optimisation.Result result = model.minimise();
    return result.getState() + " at " + result.getValue();
  }

  private void addStick(Stock stock, int number, List<Expression> demands) {
    String name = stock.label() + " " + number;
    Variable taken = model.newVariable(name).binary().weight(stock.cost().toDouble());
    Expression length = model.newExpression("length of " + name).upper(0);
    length.set(taken, usable(stock).negate().toDouble());
    for (int kind = 0; kind < demands.size(); kind++) {
      Part part = job.parts().get(kind);
      Variable cut = model.newVariable(part.label() + " of " + name).integer().lower(0);
      cut.upper(part.count());
      length.set(cut, part.length().plus(job.rules().kerf()).toDouble());
      demands.get(kind).set(cut, 1);
    }
  }

  private Rational usable(Stock stock) {
    Stretch stretch = stock.stretch();
    Rational trims = stretch.firstTrim().plus(stretch.lastTrim());
    return stretch.length().minus(trims).plus(job.rules().kerf());
  }

  /** Enough to cut all, each stick at least half full. */
  private int mostSticks(Stock stock) {
    Rational all = Rational.ZERO;
    for (Part part : job.parts()) {
      Rational each = part.length().plus(job.rules().kerf());
      all = all.plus(each.times(Rational.of(part.count())));
    }
    return all.times(Rational.of(2)).dividedBy(usable(stock)).ceiling().intValueExact();
  }
}
