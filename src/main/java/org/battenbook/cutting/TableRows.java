package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** The rows of one table of a plan. A cell that means a row of another table holds its name. */
final class TableRows {
  private final String table;
  private final List<List<@Nullable Value>> rows = new ArrayList<>();

  /** No rows yet of the table of a key. */
  TableRows(String table) {
    this.table = table;
  }

  /** Adds a row; a cell may be absent. */
  void add(@Nullable Value... cells) {
    rows.add(Arrays.asList(cells));
  }

  /** Adds the rows of the same table. */
  void addAll(TableRows more) {
    rows.addAll(more.rows);
  }

  void putInto(Map<String, List<List<@Nullable Value>>> tables) {
    tables.put(table, rows);
  }

  static Value text(String words) {
    return new Value.Text(words);
  }

  static Value numbered(String name, int number) {
    return text(name + ": " + number);
  }

  static Value yes(boolean yes) {
    return new Value.YesNo(yes);
  }

  static Value count(int number) {
    return amount(Rational.of(number), Dimension.NONE);
  }

  /** A number in the base unit of its dimension. */
  static Value amount(Rational number, Dimension dimension) {
    return new Value.Amount(new Quantity(number, dimension));
  }
}
