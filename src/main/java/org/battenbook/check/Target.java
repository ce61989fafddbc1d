package org.battenbook.check;

import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.value.Value;

/** What the first name of a path reads. */
public sealed interface Target {
  <R> R accept(TargetVisitor<R> visitor);

  /** A line, or a column in the current row. */
  record Here(Place place) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.here(this);
    }
  }

  /** {@code above.left}: a column in the row before. */
  record Above(Column column) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.above(this);
    }
  }

  /** {@code this.width}: a column in the row around an aggregate. */
  record Outer(Column column) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.outer(this);
    }
  }

  /** {@code this}: the row around an aggregate. */
  record OuterRow(Table table) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.outerRow(this);
    }
  }

  /** An argument of a function; its index is counted from 0. */
  record Parameter(int index) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.parameter(this);
    }
  }

  /** The value of a place before the change that reads it: that of the layer with this index. */
  record Inherited(Place place, int layer) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.inherited(this);
    }
  }

  /** A value that the job's settings define: {@code minor unit}. */
  record Setting(Value value) implements Target {
    @Override
    public <R> R accept(TargetVisitor<R> visitor) {
      return visitor.setting(this);
    }
  }
}
