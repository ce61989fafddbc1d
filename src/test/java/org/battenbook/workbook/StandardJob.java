package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** A small job that follows the standards, without prices, as a test fills it. */
final class StandardJob {
  private final List<String> changes = new ArrayList<>();
  private final List<String> pages = new ArrayList<>();

  StandardJob change(String name, String formula) {
    changes.add("change %s = %s because \"a test\"\n".formatted(name, formula));
    return this;
  }

  /** Rows of a table, under its page; the first are headings. */
  StandardJob rows(String page, String table, String... rows) {
    pages.add(
        "page %s\n  rows of %s\n    %s\n".formatted(page, table, String.join("\n    ", rows)));
    return this;
  }

  /** A piece of 8 by 10 in, called Test, with these further headings and cells. */
  StandardJob piece(String headings, String cells) {
    return rows(
        "pieces",
        "pieces",
        "title | width | height | " + headings,
        "\"Test\" | 8 in | 10 in | " + cells);
  }

  /** How the piece called Test hangs. */
  StandardJob hanging(String headings, String cells) {
    return rows("hanging", "hung frames", "frame | " + headings, "\"Test\" | " + cells);
  }

  /** A line called {@code asked}. */
  StandardJob line(String formula) {
    pages.add("page asked\n  asked = %s\n".formatted(formula));
    return this;
  }

  Filled fill() {
    Workbook workbook =
        ShippedFiles.open(
            "workbook \"Test\"\nfollows \"standards/frame-shop.batten\"\nlengths in 1/16 in\n"
                + String.join("", changes)
                + String.join("", pages));
    assertThat(workbook.diagnostics()).isEmpty();
    return workbook.fill();
  }

  /** What a place shows. */
  String shows(String place) {
    return fill().find(place).shown().text();
  }

  /** The requirements that fail. */
  List<String> broken() {
    return texts(fill().requirements().stream().filter(Verdict::isNo).toList());
  }

  /** The cautions that apply. */
  List<String> firing() {
    return texts(fill().cautions().stream().filter(Verdict::isYes).toList());
  }

  private static List<String> texts(List<Verdict> verdicts) {
    return verdicts.stream().map(Verdict::text).toList();
  }
}
