package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.battenbook.plan.Refusal;

/** Remarks about one material: parts that are too large, missing or refused. */
final class Remarks {
  private final Set<String> tooLarge = new LinkedHashSet<>();
  private final List<String> missing = new ArrayList<>();
  private final List<String> refused = new ArrayList<>();

  Remarks() {}

  /** Those that were made before, what is refused. */
  Remarks(List<String> refused) {
    this.refused.addAll(refused);
  }

  /** Reads what a person wrote. */
  interface Reading<T> {
    T read() throws NotPlannable;
  }

  /** What is read of a material; absent where that cannot be planned with, which is remarked on. */
  <T> Optional<T> read(Reading<T> reading) {
    return read("", reading);
  }

  /** What is read of one row; absent where that cannot be planned with, which is remarked on. */
  <T> Optional<T> read(String row, Reading<T> reading) {
    try {
      return Optional.of(reading.read());
    } catch (NotPlannable not) {
      refused.add(row.isEmpty() ? not.reason() : "%s: %s".formatted(row, not.reason()));
    } catch (Refusal refusal) {
      refused.add(refusal.reason());
    }
    return Optional.empty();
  }

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

  /** A row that cannot be planned with, and why. */
  void refused(String row, String reason) {
    refused.add("%s: %s".formatted(row, reason));
  }

  /** What cannot be planned with, and why. */
  List<String> refused() {
    return List.copyOf(refused);
  }

  /** The parts that no stock holds, in words. */
  String wordsOfTooLarge() {
    return String.join(", ", tooLarge);
  }

  /** The parts for which the stock does not suffice, in words. */
  String wordsOfMissing() {
    return String.join(", ", missing);
  }

  /** What cannot be planned, in words. */
  String wordsOfRefused() {
    return String.join("; ", refused);
  }
}
