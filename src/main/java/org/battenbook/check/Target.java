package org.battenbook.check;

import org.battenbook.book.Column;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.value.Value;

/** What the first word of a path reads. */
public sealed interface Target {

  /** A line, or a column in the row at hand. */
  record Here(Place place) implements Target {}

  /** {@code above.left}: a column in the row before. */
  record Above(Column column) implements Target {}

  /** {@code this.width}: a column in the row around an aggregate. */
  record Outer(Column column) implements Target {}

  /** {@code this}: the row around an aggregate. */
  record OuterRow(Table table) implements Target {}

  /** An argument of a function, counted from 0. */
  record Parameter(int index) implements Target {}

  /** The value that the layer of a place gave, before the change that reads it. */
  record Inherited(Place place, int layer) implements Target {}

  /** What the job's settings say: {@code minor unit}. */
  record Setting(Value value) implements Target {}
}
