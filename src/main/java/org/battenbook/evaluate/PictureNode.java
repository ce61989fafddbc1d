package org.battenbook.evaluate;

import java.util.List;
import org.battenbook.book.Pictures;
import org.battenbook.number.Rational;
import org.battenbook.operation.PixelCount;
import org.battenbook.syntax.Expression;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;

/** Counts the pixels of the image file that a text names. */
final class PictureNode extends FormulaNode {
  private final PixelCount count;
  private final FormulaNode file;
  private final Pictures pictures;

  PictureNode(Expression node, PixelCount count, FormulaNode file, Pictures pictures) {
    super(node);
    this.count = count;
    this.file = file;
    this.pictures = pictures;
  }

  @Override
  List<FormulaNode> parts() {
    return List.of(file);
  }

  @Override
  Value evaluate(Frame frame) {
    Value named = file.run(frame);
    if (!(named instanceof Value.Text text)) {
      return named;
    }
    Pictures.Seen seen = pictures.of(text.text());
    int pixels = count.isAcross() ? seen.across() : seen.down();
    return new Value.Amount(Quantity.of(Rational.of(pixels)));
  }
}
