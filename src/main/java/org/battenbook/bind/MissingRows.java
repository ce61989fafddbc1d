package org.battenbook.bind;

import java.util.Set;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;

/**
 * Why not all rows of a table are known yet.
 *
 * @param waitsFor the value that they wait for, as a formula over the rows reads it
 * @param each the keys of the rows whose count is not known, as only these may open further rows;
 *     empty where any row may be missing
 */
public record MissingRows(Value waitsFor, Set<String> each) {
  public MissingRows {
    each = Set.copyOf(each);
  }

  /** Any row may be missing. */
  public static MissingRows any(Value waitsFor) {
    return new MissingRows(waitsFor, Set.of());
  }

  /** Whether one of the missing rows may have this name. */
  boolean mayBring(String name) {
    String key = Name.key(name);
    return each.isEmpty()
        || each.contains(key)
        || each.stream().anyMatch(one -> key.startsWith(one + ":"));
  }
}
