package org.battenbook.operation;

import java.util.List;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** What plus and minus share: both operands are of one dimension, or one is a date. */
abstract class Sum extends Binary {
  private final String consequence;

  Sum(String name, String consequence) {
    super(name);
    this.consequence = consequence;
  }

  /** The kind of a sum with a date in it, or unknown where there is none such. */
  abstract Kind ofDates(Kind left, Kind right);

  @Override
  final Kind checkKnown(List<Operand> operands, Complaints complaints) {
    Kind dates = ofDates(OperandKinds.kind(operands, 0), OperandKinds.kind(operands, 1));
    if (!dates.equals(Kind.UNKNOWN)) {
      return dates;
    }
    if (!OperandKinds.allMeasured(operands)) {
      return complainOfNoNumber(operands, complaints);
    }
    if (OperandKinds.sameKind(operands)) {
      return OperandKinds.kind(operands, 0);
    }
    return isPercentOf(operands)
        ? complainOfPercent(operands, complaints)
        : Mismatch.ofKinds(operands, consequence, complaints);
  }

  private Kind complainOfNoNumber(List<Operand> operands, Complaints complaints) {
    boolean hasDate = operands.stream().anyMatch(o -> o.kind().equals(Kind.DATE));
    return hasDate
        ? Mismatch.ofKinds(operands, consequence, complaints)
        : Mismatch.ofNoNumber(operands, consequence.replace("they", "it"), complaints);
  }

  private static boolean isPercentOf(List<Operand> operands) {
    return !OperandKinds.dimension(operands, 0).isNone()
        && OperandKinds.dimension(operands, 1).isNone()
        && operands.get(1).text().strip().endsWith("%");
  }

  private Kind complainOfPercent(List<Operand> operands, Complaints complaints) {
    Operand whole = operands.get(0);
    Operand percent = operands.get(1);
    complaints.complain(
        "percent-alone",
        List.of(0, 1),
        "%s is %s, but %s does not say of what"
            .formatted(Mismatch.quote(whole), Mismatch.words(whole), Mismatch.quote(percent)),
        "%s * (1 %s %s)".formatted(Mismatch.bracketed(whole), name(), percent.text()));
    return Kind.UNKNOWN;
  }

  /** Whether a kind is a time that moves a date. */
  static boolean isTime(Kind kind) {
    return kind.equals(new Kind.Measured(Dimension.TIME));
  }
}
