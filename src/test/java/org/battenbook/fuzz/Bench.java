package org.battenbook.fuzz;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.battenbook.source.SourceText;

/**
 * A job whose plan takes laths out of a rack. Once the job remembers that it took some, it needs no
 * more slats.
 */
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

  private static final String TABLES =
      """
      workbook "Shop"
      page wood
        table rack by lath
          given
            lath    : text
            length  : length
            on hand : count = 1
            offcut  : yes or no = false
        table taken by lath
          given
            lath   : text
            length : length
            bought : count
            stored : count = 0
        table slats by slat
          given
            slat  : text
            long  : length
            asked : count
          worked out
            needed = if (count of taken) > 0 then 0 else asked
        table shop by sort
          given
            sort   : text
            length : length
        table stock by sort
          for each sold of shop
            length  = sold.length
            on hand = 0
            more    = true
            old     = false
          for each lath of rack
            length  = lath.length
            on hand = lath.on hand
            more    = false
            old     = lath.offcut
          given
            length  : length
            on hand : count
            more    : yes or no
            old     : yes or no
          worked out
            least = 8 in
        stick plan slat
          parts of slats
            length   = long
            quantity = needed
          stock of stock
            length       = length
            on hand      = on hand
            any number   = more
            offcut       = old
            least offcut = least
          keep in rack
            length   = length
            on hand  = on hand
            offcut   = offcut
          record in taken
            length    = length
            bought    = bought
            from rack = stored
      """;

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
    texts.put(SHOP, TABLES + rows(lines, "shop") + rows(lines, "rack"));
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
