package org.battenbook.bind;

import java.util.Set;
import org.battenbook.syntax.Name;
import org.battenbook.value.Value;

/**
 * Why not all rows of a table are known yet.
 *
 * @param waitsFor the value that a formula over the rows gets instead
 * @param each the keys of the source rows whose count is not known yet; only these can open more
 *     rows. If empty, any row can be missing.
 */
public record MissingRows(Value waitsFor, Set<String> each) {
  public MissingRows {
    each = Set.copyOf(each);
  }

  /** Missing rows of unknown names. */
  public static MissingRows any(Value waitsFor) {
    return new MissingRows(waitsFor, Set.of());
  }

  /** Whether a missing row can have this name. */
  boolean mayHave(String name) {
    String key = Name.key(name);
    return each.isEmpty()
        || each.contains(key)
        || each.stream().anyMatch(one -> key.startsWith(one + ":"));
  }
}
