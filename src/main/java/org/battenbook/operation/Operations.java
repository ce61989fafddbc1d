package org.battenbook.operation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The catalogue of operators and built-in functions. */
public final class Operations {
  /** {@code a + b}. */
  public static final Operation ADD = new Add();

  /** {@code a - b}. */
  public static final Operation SUBTRACT = new Subtract();

  /** {@code a * b}. */
  public static final Operation MULTIPLY = new Multiply();

  /** {@code a / b}. */
  public static final Operation DIVIDE = new Divide();

  /** {@code a = b}. */
  public static final Operation EQUAL = new Equal();

  /** {@code abs(a)}. */
  public static final Operation ABSOLUTE = new Absolute();

  /** The value of a place that is declared as a count; no formula has it by name. */
  public static final Operation COUNT = new WholeCount();

  private static final List<Operation> OPERATORS =
      List.of(
          ADD,
          SUBTRACT,
          MULTIPLY,
          DIVIDE,
          new Power(),
          new Negate(),
          EQUAL,
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
          ABSOLUTE,
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

  /** The built-in function of a name. */
  public static Optional<Operation> function(String name) {
    return find(name).filter(FUNCTIONS::contains);
  }

  /** What is called with brackets, in the order of the language's reference. */
  public static List<Operation> functions() {
    return FUNCTIONS;
  }

  static List<Operation> operators() {
    return OPERATORS;
  }

  private static Map<String, Operation> byName() {
    Map<String, Operation> byName = new LinkedHashMap<>();
    OPERATORS.forEach(o -> byName.put(o.name(), o));
    FUNCTIONS.forEach(o -> byName.put(o.name(), o));
    return Map.copyOf(byName);
  }
}
