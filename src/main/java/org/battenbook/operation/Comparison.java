package org.battenbook.operation;

import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.truth;

import java.util.List;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.column.Relation;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.source.TextKey;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** What the six comparisons share: both operands are of one kind, and the result is yes or no. */
abstract class Comparison implements Operation {
  /**
   * What two numbers of a spreadsheet may differ by, in base units, and still be the same: far
   * above the noise of doubles, far below what anybody measures.
   */
  private static final Rational GUARD = Rational.of(1, 10_000_000);

  private static final SpreadsheetText NOISE = SpreadsheetText.number(GUARD);

  /** From here up the noise of equal doubles may pass the guard. */
  private static final double LARGEST = 1e7;

  private final String name;
  private final Relation relation;

  Comparison(String name, Relation relation) {
    this.name = name;
    this.relation = relation;
  }

  /** Whether operands of one kind can be compared so; says it where they cannot. */
  abstract boolean canCompare(List<Operand> operands, Complaints complaints);

  @Override
  public final String name() {
    return name;
  }

  @Override
  public final Arity arity() {
    return new Arity(2, 2);
  }

  @Override
  public final Kind check(List<Operand> operands, Complaints complaints) {
    if (!OperandKinds.anyUnknown(operands)
        && canCompare(operands, complaints)
        && !isOneKind(OperandKinds.kind(operands, 0), OperandKinds.kind(operands, 1))) {
      Mismatch.ofKinds(operands, "they cannot be compared", complaints);
    }
    return Kind.YES_NO;
  }

  /** A row may be called by its name. */
  private static boolean isOneKind(Kind left, Kind right) {
    return left.equals(right)
        || (left instanceof Kind.RowOf && right.equals(Kind.TEXT))
        || (left.equals(Kind.TEXT) && right instanceof Kind.RowOf);
  }

  /** Below zero, zero or above for values in an order; numbers whose bounds overlap are equal. */
  static int compare(List<Value> operands) {
    if (operands.get(0) instanceof Value.Day left && operands.get(1) instanceof Value.Day right) {
      return left.date().compareTo(right.date());
    }
    return Values.number(operands, 0).compareTo(Values.number(operands, 1));
  }

  @Override
  public final boolean agreesInSpreadsheet(List<Value> operands) {
    Value left = operands.get(0);
    Value right = operands.get(1);
    if (left instanceof Value.Amount a && right instanceof Value.Amount b) {
      return differClearly(a.quantity().number(), b.quantity().number());
    }
    return !(left instanceof Value.Text a && right instanceof Value.Text b)
        || TextKey.of(a.text()).equals(TextKey.of(b.text())) == a.text().equalsIgnoreCase(b.text());
  }

  /** Equal, or further apart than the guard, with room for the noise of the operands. */
  private static boolean differClearly(Real left, Real right) {
    double apart = Math.abs(left.toDouble() - right.toDouble());
    return left.compareTo(right) == 0
        ? Math.abs(left.toDouble()) < LARGEST
        : apart > 2 * GUARD.toDouble();
  }

  /** In a spreadsheet: the first is larger than the second by more than noise. */
  static SpreadsheetText exceeds(SpreadsheetText larger, SpreadsheetText smaller) {
    return isCounted(larger)
        ? larger.compared(">", smaller)
        : larger.minus(smaller).compared(">", NOISE);
  }

  /** In a spreadsheet: the first is at most the second, noise aside. */
  static SpreadsheetText reaches(SpreadsheetText smaller, SpreadsheetText larger) {
    return isCounted(smaller)
        ? smaller.compared("<=", larger)
        : smaller.minus(larger).compared("<=", NOISE);
  }

  /**
   * In a spreadsheet: the two are the same, or are not.
   *
   * @param exact {@code =} or {@code <>}
   * @param guarded {@code <=} or {@code >}
   */
  static SpreadsheetText sameness(
      SpreadsheetText left, SpreadsheetText right, String exact, String guarded) {
    if (left.content() == Content.NUMBER && (left.isColumn() || right.isColumn())) {
      return columnSameness(left, right, exact.equals("="));
    }
    if (left.content() == Content.NUMBER) {
      return SpreadsheetText.call("ABS", left.minus(right)).compared(guarded, NOISE);
    }
    if (left.content() == Content.TEXT || right.content() == Content.TEXT) {
      boolean ofColumns = left.isColumn() || right.isColumn();
      return ofColumns
          ? name(left).compared(exact, name(right))
          : trimmed(left).compared(exact, trimmed(right));
    }
    return left.compared(exact, right);
  }

  /** As {@link #sameness}, without a function that would not take a column. */
  private static SpreadsheetText columnSameness(
      SpreadsheetText left, SpreadsheetText right, boolean same) {
    return choice(
        exceeds(left, right), truth(!same), same ? reaches(right, left) : exceeds(right, left));
  }

  private static boolean isCounted(SpreadsheetText operand) {
    return operand.content() == Content.DATE;
  }

  private static SpreadsheetText trimmed(SpreadsheetText text) {
    return SpreadsheetText.call("TRIM", Content.TEXT, List.of(name(text)));
  }

  /** A text, or what a row is called. */
  private static SpreadsheetText name(SpreadsheetText text) {
    SpreadsheetText name = text.rowName();
    return name == null ? text : name;
  }

  @Override
  public final LaneKernel lanes() {
    return operands -> lanes(operands.get(0), operands.get(1));
  }

  private @Nullable Lane lanes(Lane left, Lane right) {
    if (left instanceof NumberLane x && right instanceof NumberLane y) {
      return x.is(relation, y);
    }
    if (left instanceof IndexLane x && right instanceof IndexLane y) {
      return sameness(x.equalTo(y));
    }
    return left instanceof BitLane x && right instanceof BitLane y
        ? sameness(x.and(y).or(x.or(y).not()))
        : null;
  }

  /** Rows, and yes and no, are the same or are not; they have no order. */
  private BitLane sameness(BitLane same) {
    return relation == Relation.EQUAL ? same : same.not();
  }
}
