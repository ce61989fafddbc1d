package org.battenbook.book;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.TextLiteral;
import org.battenbook.unit.Units;
import org.jspecify.annotations.Nullable;

/**
 * A heading of a list that names an input column, with or without the unit of its numbers: {@code
 * price (USD/ft)}, {@code price [USD/ft]} or {@code price, USD/ft}.
 *
 * @param written the heading as written, with single spaces
 * @param unit the unit for numbers that have none of their own; can be empty
 * @param hasGoodUnit whether the unit exists, or none is needed
 */
record ListHeading(String written, Column column, String unit, boolean hasGoodUnit) {
  private static final Pattern WITH_UNIT =
      Pattern.compile("(?<name>.+?) ?(?:\\((?<round>[^()]*)\\)|\\[(?<square>[^\\[\\]]*)\\])");

  /** Spaces and control characters of every sort, including line breaks. */
  private static final Pattern SPACES = Pattern.compile("[\\p{Cntrl}\\p{Z}]+");

  private static final Pattern TOLERANCE = Pattern.compile("±|\\+/[-−]");

  private static final Pattern WITH_COMMA = Pattern.compile("(?<name>.+),(?<unit>[^,]*)");

  /** The heading of an input column; empty if no input column has that name. */
  static Optional<ListHeading> of(String listed, Table table) {
    String written = spaced(listed);
    Column whole = given(written, table);
    if (whole != null) {
      return Optional.of(new ListHeading(written, whole, "", true));
    }
    Matcher brackets = WITH_UNIT.matcher(written);
    if (brackets.matches()) {
      String round = brackets.group("round");
      String unit = round == null ? brackets.group("square") : round;
      return of(written, brackets.group("name"), unit.strip(), table);
    }
    Matcher comma = WITH_COMMA.matcher(written);
    return comma.matches()
        ? of(written, comma.group("name"), comma.group("unit").strip(), table)
        : Optional.empty();
  }

  private static Optional<ListHeading> of(String written, String name, String unit, Table table) {
    return Optional.ofNullable(given(name, table))
        .map(
            column ->
                new ListHeading(
                    written, column, unit, isTextual(column) || Units.find(unit).isPresent()));
  }

  private static @Nullable Column given(String name, Table table) {
    Column column = table.column(Name.key(name));
    return column != null && column.isGiven() ? column : null;
  }

  /** Whether the cells of a column are texts, even if they look like numbers. */
  private static boolean isTextual(Column column) {
    KindExpression kind = column.declaredKind();
    if (kind == null) {
      Formula formula = column.layer().formula();
      return formula != null && formula.expression() instanceof TextLiteral;
    }
    return kind instanceof KindExpression.RowOf
        || (kind instanceof KindExpression.Product product
            && product.factors().get(0).name().key().equals("text"));
  }

  /**
   * A cell as it would be written in a workbook. It is empty if the cell is blank, or the unit of
   * the heading has a fault.
   */
  String cell(String listed) {
    String words = spaced(listed);
    if (words.isEmpty() || !hasGoodUnit) {
      return "";
    }
    if (isTextual(column)) {
      return '"' + words.replace("\"", "\"\"") + '"';
    }
    String[] parts = TOLERANCE.split(words, 2);
    return parts.length == 1
        ? withUnit(words)
        : withUnit(parts[0].strip()) + " ± " + withUnit(parts[1].strip());
  }

  private String withUnit(String number) {
    boolean lacksUnit = !unit.isEmpty() && number.codePoints().allMatch(ListHeading::isOfNumber);
    return lacksUnit ? number + " " + unit : number;
  }

  private static boolean isOfNumber(int c) {
    return " .,-−/⁄".indexOf(c) >= 0
        || Character.isDigit(c)
        || Character.getType(c) == Character.OTHER_NUMBER;
  }

  /** A text with single plain spaces, and none at its ends. Most cells need no work for that. */
  static String spaced(String listed) {
    boolean plain = listed.chars().allMatch(c -> c > ' ' && c <= '~');
    return plain ? listed : SPACES.matcher(listed).replaceAll(" ").strip();
  }
}
