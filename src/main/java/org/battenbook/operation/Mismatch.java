package org.battenbook.operation;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.operation.Operation.Complaints;
import org.battenbook.operation.Operation.Operand;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** What is said of operands that do not fit, and how to mend them. */
final class Mismatch {
  private static final List<Dimension> PLAIN_WORDS =
      List.of(
          Dimension.LENGTH,
          Dimension.AREA,
          Dimension.VOLUME,
          Dimension.MASS,
          Dimension.ANGLE,
          Dimension.TIME,
          Dimension.TEMPERATURE_DIFFERENCE);

  private Mismatch() {}

  /**
   * Two operands of different kinds where both have to be of one.
   *
   * @param consequence what follows, after the two kinds: {@code they cannot be added}
   */
  static Kind ofKinds(List<Operand> operands, String consequence, Complaints complaints) {
    return ofKinds(operands, 0, 1, consequence, complaints);
  }

  /** As above, for two of several operands. */
  static Kind ofKinds(
      List<Operand> operands, int first, int second, String consequence, Complaints complaints) {
    Operand left = operands.get(first);
    Operand right = operands.get(second);
    String message =
        "%s is %s and %s is %s: %s"
            .formatted(quote(left), words(left), quote(right), words(right), consequence);
    complaints.complain("dimension-mismatch", List.of(first, second), message, repair(left, right));
    return Kind.UNKNOWN;
  }

  /**
   * An operand that is no number where one is needed.
   *
   * @param consequence {@code only numbers can be multiplied}
   */
  static Kind ofNoNumber(List<Operand> operands, String consequence, Complaints complaints) {
    return ofNoNumber(operands, consequence, "use a line or a column with a number", complaints);
  }

  /**
   * As above, with a repair for a text or a date.
   *
   * @param otherwise what to write where neither a row nor yes or no stands
   */
  static Kind ofNoNumber(
      List<Operand> operands, String consequence, String otherwise, Complaints complaints) {
    int at =
        IntStream.range(0, operands.size())
            .filter(i -> !(operands.get(i).kind() instanceof Kind.Measured))
            .findFirst()
            .orElseThrow();
    Operand operand = operands.get(at);
    complaints.complain(
        "not-a-number",
        List.of(at),
        "%s is %s: %s".formatted(quote(operand), words(operand), consequence),
        repairNoNumber(operand, otherwise));
    return Kind.UNKNOWN;
  }

  /** An operand as a message names it. */
  static String quote(Operand operand) {
    return "'" + operand.text() + "'";
  }

  static String words(Operand operand) {
    return operand.kind().words();
  }

  /** An operand's text, bracketed where it would fall apart under a tighter operator. */
  static String bracketed(Operand operand) {
    boolean loose = operand.text().chars().anyMatch(c -> "+-−<>=".indexOf(c) >= 0);
    return loose && !operand.text().startsWith("(") ? "(" + operand.text() + ")" : operand.text();
  }

  /** Whether an operand is a number written without a unit. */
  static boolean isBare(Operand operand) {
    return operand.literal() != null && operand.kind().equals(Kind.NUMBER);
  }

  /** A number without its unit: the repair that writes one. */
  static String writeUnit(Operand number, String unit) {
    return "write %s with its unit: %s %s".formatted(quote(number), number.text(), unit);
  }

  private static String repairNoNumber(Operand operand, String otherwise) {
    if (operand.kind().equals(Kind.YES_NO)) {
      return "use it to choose a number: if %s then … else …".formatted(operand.text());
    }
    return operand.kind() instanceof Kind.RowOf
        ? "name a column of that row: %s.…".formatted(operand.text())
        : otherwise;
  }

  private static String repair(Operand left, Operand right) {
    if (left.kind() instanceof Kind.Measured a && right.kind() instanceof Kind.Measured b) {
      return Stream.of(unitRepair(left, b.dimension()), unitRepair(right, a.dimension()))
          .filter(text -> !text.isEmpty())
          .findFirst()
          .orElseGet(() -> factorRepair(left, a.dimension(), right, b.dimension()));
    }
    return "make both the same kind";
  }

  /** A literal without a unit most likely lacks the other's. */
  private static String unitRepair(Operand number, Dimension wanted) {
    return isBare(number) ? writeUnit(number, wanted.baseSymbol()) : "";
  }

  private static String factorRepair(
      Operand left, Dimension leftIs, Operand right, Dimension rightIs) {
    if (leftIs.isMoney() && rightIs.isMoney()) {
      return "multiply one of them by a rate, %s".formatted(leftIs.dividedBy(rightIs).words());
    }
    Dimension over = leftIs.dividedBy(rightIs);
    if (hasPlainWords(over)) {
      return factorRepair(left, right, over);
    }
    Dimension under = rightIs.dividedBy(leftIs);
    return hasPlainWords(under)
        ? factorRepair(right, left, under)
        : "multiply or divide one of them so that both are the same";
  }

  private static String factorRepair(Operand larger, Operand smaller, Dimension factor) {
    return "divide %s by %s, or multiply %s by %s"
        .formatted(quote(larger), factor.words(), quote(smaller), factor.words());
  }

  private static boolean hasPlainWords(Dimension dimension) {
    return dimension.isMoney() || PLAIN_WORDS.contains(dimension);
  }
}
