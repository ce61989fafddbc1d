package org.battenbook.evaluate;

import org.battenbook.bound.Bound;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Counts the long numbers and texts that a fill makes, since small formulas can make more of them
 * than memory holds. It also counts the steps that are not known before the fill. Past a bound, the
 * next value is a fault. One thread fills; what is worked out again later is not counted.
 */
final class Meter {
  /** Only numbers with more binary digits count. */
  private static final int LONG = 1_000;

  /** The least that a text counts, however short. */
  private static final int LEAST_OF_TEXT = 50;

  private static final Value.Fault TOO_MANY_DIGITS =
      new Value.Fault(
          "too-many-digits",
          "the long numbers of this job have more than %s together; round them"
              .formatted(Bound.ALL_BINARY_DIGITS.shown()));

  private static final Value.Fault TEXT_TOO_LONG =
      new Value.Fault("text-too-long", "this text has more than %s".formatted(Bound.TEXT.shown()));

  private static final Value.Fault TEXTS_TOO_LONG =
      new Value.Fault(
          "text-too-long",
          "the texts that this job calculates have more than %s together; calculate fewer"
              .formatted(Bound.ALL_TEXTS.shown()));

  private static final Value.Fault TOO_MUCH_WORK =
      new Value.Fault(
          "too-much-work",
          "this job takes more than %s steps to calculate, too many of them here; use fewer rows with"
                  .formatted(Bound.STEPS.shown())
              + " the same value after '= this'");

  private long steps;
  private long binaryDigits;
  private long characters;
  private boolean hasEnded;
  private Value.@Nullable Fault passed;

  /** A new meter that starts from what this one has counted. */
  Meter goOn() {
    Meter next = new Meter();
    next.steps = steps;
    next.binaryDigits = binaryDigits;
    next.characters = characters;
    next.passed = passed;
    return next;
  }

  /** Stops counting, since the fill is done. */
  void end() {
    hasEnded = true;
  }

  /** Whether a bound was passed. Values then depend on the order of the fill. */
  boolean isPassed() {
    return passed != null;
  }

  /** The first bound that was passed, as a fault; absent where none was. */
  Value.@Nullable Fault passed() {
    return passed;
  }

  /** Counts steps; a fault where they are too many. */
  Value.@Nullable Fault step(long more) {
    steps += hasEnded ? 0 : more;
    return passed(Bound.STEPS, steps, TOO_MUCH_WORK);
  }

  /** The value itself, or a fault where a bound is passed. */
  Value take(Value made) {
    Value fault = made instanceof Value.Amount amount ? tooMuch(amount.quantity().number()) : null;
    return fault == null ? made : fault;
  }

  /** The fault where a number passes the bound; absent where it does not. */
  Value.@Nullable Fault tooMuch(Real number) {
    if (hasEnded || !(number instanceof Rational exact) || exact.isSmall()) {
      return null;
    }
    int bits = Math.max(exact.numerator().bitLength(), exact.denominator().bitLength());
    binaryDigits += bits > LONG ? bits : 0;
    return passed(Bound.ALL_BINARY_DIGITS, binaryDigits, TOO_MANY_DIGITS);
  }

  /** A text, or a fault where a bound is passed. */
  Value text(CharSequence made) {
    if (Bound.TEXT.isPassedBy(made.length())) {
      return TEXT_TOO_LONG;
    }
    characters += hasEnded ? 0 : Math.max(LEAST_OF_TEXT, made.length());
    Value.Fault tooMuch = passed(Bound.ALL_TEXTS, characters, TEXTS_TOO_LONG);
    return tooMuch == null ? new Value.Text(made.toString()) : tooMuch;
  }

  private Value.@Nullable Fault passed(Bound bound, long counted, Value.Fault tooMuch) {
    if (!bound.isPassedBy(counted)) {
      return null;
    }
    passed = passed == null ? tooMuch : passed;
    return tooMuch;
  }
}
