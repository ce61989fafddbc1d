package org.battenbook.fuzz;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.battenbook.keep.SlatShop;
import org.battenbook.source.SourceText;

/** A job whose plan takes laths out of a rack: the slats are its own, the rest is its shop's. */
final class Bench {
  /** Slats that come out of new laths and out of the rack. */
  static final String ROWS =
      """
      slats "a" | 15 in | 2
      slats "b" | 297 mm | 3
      shop "new" | 8 ft
      rack "first" | 40 in | 3 | false
      rack "end" | 16 in | 1 | true
      """;

  private static final String SHOP = "shop.batten";

  private static final Map<String, String> HEADINGS =
      Map.of(
          "slats", "slat | long | asked",
          "shop", "sort | length",
          "rack", "lath | length | on hand | offcut");

  private static final Pattern THOUSANDS = Pattern.compile("\\d{4}");

  private Bench() {}

  /** The files with rows, each line a table and a row of it: {@code shop "new" | 40 in}. */
  static Map<String, String> with(String rows) {
    Map<String, String> texts = new LinkedHashMap<>();
    List<String> lines = rows.lines().toList();
    texts.put(
        FilesInOneText.JOB,
        "workbook \"Bench\"\nfollows \"shop.batten\"\npage wood\n" + rows(lines, "slats"));
    texts.put(
        SHOP, "workbook \"Shop\"\n" + SlatShop.TABLES + rows(lines, "shop") + rows(lines, "rack"));
    return texts;
  }

  /**
   * Only what begins like a row: a statement could say that more is needed once some is taken. How
   * long thousands of slats take is no matter of keeping.
   */
  private static String rows(List<String> lines, String table) {
    StringBuilder rows =
        new StringBuilder("rows of %s%n  %s%n".formatted(table, HEADINGS.get(table)));
    String start = table + " \"";
    lines.stream()
        .filter(line -> line.startsWith(start) && !THOUSANDS.matcher(line).find())
        .forEach(line -> rows.append("  ").append(line.substring(table.length() + 1)).append('\n'));
    return rows.toString();
  }

  static void revise(Map<String, String> texts, Map<SourceText, String> revisions) {
    revisions.forEach((loaded, text) -> texts.put(loaded.name(), text));
  }
}
