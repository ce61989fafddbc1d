package org.battenbook.operation;

import java.util.List;
import org.battenbook.column.Relation;
import org.battenbook.number.Real;
import org.battenbook.source.TextKey;
import org.battenbook.value.Value;

/** Base of {@code =} and {@code <>}, which compare values of every kind. */
abstract class EqualityOperator extends Comparison {
  EqualityOperator(String name, Relation relation) {
    super(name, relation);
  }

  @Override
  final boolean canCompare(List<Operand> operands, Complaints complaints) {
    return true;
  }

  /**
   * Whether two values are the same. Texts are compared by {@link TextKey}, rows by their names.
   */
  static boolean isSame(List<Value> operands) {
    Value left = operands.get(0);
    Value right = operands.get(1);
    if (left instanceof Value.Amount a && right instanceof Value.Amount b) {
      Real number = a.quantity().number();
      return number.compareTo(b.quantity().number()) == 0;
    }
    return (left instanceof Value.Text || right instanceof Value.Text)
        ? TextKey.of(words(left)).equals(TextKey.of(words(right)))
        : left.equals(right);
  }

  private static String words(Value value) {
    return value instanceof Value.Row row ? row.name() : ((Value.Text) value).text();
  }
}
