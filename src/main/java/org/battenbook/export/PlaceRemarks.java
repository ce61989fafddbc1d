package org.battenbook.export;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.Layer;
import org.battenbook.book.Place;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Quoted;

/** Remarks on a value: how it is written, its note, where it is set, and why it was changed. */
final class PlaceRemarks {
  private PlaceRemarks() {}

  /** The formula or the kind, as written. */
  static String written(Place place) {
    Formula formula = place.layer().formula();
    if (formula != null) {
      return formula.span().text();
    }
    KindExpression kind = place.declaredKind();
    return kind == null ? "" : kind.span().text();
  }

  /**
   * The note of the layer in force, or else of the definition. If the value was changed, the reason
   * follows.
   */
  static String note(Place place) {
    Layer layer = place.layer();
    String note = layer.note().isEmpty() ? place.note() : layer.note();
    Quoted because = layer.because();
    if (because == null) {
      return note;
    }
    return (note.isEmpty() ? "" : note + "; ") + "changed because " + because.text();
  }

  /** All remarks, for the heading of a column. */
  static String all(Place place) {
    List<String> lines = new ArrayList<>();
    lines.add((place.isGiven() ? "input: " : "") + written(place));
    if (!note(place).isEmpty()) {
      lines.add(note(place));
    }
    lines.add(place.layer().span().place());
    return String.join("\n", lines);
  }
}
