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
  private final Name name;
  private final Table table;
  private final List<Change> cellChanges = new ArrayList<>();

  Column(
      Name name,
      Page page,
      Table table,
      @Nullable KindExpression kind,
      boolean given,
      Layer first) {
    super(page, kind, given, first);
    this.name = name;
    this.table = table;
  }

  public Name name() {
    return name;
  }

  @Override
  public Table table() {
    return table;
  }

  /** Changes of single cells, {@code change face of mouldings "ash cap" = …}, in order. */
  public List<Change> cellChanges() {
    return Collections.unmodifiableList(cellChanges);
  }

  @Override
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
  public String label() {
    return name.text();
  }

  @Override
  public <R> R accept(PlaceVisitor<R> visitor) {
    return visitor.column(this);
  }
}
