package org.battenbook.workbook;

import org.jspecify.annotations.Nullable;

/** A line or a column of a {@link RandomWorkbook}: what later formulas may read. */
final class RandomPlace {
  /** What kind of value a place holds. */
  enum Sort {
    LENGTH("length"),
    AREA("area"),
    NUMBER("number"),
    COUNT("count"),
    TEXT("text"),
    TRUTH("yes or no"),
    DATE("date"),
    ROW("row");

    private final String words;

    Sort(String words) {
      this.words = words;
    }

    /** A count is read like any number. */
    Sort read() {
      return this == COUNT ? NUMBER : this;
    }
  }

  /** How a {@code ±} comes into a value: not, by sums and factors only, or by any other way. */
  enum Off {
    NOT,
    LINEAR,
    OTHERWISE;

    Off or(Off other) {
      return other.compareTo(this) > 0 ? other : this;
    }
  }

  final String name;
  final Sort sort;

  /** The table whose column it is; absent for a line. */
  final @Nullable RandomTable table;

  /** The table whose rows it holds; absent for any other kind. */
  final @Nullable RandomTable rows;

  /** A formula reads only what came before its place, so that nothing is read in a circle. */
  final int order;

  final boolean given;
  final Off off;

  /** How many ways errors come into it, at most. */
  final int ways;

  /** Whether it comes with its row, or says how many rows are opened: it is not changed. */
  final boolean fixed;

  RandomPlace(
      String name,
      Sort sort,
      @Nullable RandomTable table,
      @Nullable RandomTable rows,
      int order,
      boolean given,
      Off off,
      int ways,
      boolean fixed) {
    this.name = name;
    this.sort = sort;
    this.table = table;
    this.rows = rows;
    this.order = order;
    this.given = given;
    this.off = off;
    this.ways = ways;
    this.fixed = fixed;
  }

  /** The kind as a workbook says it. */
  String kind() {
    return rows == null ? sort.words : "row of " + rows.name;
  }

  /** As a change names it. */
  String said() {
    return table == null ? name : name + " of " + table.name;
  }

  /** As a change names the cell of a row. */
  String said(String row) {
    return "%s \"%s\"".formatted(said(), row);
  }
}
