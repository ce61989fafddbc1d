package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.book.Table;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;

/** A row of an opened or planned table by its name. */
final class NamedRowNode extends FormulaNode {
  final Table table;
  private final String name;

  NamedRowNode(Expression node, Table table, String name) {
    super(node);
    this.table = table;
    this.name = name;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of();
  }

  @Override
  Value evaluate(Frame frame) {
    return frame.reading.rows(table).called(name);
  }
}
