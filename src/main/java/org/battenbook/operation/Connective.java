package org.battenbook.operation;

import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** What {@code and}, {@code or} and {@code not} share: yes or no of yes or no. */
abstract class Connective implements Operation {
  private final String name;

  Connective(String name) {
    this.name = name;
  }

  @Override
  public final String name() {
    return name;
  }

  @Override
  public Arity arity() {
    return new Arity(2, Integer.MAX_VALUE);
  }

  @Override
  public final Kind check(List<Operand> operands, Complaints complaints) {
    IntStream.range(0, operands.size())
        .filter(i -> !isYesNo(operands.get(i).kind()))
        .findFirst()
        .ifPresent(i -> complain(operands.get(i), i, complaints));
    return Kind.YES_NO;
  }

  private static boolean isYesNo(Kind kind) {
    return kind.equals(Kind.YES_NO) || kind.equals(Kind.UNKNOWN);
  }

  private void complain(Operand operand, int at, Complaints complaints) {
    complaints.complain(
        "not-yes-or-no",
        List.of(at),
        "%s is %s, but '%s' needs yes or no"
            .formatted(Mismatch.quote(operand), Mismatch.words(operand), name),
        repair(operand));
  }

  private static String repair(Operand operand) {
    return operand.kind() instanceof Kind.Measured measured
        ? "compare it: %s > 0 %s"
            .formatted(operand.text(), measured.dimension().baseSymbol())
            .strip()
        : "compare it with =";
  }

  static boolean anyIs(List<Value> operands, boolean yes) {
    return operands.stream().anyMatch(o -> Values.isYes(o) == yes);
  }
}
