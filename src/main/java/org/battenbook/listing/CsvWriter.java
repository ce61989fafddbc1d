package org.battenbook.listing;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

/**
 * Writes a .csv file as RFC 4180 has it, in UTF-8: commas, lines that end in CR LF, every cell that
 * is not empty in quotes, a quote within doubled.
 */
public final class CsvWriter {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setQuoteMode(QuoteMode.ALL_NON_NULL).get();

  private final CSVPrinter printer;

  /** A writer to a stream, which is left open. */
  public CsvWriter(OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    this.printer = new CSVPrinter(text, FORMAT);
  }

  /** A cell that holds words: one that begins like a formula is kept from being one. */
  public CsvWriter text(String words) throws IOException {
    return cell(FormulaGuard.put(words));
  }

  /** A cell that holds digits, a date, or nothing. */
  public CsvWriter plain(String digits) throws IOException {
    return cell(digits);
  }

  private CsvWriter cell(String content) throws IOException {
    printer.print(content.isEmpty() ? null : content);
    return this;
  }

  public void endRow() throws IOException {
    printer.println();
  }

  /** Writes out what is still held back. */
  public void finish() throws IOException {
    printer.flush();
  }
}
