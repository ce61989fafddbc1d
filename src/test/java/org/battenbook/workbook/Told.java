package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.battenbook.bind.Spot;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostic;

/** All that a filled workbook tells, to be compared with what another tells. */
final class Told {
  private Told() {}

  /** Every value in every row: exactly, as people read it, and where it is set. */
  static Map<String, String> values(Filled filled) {
    Map<String, String> values = new TreeMap<>();
    for (CheckedPlace checked : filled.checked().places()) {
      Place place = checked.place();
      int rows = place.table() == null ? 1 : filled.rows(place.table()).count();
      for (int row = 0; row < rows && !(place instanceof ErrorBound); row++) {
        FilledValue value = filled.value(new Spot(place, row));
        values.put(
            "%s.%s row %d %s".formatted(place.page(), place.words(), row, value.words()),
            "%s, shown %s, at %s".formatted(value.value(), value.shown(), value.at()));
      }
    }
    return values;
  }

  /** The values that two workbooks tell otherwise, or that only one of them has. */
  static List<String> differences(Filled one, Filled other) {
    Map<String, String> here = values(one);
    Map<String, String> there = values(other);
    Set<String> all = new TreeSet<>(here.keySet());
    all.addAll(there.keySet());
    return all.stream()
        .filter(name -> !Objects.equals(here.get(name), there.get(name)))
        .map(name -> "%s: %s, but %s".formatted(name, here.get(name), there.get(name)))
        .toList();
  }

  /** What its rules say, whether they hold or not, and what reading it told. */
  static List<String> messages(Filled filled) {
    List<String> messages = new ArrayList<>();
    filled.requirements().forEach(one -> messages.add(one.value() + ": " + one.text()));
    filled.cautions().forEach(one -> messages.add(one.value() + ": " + one.text()));
    messages.addAll(messages(filled.diagnostics()));
    return messages;
  }

  static List<String> messages(List<Diagnostic> diagnostics) {
    return diagnostics.stream()
        .map(one -> one.code() + " at " + one.span().place() + ": " + one.message())
        .toList();
  }
}
