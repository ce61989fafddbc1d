package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.book.Table;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** {@code this}: the row around an aggregate. */
final class OuterRowNode extends FormulaNode {
  private final Table table;

  OuterRowNode(Expression node, Table table) {
    super(node);
    this.table = table;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    int row = Frames.outer(frame).row;
    return new Value.Row(table.key(), row, frame.reading.rows(table).name(row));
  }
}
