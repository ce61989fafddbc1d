package org.battenbook.fuzz;

/** A job whose rows stand in a list beside it. */
final class ListedJob {
  private static final String JOB =
      """
      workbook "Listed"
      currency USD
      page p
        table mouldings by name
          given
            name  : text
            face  : length = 1 in
            price : money / length = 0 USD/ft
            sold  : yes or no = false
            since : date = 2026-01-01
            left  : count = 0
          worked out
            cost = face * price
        rows of mouldings from "%s"
        lines
          widest = largest of face over mouldings where sold
      """;

  private ListedJob() {}

  static FilesInOneText of(String name, byte[] list) {
    return new FilesInOneText(JOB.formatted(name)).with(name, list);
  }
}
