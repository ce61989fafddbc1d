package org.battenbook.book;

import java.util.List;
import org.battenbook.syntax.PlanSection.Cutting;

/**
 * A table that a plan fills. Its name in a workbook is the name of the plan, then {@link #words}.
 */
public enum PlanTable {
  TOTALS("totals"),
  STICKS("sticks"),
  STOPS("stops"),
  SHEETS("sheets"),
  LAYOUT("layout"),
  CUTS("cuts"),
  OFFCUTS("offcuts");

  private final String words;

  PlanTable(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The tables of a plan for sticks or for sheets, in the order of its template. */
  public static List<PlanTable> of(Cutting cutting) {
    return switch (cutting) {
      case STICKS -> List.of(TOTALS, STICKS, STOPS, CUTS);
      case SHEETS -> List.of(TOTALS, SHEETS, LAYOUT, CUTS, OFFCUTS);
    };
  }

  /** The table with a row for each stick or sheet that a plan uses. */
  public static PlanTable ofTaken(Cutting cutting) {
    return switch (cutting) {
      case STICKS -> STICKS;
      case SHEETS -> SHEETS;
    };
  }
}
