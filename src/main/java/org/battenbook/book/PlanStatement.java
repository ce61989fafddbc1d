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
 * Which parts to cut from what, as a workbook states it; tables of its own hold what comes of it.
 *
 * @param settings by what they set
 * @param keep the table that offcuts are written into; absent where none is
 * @param record the table that what was taken is written into; absent where none is
 * @param statement where the workbook says so
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
   * A table, and what its columns say.
   *
   * @param columns by what they say, in the order in which they are written
   */
  public record Source(Table table, Map<PlanRole, Column> columns) {
    public Source {
      columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }

    /** The column that says something; absent where the plan names none. */
    public @Nullable Column column(PlanRole role) {
      return columns.get(role);
    }
  }

  public PlanStatement {
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
  }

  /** The key of a table that it fills, such as its {@code cuts}. */
  public String table(PlanTable table) {
    return Name.key(name.text() + " " + table.words());
  }

  /** The lines and columns whose values decide what is planned. */
  public Set<Place> reads() {
    Set<Place> reads = new LinkedHashSet<>(settings.values());
    reads.addAll(parts.columns().values());
    reads.addAll(stock.columns().values());
    return reads;
  }
}
