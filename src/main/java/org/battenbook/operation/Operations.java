package org.battenbook.operation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The catalogue of operators and built-in functions. */
public final class Operations {
  private static final List<Operation> OPERATORS =
      List.of(
          new Add(),
          new Subtract(),
          new Multiply(),
          new Divide(),
          new Power(),
          new Negate(),
          new Equal(),
          new Unequal(),
          new Less(),
          new AtMost(),
          new Greater(),
          new AtLeast(),
          new And(),
          new Or(),
          new Not(),
          new RoundUp(),
          new RoundDown(),
          new RoundNearest(),
          new RoundEvenly(),
          new Tolerance());

  private static final List<Operation> FUNCTIONS =
      List.of(
          new SquareRoot(),
          new Absolute(),
          new Least(),
          new Greatest(),
          new Sine(),
          new Cosine(),
          new Tangent(),
          new Arctangent(),
          new PixelCount(true),
          new PixelCount(false));

  private static final Map<String, Operation> BY_NAME = byName();

  private Operations() {}

  /** The operator or function of a name as a formula's tree has it. */
  public static Optional<Operation> find(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /** What is called with brackets, in the order of the language's reference. */
  public static List<Operation> functions() {
    return FUNCTIONS;
  }

  private static Map<String, Operation> byName() {
    Map<String, Operation> byName = new LinkedHashMap<>();
    OPERATORS.forEach(o -> byName.put(o.name(), o));
    FUNCTIONS.forEach(o -> byName.put(o.name(), o));
    return Map.copyOf(byName);
  }
}
