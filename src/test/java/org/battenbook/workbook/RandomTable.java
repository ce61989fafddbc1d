package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A table of a {@link RandomWorkbook}. */
final class RandomTable {
  final String name;

  /** The page it stands on. */
  final String page;

  final boolean isOpened;
  final List<RandomPlace> columns = new ArrayList<>();

  /** What the rows say in columns of counts, where that is a number. */
  final Map<RandomPlace, List<Integer>> counts = new LinkedHashMap<>();

  /** What holds in a given column where a row leaves it open. */
  final Map<RandomPlace, String> defaults = new LinkedHashMap<>();

  /** The names of the rows that are there whatever is worked out. */
  final List<String> rows = new ArrayList<>();

  /** The written tables that its rows come of: two openings of one would give names twice. */
  final Set<RandomTable> roots = new LinkedHashSet<>();

  RandomTable(String name, String page, boolean isOpened) {
    this.name = name;
    this.page = page;
    this.isOpened = isOpened;
  }

  /** What one of its rows is called. */
  String one() {
    return name.substring(0, name.length() - 1);
  }

  /** The column that names its rows. */
  String key() {
    return one();
  }
}
