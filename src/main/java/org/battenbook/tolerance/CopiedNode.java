package org.battenbook.tolerance;

import java.util.List;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Apply;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Choice;
import org.battenbook.syntax.DateLiteral;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.ExpressionVisitor;
import org.battenbook.syntax.FirstRow;
import org.battenbook.syntax.QuantityLiteral;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TruthLiteral;
import org.battenbook.tolerance.SyntheticFormula.OutOfReach;

/**
 * Copies a node into another tree, where it has another id and other children.
 *
 * @param id of the copy
 * @param children of the copy
 */
record CopiedNode(int id, List<Expression> children) implements ExpressionVisitor<Expression> {

  /**
   * The copy of a node.
   *
   * @throws OutOfReach for a node that no copy can stand for
   */
  static Expression of(Expression node, int id, List<Expression> children) {
    return node.accept(new CopiedNode(id, children));
  }

  @Override
  public Expression quantity(QuantityLiteral literal) {
    return new QuantityLiteral(id, literal.span(), literal.parts());
  }

  @Override
  public Expression text(TextLiteral literal) {
    return new TextLiteral(id, literal.span(), literal.parts());
  }

  @Override
  public Expression date(DateLiteral literal) {
    return new DateLiteral(id, literal.span(), literal.date());
  }

  @Override
  public Expression truth(TruthLiteral literal) {
    return new TruthLiteral(id, literal.span(), literal.truth());
  }

  @Override
  public Expression reference(Reference reference) {
    return new Reference(id, reference.span(), reference.root(), reference.names());
  }

  @Override
  public Expression firstRow(FirstRow firstRow) {
    return new FirstRow(id, firstRow.span());
  }

  @Override
  public Expression apply(Apply apply) {
    return new Apply(id, apply.span(), apply.operation(), children);
  }

  @Override
  public Expression call(Call call) {
    return new Call(id, call.span(), call.function(), children);
  }

  @Override
  public Expression choice(Choice choice) {
    return new Choice(id, choice.span(), children.get(0), children.get(1), children.get(2));
  }

  /** Its margin is known by the node itself, and would be none of the copy. */
  @Override
  public Expression atWorst(AtWorst atWorst) {
    throw new OutOfReach("a value that depends on another comparison at worst", atWorst);
  }

  @Override
  public Expression aggregate(Aggregate aggregate) {
    int last = children.size() - 1;
    return new Aggregate(
        id,
        aggregate.span(),
        aggregate.function(),
        aggregate.of() == null ? null : children.get(0),
        aggregate.table(),
        aggregate.where() == null ? null : children.get(last));
  }

  @Override
  public Expression selection(Selection selection) {
    int last = children.size() - 1;
    Selection.Preference preference = selection.preference();
    return new Selection(
        id,
        selection.span(),
        selection.table(),
        selection.where() == null ? null : children.get(0),
        preference == null
            ? null
            : new Selection.Preference(preference.largest(), children.get(last)));
  }
}
