package org.battenbook.operation;

import java.util.List;
import java.util.Optional;
import org.battenbook.number.Rational;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * An operator or a built-in function: everything that the language knows of it, in one place. The
 * stages ask it and know none by name.
 */
public interface Operation {

  /** Its name in a formula's tree: {@code +}, {@code rounded up}, {@code sqrt}. */
  String name();

  /** How many operands it may take. */
  Arity arity();

  /**
   * The kind of its result.
   *
   * @param operands its operands; one of unknown kind is not to be complained of
   * @param complaints where what does not fit is said
   * @return the kind, {@link Kind#UNKNOWN} after a complaint
   */
  Kind check(List<Operand> operands, Complaints complaints);

  /**
   * Its meaning, exact wherever the result is rational.
   *
   * @param operands known values of the kinds that {@link #check} let pass
   * @return a known value, or a fault
   */
  Value apply(List<Value> operands);

  /**
   * Whether an operand's value decides the result, so that the operands after it are not worked
   * out: {@code and} stops at a no, {@code or} at a yes. The result is then that value.
   */
  default boolean isDecidedBy(Value operand) {
    return false;
  }

  /** As a spreadsheet formula of the operands', all in base units. */
  SpreadsheetText spreadsheet(List<SpreadsheetText> operands);

  /**
   * Its meaning for a chunk of rows at once; absent where it has none, so that a formula with it
   * goes row by row.
   */
  default @Nullable LaneKernel lanes() {
    return null;
  }

  /**
   * How an error of an operand goes on into the result.
   *
   * @param operand which one, counted from 0
   */
  default Slope slope(int operand) {
    return Slope.NONE;
  }

  /**
   * What errors do not go through where its slopes do not let them, in words: {@code a power}.
   *
   * @throws IllegalStateException if they always go through, or never come in
   */
  default String obstacle() {
    throw new IllegalStateException("no error is stopped at '%s'".formatted(name()));
  }

  /**
   * For a comparison that tells apart less and more: the operation with which an error of the left
   * side makes it fail, plus or minus. Absent for all others.
   */
  default Optional<Operation> worsening() {
    return Optional.empty();
  }

  /** Whether a literal with it is still written as a value, not worked out: {@code -3 in}. */
  default boolean isSign() {
    return false;
  }

  /** Whether its result is the nearest multiple of a step in some direction. */
  default boolean isRounding() {
    return false;
  }

  /** Whether its result is whole and not negative wherever all operands are. */
  default boolean keepsCounts() {
    return false;
  }

  /** Whether its result says that both operands are the same. */
  default boolean isEquality() {
    return false;
  }

  /** Whether its result is yes only where each operand is yes. */
  default boolean isConjunction() {
    return false;
  }

  /**
   * Whether the spreadsheet's doubles come to the exact result: they do not where a value lies so
   * near to a limit, without being on it, that the formula's guard against noise takes it for
   * equal.
   *
   * @param operands known values that {@link #apply} takes
   */
  default boolean agreesInSpreadsheet(List<Value> operands) {
    return true;
  }

  /** From so many operands to so many. */
  record Arity(int least, int most) {}

  /**
   * An operand as the check sees it.
   *
   * @param text as written
   * @param literal its number in base units where it is a literal, signed or not; else absent
   */
  record Operand(Kind kind, String text, @Nullable Rational literal) {

    /** An operand that is no literal. */
    public Operand(Kind kind, String text) {
      this(kind, text, null);
    }
  }

  /** Where a check says what does not fit. */
  interface Complaints {
    /**
     * Says it once for the whole operation.
     *
     * @param code a stable name, {@code dimension-mismatch}
     * @param operands which operands are at fault, counted from 0: their words are underlined
     * @param message what is wrong, naming the operands and both dimensions
     * @param repair what to write instead
     */
    void complain(String code, List<Integer> operands, String message, String repair);
  }
}
