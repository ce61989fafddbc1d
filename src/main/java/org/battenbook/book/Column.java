package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A column of a table: one name, a value in each row. */
public final class Column extends Place {
  private final Table table;
  private final List<Change> cellChanges = new ArrayList<>();

  Column(
      Name name,
      Page page,
      Table table,
      @Nullable KindExpression kind,
      boolean given,
      Layer first) {
    super(name, page, kind, given, first);
    this.table = table;
  }

  public Table table() {
    return table;
  }

  /** Changes of single cells, {@code change face of mouldings "ash cap" = …}, in order. */
  public List<Change> cellChanges() {
    return Collections.unmodifiableList(cellChanges);
  }

  /** Whether nobody writes its cells: they come with rows that are opened or planned. */
  public boolean comesWithRow() {
    return isOpened() || isPlanned();
  }

  /** Whether its cells come with the rows that its table takes over from a plan. */
  public boolean isPlanned() {
    return isGiven() && table.plan() != null && isOfPlan();
  }

  /** A workbook may give a plan's tables columns of its own. */
  private boolean isOfPlan() {
    return origin().source() == table.keyColumn().origin().source();
  }

  /** Whether its cells come with the rows that its table opens from another's. */
  public boolean isOpened() {
    List<RowOpening> openings = table.openings();
    return !openings.isEmpty()
        && (this == table.keyColumn() || openings.stream().anyMatch(o -> o.fills(this)));
  }

  void changeCell(Change change) {
    cellChanges.add(change);
  }

  @Override
  public Column beside(Name name, Layer layer) {
    return new Column(name, page(), table, null, false, layer);
  }

  @Override
  public String words() {
    return name().text() + " of " + table.name().text();
  }
}
