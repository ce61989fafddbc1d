package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.text;

import java.util.List;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.syntax.TextPart;
import org.battenbook.unit.Form;
import org.jspecify.annotations.Nullable;

/** Translates a text with holes. Each hole shows its value as the workbook does. */
final class TextTranslation {
  private final Translation around;

  TextTranslation(Translation around) {
    this.around = around;
  }

  SpreadsheetText of(TextLiteral literal) {
    return literal.parts().stream()
        .map(this::part)
        .reduce(SpreadsheetText::joined)
        .orElseGet(() -> SpreadsheetText.text(""));
  }

  private SpreadsheetText part(TextPart part) {
    if (part instanceof TextPart.Hole hole) {
      Reference reference = hole.reference();
      return shown(around.translate(reference), form(reference));
    }
    return SpreadsheetText.text(((TextPart.Words) part).words());
  }

  private @Nullable Form form(Reference hole) {
    Form asked = around.formula().holeForm(hole);
    Place place = around.formula().path(hole).place();
    CheckedBook book = around.reads().book();
    return asked != null || place == null ? asked : book.place(place).form();
  }

  private static SpreadsheetText shown(SpreadsheetText value, @Nullable Form form) {
    return switch (value.content()) {
      case TEXT -> value;
      case ROW -> rowName(value);
      case YES_NO -> choice(value, text("yes"), text("no"));
      case DATE -> date(value);
      case NUMBER -> ShownNumber.of(value, form);
    };
  }

  private static SpreadsheetText rowName(SpreadsheetText row) {
    SpreadsheetText name = row.rowName();
    if (name == null) {
      throw new Inexpressible("a row in it has no name");
    }
    return name;
  }

  /** Digit by digit, because the codes of date formats depend on the program's language. */
  private static SpreadsheetText date(SpreadsheetText day) {
    SpreadsheetText year = call("YEAR", Content.TEXT, List.of(day));
    return year.joined(text("-"))
        .joined(twoDigits("MONTH", day))
        .joined(text("-"))
        .joined(twoDigits("DAY", day));
  }

  private static SpreadsheetText twoDigits(String function, SpreadsheetText day) {
    SpreadsheetText padded = text("0").joined(call(function, Content.TEXT, List.of(day)));
    return call("RIGHT", Content.TEXT, List.of(padded, number(2)));
  }
}
