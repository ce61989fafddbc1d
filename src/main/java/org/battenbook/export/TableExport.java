package org.battenbook.export;

import java.io.IOException;
import java.io.OutputStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.listing.CsvWriter;
import org.battenbook.number.PlainDecimal;
import org.battenbook.unit.Form;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.jspecify.annotations.Nullable;

/**
 * One table of a filled workbook as a .csv file for other programs. Each heading names the unit of
 * its column: {@code width (in)}. Numbers are decimals in that unit: exact if the decimal ends,
 * else to fifteen digits. A value with an error, or one that still needs an input, is an empty
 * cell.
 */
public final class TableExport {
  private final Filled filled;
  private final Table table;

  private TableExport(Filled filled, Table table) {
    this.filled = filled;
    this.table = table;
  }

  /**
   * Writes the table. The stream stays open.
   *
   * @throws org.battenbook.workbook.PlansPending when plans are still to be made
   */
  public static void write(Filled filled, Table table, OutputStream out) throws IOException {
    filled.requirePlans();
    new TableExport(filled, table).write(new CsvWriter(out));
  }

  private void write(CsvWriter csv) throws IOException {
    for (Column column : table.columns()) {
      csv.text(heading(column));
    }
    csv.endRow();
    for (int row = 0; row < filled.rows(table).count(); row++) {
      for (Column column : table.columns()) {
        cell(filled.value(column, row).value(), form(column), csv);
      }
      csv.endRow();
    }
    csv.finish();
  }

  private String heading(Column column) {
    Form form = form(column);
    String unit = form == null ? "" : form.unit().symbol();
    String name = column.name().text();
    return unit.isEmpty() ? name : "%s (%s)".formatted(name, unit);
  }

  private @Nullable Form form(Column column) {
    return filled.checked().place(column).form();
  }

  private static void cell(Value value, @Nullable Form form, CsvWriter csv) throws IOException {
    if (!value.isKnown()) {
      csv.plain("");
    } else if (value instanceof Value.Amount amount) {
      csv.plain(
          PlainDecimal.of(
              form == null ? amount.quantity().number() : amount.quantity().in(form.unit())));
    } else if (value instanceof Value.Text || value instanceof Value.Row) {
      csv.text(ShownValue.of(value, null).text());
    } else {
      csv.plain(ShownValue.of(value, null).text());
    }
  }
}
