package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.battenbook.number.Rational;

/**
 * A sheet that is sawn as its list of cuts says, one after another, each right through a panel that
 * is there by then.
 */
final class SawnSheet {
  private final List<Panel> panels = new ArrayList<>();
  private final Rational kerf;
  private int rounds;

  private record Area(Rational left, Rational top, Rational width, Rational height) {
    static Area of(JsonNode row, String called) {
      return new Area(
          number(row, called + "left"),
          number(row, called + "top"),
          number(row, called + "width"),
          number(row, called + "height"));
    }
  }

  /** What is left after some cuts; those of one direction in a row are one round. */
  private record Panel(Area area, String cut, int round) {}

  private SawnSheet(Area whole, Rational kerf) {
    this.kerf = kerf;
    panels.add(new Panel(whole, "", 0));
  }

  /**
   * Saws a sheet of an answer in JSON, and finds each of its pieces among what comes off.
   *
   * @param kerf in inches, as are the sizes
   */
  static SawnSheet of(JsonNode sheet, Rational width, Rational height, Rational kerf) {
    Area whole = new Area(Rational.ZERO, Rational.ZERO, width, height);
    SawnSheet sawn = new SawnSheet(whole, kerf);
    sheet.get("cuts").forEach(sawn::cut);
    for (JsonNode piece : sheet.get("pieces")) {
      assertThat(sawn.panels.removeIf(panel -> panel.area().equals(Area.of(piece, ""))))
          .as("%s comes off as it is said to", piece.get("row"))
          .isTrue();
    }
    return sawn;
  }

  /** How many rounds of parallel cuts free the last piece. */
  int rounds() {
    return rounds;
  }

  private void cut(JsonNode cut) {
    Area area = Area.of(cut, "panel ");
    Panel panel =
        panels.stream()
            .filter(one -> one.area().equals(area))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no panel there for " + cut.get("row")));
    panels.remove(panel);
    String direction = cut.at("/values/direction/exact").asText();
    int round = panel.cut().equals(direction) ? panel.round() : panel.round() + 1;
    rounds = Math.max(rounds, round);
    Rational at = number(cut, "cut at");
    Rational past = at.plus(kerf);
    if (direction.equals("across")) {
      Rational bottom = area.top().plus(area.height());
      add(new Area(area.left(), area.top(), area.width(), at.minus(area.top())), direction, round);
      add(new Area(area.left(), past, area.width(), bottom.minus(past)), direction, round);
    } else {
      Rational right = area.left().plus(area.width());
      add(
          new Area(area.left(), area.top(), at.minus(area.left()), area.height()),
          direction,
          round);
      add(new Area(past, area.top(), right.minus(past), area.height()), direction, round);
    }
  }

  /** Nothing is left where the blade takes the rest. */
  private void add(Area area, String cut, int round) {
    if (area.width().signum() > 0 && area.height().signum() > 0) {
      panels.add(new Panel(area, cut, round));
    }
  }

  private static Rational number(JsonNode row, String column) {
    return Rational.parse(row.at("/values/" + column + "/exact").asText());
  }
}
