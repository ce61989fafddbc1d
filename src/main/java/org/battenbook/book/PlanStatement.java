package org.battenbook.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PlanSection.Cutting;
import org.jspecify.annotations.Nullable;

/**
 * A plan in a workbook: which parts to cut from which stock. Its results go into tables of its own.
 *
 * @param cutting whether it cuts sticks or sheets
 * @param settings the settings, by role
 * @param keep the table to write kept offcuts into; null for none
 * @param record the table to write the stock used into; null for none
 * @param statement where the plan is written
 */
public record PlanStatement(
    Cutting cutting,
    Name name,
    Page page,
    Map<PlanRole, Setting> settings,
    Source parts,
    Source stock,
    @Nullable Source keep,
    @Nullable Source record,
    Span statement) {

  /**
   * A table that a plan names, and the roles of its columns.
   *
   * @param columns the columns by role, in the order in which they are written
   */
  public record Source(Table table, Map<PlanRole, Column> columns) {
    public Source {
      columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }

    /** The column with a role; null if the plan names none. */
    public @Nullable Column column(PlanRole role) {
      return columns.get(role);
    }
  }

  public PlanStatement {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  /** The key of the name of a table that it fills, such as its {@code cuts}. */
  public String table(PlanTable table) {
    return Name.key(name.text() + " " + table.words());
  }

  /** The settings and columns that the plan depends on. */
  public Set<Place> reads() {
    Set<Place> reads = new LinkedHashSet<>(settings.values());
    reads.addAll(parts.columns().values());
    reads.addAll(stock.columns().values());
    return reads;
  }
}
