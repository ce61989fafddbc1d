package org.battenbook.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.number.Rational;

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

  /**
   * The cells that a material's row has, from what is proven on.
   *
   * @param used the cost of all that is taken
   * @param bound what no plan costs less than
   * @param size what all parts come to, with its unit
   */
  String[] cells(
      String name, String part, boolean proven, Rational used, Rational bound, String size) {
    boolean isPart = used.signum() > 0 && bound.compareTo(used) < 0;
    Rational share = isPart ? bound.dividedBy(used) : Rational.ONE;
    return new String[] {
      RowTexts.text(name),
      RowTexts.text(part),
      RowTexts.yes(proven),
      share.toString(),
      size,
      RowTexts.text(String.join(", ", tooLarge)),
      RowTexts.text(String.join(", ", missing)),
      RowTexts.text(String.join("; ", refused))
    };
  }
}
