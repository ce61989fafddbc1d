package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** A small job of a shop that has all standards and no prices but those that a test names. */
final class PricedJob {
  private final String currency;
  private final List<String> changes = new ArrayList<>();
  private final List<String> pages = new ArrayList<>();

  private PricedJob(String currency) {
    this.currency = currency;
  }

  static PricedJob in(String currency) {
    return new PricedJob(currency);
  }

  PricedJob change(String name, String formula) {
    changes.add("change %s = %s because \"a test\"\n".formatted(name, formula));
    return this;
  }

  /** Rows of a table, under its page. */
  PricedJob rows(String page, String table, String... rows) {
    pages.add(
        "page %s\n  rows of %s\n    %s\n".formatted(page, table, String.join("\n    ", rows)));
    return this;
  }

  /** One row of pieces of 11 by 14 in, in a mat. */
  PricedJob pieces(int quantity) {
    String row = "\"Test\" | 11 in | 14 in | %d | \"ash cap\"".formatted(quantity);
    return rows("pieces", "pieces", "title | width | height | quantity | moulding", row);
  }

  /** The day of the job, against which price lists grow old. */
  PricedJob on(String date) {
    pages.add("page job\n  job date = %s\n".formatted(date));
    return this;
  }

  /** A line called {@code asked}. */
  PricedJob line(String formula) {
    pages.add("page asked\n  asked = %s\n".formatted(formula));
    return this;
  }

  Workbook open() {
    return ShippedFiles.open(
        "workbook \"Test\"\nfollows \"standards/priced-shop.batten\"\ncurrency %s\n"
                .formatted(currency)
            + String.join("", changes)
            + String.join("", pages));
  }

  Filled fill() {
    Workbook workbook = open();
    assertThat(workbook.diagnostics()).isEmpty();
    return workbook.fill();
  }

  /** What a place shows. */
  String shows(String place) {
    return fill().find(place).shown().text();
  }
}
