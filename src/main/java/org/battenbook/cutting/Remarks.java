package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is to be told of one material beside its plan. */
final class Remarks {
  private final Set<String> tooLarge = new LinkedHashSet<>();
  private final List<String> missing = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();

  boolean isEmpty() {
    return tooLarge.isEmpty() && missing.isEmpty() && refused.isEmpty();
  }

  /** A part that no stock holds. */
  void tooLarge(String part) {
    tooLarge.add(part);
  }

  /** So many of a part that the stock on hand does not suffice for. */
  void missing(String part, int count) {
    missing.add(count == 1 ? part : count + " × " + part);
  }

  /** What cannot be planned with, and why. */
  void refused(String what, String reason) {
    refused.add("%s: %s".formatted(what, reason));
  }

  void refused(String reason) {
    refused.add(reason);
  }

  /** The cells of a material's row that tell of them. */
  List<String> cells() {
    return List.of(
        RowTexts.text(String.join(", ", tooLarge)),
        RowTexts.text(String.join(", ", missing)),
        RowTexts.text(String.join("; ", refused)));
  }
}
