package org.battenbook.cutting;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.plan.SawStop;
import org.battenbook.plan.Stick;
import org.battenbook.plan.StickJob;
import org.battenbook.plan.StickPlan;
import org.battenbook.plan.StickPlanner;
import org.battenbook.unit.Dimension;

/** Works out one stick plan, material by material, as rows of its tables. */
final class StickPlanning {
  private final Planning planning;
  private final PlanStatement plan;
  private final PlanSettings settings;
  private final SourceRows parts;
  private final SourceRows stock;
  private final TotalRows totals;
  private final RowTexts sticks;
  private final RowTexts stops;
  private final RowTexts cuts;

  StickPlanning(Planning planning, PlanStatement plan, Results results) {
    this.planning = planning;
    this.plan = plan;
    this.settings = new PlanSettings(results, plan);
    this.parts = new SourceRows(results, plan.parts());
    this.stock = new SourceRows(results, plan.stock());
    this.totals =
        new TotalRows(
            plan, parts, row -> parts.number(row, "length", Rational.ZERO), Dimension.LENGTH);
    this.sticks = new RowTexts(plan.table("sticks"));
    this.stops = new RowTexts(plan.table("stops"));
    this.cuts = new RowTexts(plan.table("cuts"));
  }

  List<PlannedRows> rows() {
    Material.of(plan, parts, stock).forEach(this::plan);
    return List.of(totals.rows(), sticks.rows(), stops.rows(), cuts.rows());
  }

  private void plan(Material material) {
    Remarks remarks = new Remarks();
    try {
      StickParts asked = new StickParts(parts, material, tolerance(), remarks);
      if (!asked.isEmpty()) {
        StickPlan planned = planned(material, asked, remarks);
        totals.add(material, remarks, planned.proven(), planned.used(), planned.bound());
        addSticks(material.name(), planned, asked);
      } else if (!remarks.isEmpty()) {
        totals.addNone(material, remarks);
      }
    } catch (NotPlannable refusal) {
      refuse(material, remarks, refusal.reason());
    } catch (IllegalArgumentException refusal) {
      refuse(material, remarks, String.valueOf(refusal.getMessage()));
    }
  }

  /** Within what stops are merged; not at all unless that is asked for. */
  private Rational tolerance() throws NotPlannable {
    return planning.mergesStops() ? settings.number("stops within", Rational.ZERO) : Rational.ZERO;
  }

  private StickPlan planned(Material material, StickParts asked, Remarks remarks)
      throws NotPlannable {
    StickJob job =
        new StickJob(
            asked.loose(),
            asked.sets(),
            new StickStock(stock, material).of(material, remarks),
            asked.rules());
    StickPlan planned =
        planning.plan(job, settings.steps(StickPlanner.USUAL_STEPS), plan, material);
    planned.tooLong().forEach(part -> remarks.tooLarge(asked.called(part)));
    planned.missing().forEach(part -> remarks.missing(asked.called(part), part.count()));
    return planned;
  }

  private void refuse(Material material, Remarks remarks, String reason) {
    remarks.refused(reason);
    totals.addNone(material, remarks);
  }

  private void addSticks(String material, StickPlan planned, StickParts asked) {
    Set<SawStop> set = new HashSet<>();
    planned.sticks().stream()
        .flatMap(stick -> stick.placed().stream())
        .forEach(placed -> set.add(asked.stop(placed.part())));
    Map<SawStop, String> stopNames = new HashMap<>();
    for (SawStop stop : asked.stops().stream().filter(set::contains).toList()) {
      String name = RowTexts.text(material + ", stop " + (stopNames.size() + 1));
      stopNames.put(stop, name);
      stops.add(name, RowTexts.text(material), RowTexts.text(stop.parts().get(0).label()));
    }
    int number = 0;
    for (Stick stick : planned.sticks()) {
      String name = material + ": " + ++number;
      sticks.add(
          RowTexts.text(name),
          RowTexts.text(material),
          RowTexts.text(stick.stock().label()),
          Integer.toString(stick.pattern()));
      int at = 0;
      for (Stick.Placed placed : stick.placed()) {
        at++;
        cuts.add(
            RowTexts.numbered(name, at),
            RowTexts.text(name),
            Integer.toString(at),
            stopNames.getOrDefault(asked.stop(placed.part()), ""),
            RowTexts.text(placed.part().label()),
            RowTexts.yes(placed.turned()));
      }
    }
  }
}
