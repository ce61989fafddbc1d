package org.battenbook.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.battenbook.syntax.Change;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/** A column of a table: a name, and a value in each row. */
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

  /** The changes of single cells, {@code change face of mouldings "ash cap" = …}, in order. */
  public List<Change> cellChanges() {
    return Collections.unmodifiableList(cellChanges);
  }

  @Override
  public boolean comesWithRow() {
    return isOpened() || isPlanned();
  }

  /** Whether a plan fills its cells. */
  public boolean isPlanned() {
    return isGiven() && table.plan() != null && isOfPlan();
  }

  /** Whether the plan defines it. A workbook can add columns of its own to the tables of a plan. */
  private boolean isOfPlan() {
    return origin().source() == table.keyColumn().origin().source();
  }

  /** Whether an opening fills its cells, with the row's name, source row or number. */
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
