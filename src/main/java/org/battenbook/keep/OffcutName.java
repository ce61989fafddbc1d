package org.battenbook.keep;

import org.battenbook.bind.RowKeys;
import org.battenbook.book.PlanStatement.Source;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;

/** What an offcut is called in the rack, and so what is to be written on it. */
public final class OffcutName {
  private OffcutName() {}

  /**
   * By its job and by what it was cut from; where offcuts are kept nowhere, by the latter alone.
   */
  public static String of(Filled filled, FilledPlan plan, FilledRow offcut) {
    Source keep = plan.statement().keep();
    if (keep == null) {
      return offcut.name();
    }
    long keepThere =
        filled.book().plans().stream()
            .filter(one -> one.keep() != null && one.keep().table() == keep.table())
            .count();
    String piece = keepThere > 1 ? plan.name() + " " + offcut.name() : offcut.name();
    return free(filled.title() + ", " + piece, filled.rows(keep.table()).keys());
  }

  /** The name, numbered where a row has it already. */
  static String free(String wanted, RowKeys taken) {
    String name = wanted;
    for (int number = 2; taken.row(name).isPresent(); number++) {
      name = "%s (%d)".formatted(wanted, number);
    }
    return name;
  }
}
