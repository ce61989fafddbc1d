package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostic;

/** A job that is written in a test: filled, refused, and read as a person reads it. */
final class WrittenJob {
  private WrittenJob() {}

  static Workbook read(String job) {
    return TextLoader.of("workbook \"Job\"\n" + job).open();
  }

  static Filled filled(String job) {
    Workbook workbook = read(job);
    assertThat(workbook.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    return workbook.fill();
  }

  /** The codes of what is wrong with it. */
  static List<String> codes(String job) {
    return read(job).diagnostics().stream()
        .filter(Diagnostic::isFault)
        .map(Diagnostic::code)
        .toList();
  }

  static Table table(Filled filled, String name) {
    return Objects.requireNonNull(filled.book().table(name));
  }

  /** What the rows of a table are called. */
  static List<String> names(Filled filled, String table) {
    return filled.rows(table(filled, table)).keys().names();
  }

  /** What a column shows, row by row. */
  static List<String> column(Filled filled, String table, String name) {
    Column column = Objects.requireNonNull(table(filled, table).column(name));
    return IntStream.range(0, filled.rows(column.table()).count())
        .mapToObj(row -> filled.value(column, row).shown().text())
        .toList();
  }

  static String shown(Filled filled, String place) {
    return filled.find(place).shown().text();
  }
}
