package org.battenbook.cutting;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.plan.stick.Demand;
import org.battenbook.plan.stick.MatchedSet;
import org.battenbook.plan.stick.SawStop;
import org.battenbook.plan.stick.Stick;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** Writes sticks, stops and cuts as rows. */
final class StickRows implements PlanRows<StickJob, StickPlan> {
  private final TotalRows totals;
  private final TableRows sticks;
  private final TableRows stops;
  private final TableRows cuts;

  StickRows(PlanStatement plan) {
    this.totals = new TotalRows(plan, Dimension.LENGTH);
    this.sticks = new TableRows(plan.table(PlanTable.STICKS));
    this.stops = new TableRows(plan.table(PlanTable.STOPS));
    this.cuts = new TableRows(plan.table(PlanTable.CUTS));
  }

  @Override
  public TotalRows totals() {
    return totals;
  }

  @Override
  public List<TableRows> tables() {
    return List.of(totals.rows(), sticks, stops, cuts);
  }

  @Override
  public void add(MaterialOrder<StickJob, StickPlan> order, StickPlan planned, Remarks remarks) {
    planned.tooLong().forEach(part -> remarks.tooLarge(called(order, part)));
    planned.missing().forEach(part -> remarks.missing(called(order, part), part.count()));
    totals.add(order, remarks, planned.proven(), planned.used(), planned.bound());
    addSticks(order, planned);
  }

  private static String called(MaterialOrder<?, ?> order, Demand asked) {
    return asked instanceof MatchedSet
        ? "the matched set " + asked.label()
        : order.called(asked.label());
  }

  private void addSticks(MaterialOrder<StickJob, StickPlan> order, StickPlan planned) {
    Map<String, SawStop> stopOf = new HashMap<>();
    order.stops().forEach(stop -> stop.parts().forEach(part -> stopOf.put(part.label(), stop)));
    Map<SawStop, Value> stopNames = addStops(order, planned, stopOf);
    int number = 0;
    for (Stick stick : planned.sticks()) {
      String name = order.material() + ": " + ++number;
      sticks.add(
          TableRows.text(name),
          TableRows.text(order.material()),
          TableRows.text(stick.stock().label()),
          TableRows.count(stick.pattern()));
      int at = 0;
      for (Stick.Placed placed : stick.placed()) {
        at++;
        cuts.add(
            TableRows.numbered(name, at),
            TableRows.text(name),
            TableRows.count(at),
            stopNames.get(stopOf.get(placed.part().label())),
            TableRows.text(placed.part().label()),
            TableRows.yes(placed.turned()));
      }
    }
  }

  /** The names of the stops that are set, the longest first. */
  private Map<SawStop, Value> addStops(
      MaterialOrder<StickJob, StickPlan> order, StickPlan planned, Map<String, SawStop> stopOf) {
    Set<SawStop> set = new HashSet<>();
    planned.sticks().stream()
        .flatMap(stick -> stick.placed().stream())
        .forEach(placed -> set.add(stopOf.get(placed.part().label())));
    Map<SawStop, Value> names = new HashMap<>();
    for (SawStop stop : order.stops().stream().filter(set::contains).toList()) {
      Value name = TableRows.text(order.material() + ", stop " + (names.size() + 1));
      names.put(stop, name);
      stops.add(
          name, TableRows.text(order.material()), TableRows.text(stop.parts().get(0).label()));
    }
    return names;
  }
}
