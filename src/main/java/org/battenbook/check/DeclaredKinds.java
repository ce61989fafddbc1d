package org.battenbook.check;

import java.util.Map;
import java.util.TreeMap;
import org.battenbook.book.Book;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Reads declared kinds, written after a colon: {@code length}, {@code money / length}, {@code row
 * of …}.
 */
final class DeclaredKinds {
  /** The kind whose values are whole and not negative. */
  static final String COUNT = "count";

  private static final String MONEY = "money";
  private static final Map<String, Dimension> DIMENSIONS =
      new TreeMap<>(
          Map.of(
              "length",
              Dimension.LENGTH,
              "area",
              Dimension.AREA,
              "volume",
              Dimension.VOLUME,
              "mass",
              Dimension.MASS,
              "angle",
              Dimension.ANGLE,
              "time",
              Dimension.TIME,
              "temperature difference",
              Dimension.TEMPERATURE_DIFFERENCE,
              COUNT,
              Dimension.NONE,
              "ratio",
              Dimension.NONE,
              "number",
              Dimension.NONE));
  private static final Map<String, Kind> OTHERS =
      new TreeMap<>(Map.of("text", Kind.TEXT, "date", Kind.DATE, "yes or no", Kind.YES_NO));

  private final Book book;
  private final @Nullable String currency;
  private final Diagnostics diagnostics;

  /**
   * Creates a reader.
   *
   * @param currency the job's currency; null if it has a fault, which is reported already
   * @param diagnostics receives faults of declared kinds
   */
  DeclaredKinds(Book book, @Nullable String currency, Diagnostics diagnostics) {
    this.book = book;
    this.currency = currency;
    this.diagnostics = diagnostics;
  }

  /** The kind that is written; {@link Kind#UNKNOWN} after a fault. */
  Kind kind(KindExpression written) {
    if (written instanceof KindExpression.RowOf rowOf) {
      return rowOf(rowOf);
    }
    KindExpression.Product product = (KindExpression.Product) written;
    if (product.factors().size() == 1) {
      Kind other = OTHERS.get(product.factors().get(0).name().key());
      if (other != null) {
        return other;
      }
    }
    Dimension dimension = Dimension.NONE;
    for (KindExpression.Factor factor : product.factors()) {
      Dimension one = dimension(factor.name());
      if (one == null) {
        return Kind.UNKNOWN;
      }
      Dimension power = one.pow(factor.power());
      dimension = factor.divides() ? dimension.dividedBy(power) : dimension.times(power);
    }
    return new Kind.Measured(dimension);
  }

  /** Whether the declared kind is a count, whose values must be whole and not negative. */
  static boolean isCount(@Nullable KindExpression written) {
    return written instanceof KindExpression.Product product
        && product.factors().size() == 1
        && product.factors().get(0).name().key().equals(COUNT);
  }

  private Kind rowOf(KindExpression.RowOf rowOf) {
    Table table = book.table(rowOf.table().key());
    if (table == null) {
      diagnostics.fault(
          "no-such-table",
          rowOf.table().span(),
          "there is no table '%s'".formatted(rowOf.table()),
          () ->
              NearNames.question(
                  rowOf.table().text(), book.tables().stream().map(Table::toString).toList()));
      return Kind.UNKNOWN;
    }
    return new Kind.RowOf(table.key());
  }

  /** The dimension of a name; null if the name or the currency has a fault, reported already. */
  private @Nullable Dimension dimension(Name name) {
    if (name.key().equals(MONEY)) {
      return currency == null ? null : Dimension.money(currency);
    }
    return DIMENSIONS.get(name.key());
  }
}
