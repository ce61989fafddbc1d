package org.battenbook.cutting;

import org.battenbook.bind.Rows;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Table;
import org.battenbook.evaluate.Results;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.value.Value;

/** Reads the rows of a table of parts or of stock, by the roles of its columns. */
final class SourceRows {
  private final Results results;
  private final PlanStatement.Source source;
  private final Rows rows;

  SourceRows(Results results, PlanStatement.Source source) {
    this.results = results;
    this.source = source;
    this.rows = results.rows(source.table());
  }

  int count() {
    return rows.count();
  }

  Table table() {
    return source.table();
  }

  String name(int row) {
    return rows.name(row);
  }

  /** What a row is called by people: by its label, where it has one. */
  String called(int row) {
    try {
      return says(PlanRole.LABEL) ? ((Value.Text) value(row, PlanRole.LABEL)).text() : name(row);
    } catch (NotPlannable unknown) {
      return name(row);
    }
  }

  boolean says(PlanRole role) {
    return source.column(role) != null;
  }

  /**
   * A value of a row.
   *
   * @throws NotPlannable where it is at fault or waits
   */
  Value value(int row, PlanRole role) throws NotPlannable {
    Column column = source.column(role);
    if (column == null) {
      throw new IllegalStateException("no column says " + role.words());
    }
    Value value = results.value(new Spot(column, row));
    if (!value.isKnown()) {
      throw new NotPlannable(unknown(column, value));
    }
    return value;
  }

  private static String unknown(Column column, Value value) {
    if (value instanceof Value.Waiting waiting) {
      return waiting.atFault()
          ? "its %s cannot be calculated: correct %s".formatted(column.name(), waiting.on())
          : "its %s cannot be calculated: enter %s".formatted(column.name(), waiting.on());
    }
    return value instanceof Value.Fault fault
        ? "its %s has an error: %s".formatted(column.name(), fault.message())
        : "its %s cannot be calculated".formatted(column.name());
  }

  /**
   * A quantity of a row in the base unit of its dimension.
   *
   * @param otherwise what holds where no column says it
   * @throws NotPlannable where it is not known, or not exactly, or has too many digits
   */
  Rational number(int row, PlanRole role, Rational otherwise) throws NotPlannable {
    if (!says(role)) {
      return otherwise;
    }
    Real number = ((Value.Amount) value(row, role)).quantity().number();
    if (number instanceof Rational exact) {
      return DigitLimit.writable(exact, "its " + said(role));
    }
    throw new NotPlannable("its %s is approximate; round it up to a step".formatted(said(role)));
  }

  /**
   * A quantity of a row, nothing where no column says it.
   *
   * @throws NotPlannable where it is not known, or not exactly, or below zero
   */
  Rational notNegative(int row, PlanRole role) throws NotPlannable {
    Rational number = number(row, role, Rational.ZERO);
    if (number.signum() < 0) {
      throw new NotPlannable("its %s must be at least 0".formatted(said(role)));
    }
    return number;
  }

  /**
   * How many.
   *
   * @throws NotPlannable where it is no whole number, is below zero or past all bounds
   */
  int count(int row, PlanRole role) throws NotPlannable {
    Rational number = number(row, role, Rational.ZERO);
    boolean counts = number.isWhole() && number.signum() >= 0;
    if (!counts) {
      throw new NotPlannable(
          "its %s must be a whole number, 0 or more; it is %s".formatted(said(role), number));
    }
    if (!number.isSmall() || number.longNumerator() > Integer.MAX_VALUE) {
      throw new NotPlannable("its %s is too large; it is %s".formatted(said(role), number));
    }
    return (int) number.longNumerator();
  }

  /**
   * Yes or no.
   *
   * @throws NotPlannable where it is not known
   */
  boolean yes(int row, PlanRole role, boolean otherwise) throws NotPlannable {
    return says(role) ? ((Value.YesNo) value(row, role)).yes() : otherwise;
  }

  /** What a column is called that says something. */
  private String said(PlanRole role) {
    Column column = source.column(role);
    return column == null ? role.words() : column.name().text();
  }
}
