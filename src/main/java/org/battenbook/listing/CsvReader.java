package org.battenbook.listing;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.battenbook.bound.Bound;
import org.battenbook.source.Utf8Reader;

/**
 * Reads a .csv file as RFC 4180 has it, in UTF-8; a semicolon may stand for the comma, and any line
 * break for CR LF.
 */
final class CsvReader {
  private final String name;
  private final RowGatherer rows;

  private CsvReader(String name) {
    this.name = name;
    this.rows = new RowGatherer(name);
  }

  static List<List<String>> read(String name, byte[] bytes) throws BadList {
    try {
      return new CsvReader(name).read(new Utf8Reader(name).text(bytes));
    } catch (Utf8Reader.NotUtf8 no) {
      throw new BadList("not-utf-8", no.message(), no.repair());
    }
  }

  private List<List<String>> read(String text) throws BadList {
    refuseLongLines(text);
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator(text)).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord row : parser) {
        add(row);
      }
    } catch (IOException | UncheckedIOException quotes) {
      throw new BadList(
          "quotes-in-list",
          "the quotes in row %s of '%s' do not match".formatted(rows.rowNumber(), name),
          "put a cell with quotes in quotes, and write each quote inside it twice");
    }
    return rows.rows();
  }

  private void add(CSVRecord row) throws BadList {
    for (int column = 0; column < row.size(); column++) {
      rows.cell(column, FormulaGuard.taken(row.get(column)));
    }
    rows.endRow();
  }

  private void refuseLongLines(String text) throws BadList {
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n' || text.charAt(i) == '\r') {
        start = i + 1;
      } else if (i - start >= Bound.LIST_LINE.most()) {
        throw new BadList(
            "list-too-large",
            "a line of '%s' has more than %s".formatted(name, Bound.LIST_LINE.shown()),
            "check that it is a list with one line for each row");
      }
    }
  }

  /** A semicolon, if one stands outside of quotes in the first line that is not blank. */
  private static char separator(String text) {
    boolean inQuotes = false;
    boolean blank = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!inQuotes && c == ';') {
        return ';';
      }
      if (!inQuotes && !blank && (c == '\n' || c == '\r')) {
        return ',';
      }
      inQuotes ^= c == '"';
      blank &= Character.isWhitespace(c) || c == ',';
    }
    return ',';
  }
}
