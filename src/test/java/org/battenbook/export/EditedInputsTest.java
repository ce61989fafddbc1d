package org.battenbook.export;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bind.RowKeys;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedPlace;
import org.battenbook.export.file.Address;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Form;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FirstPlans;
import org.battenbook.workbook.FolderLoader;
import org.battenbook.workbook.TextLoader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The law that a file and its workbook stay alike: ten inputs are changed in the file, which Apache
 * POI's evaluator recalculates, and the same ten in the workbook, which is filled again.
 */
class EditedInputsTest {
  private static final int EDITS = 10;

  @ParameterizedTest
  @CsvSource({
    "workbooks/saltmarsh-ferry-museum.batten, 1",
    "workbooks/saltmarsh-ferry-museum.batten, 2",
    "workbooks/saltmarsh-ferry-museum.batten, 3",
    "workbooks/saltmarsh-ferry-museum.batten, 6",
    "workbooks/saltmarsh-ferry-museum.batten, 7",
    "workbooks/saltmarsh-ferry-museum.batten, 8",
    "workbooks/skerry-light-reading-room.batten, 9",
    "workbooks/skerry-light-reading-room.batten, 10",
    "workbooks/skerry-light-reading-room.batten, 11",
    "workbooks/skerry-light-reading-room.batten, 12",
    "workbooks/first-frame.batten, 4",
    "workbooks/first-frame.batten, 5"
  })
  void a_file_and_its_workbook_change_alike(String job, long seed)
      throws IOException, Loader.Unreadable {
    Random random = new Random(seed);
    Filled filled = FirstPlans.fill(job, FolderLoader.of(job));
    Map<Spot, Address> places = Places.of(filled);
    List<String> edits = new ArrayList<>();
    try (XSSFWorkbook book = Recalculation.exported(filled)) {
      while (edits.size() < EDITS) {
        List<Spot> inputs = inputs(filled, places);
        Spot spot = inputs.get(random.nextInt(inputs.size()));
        Cell cell = Places.cell(book, requireNonNull(places.get(spot)));
        Optional<Filled> edited = edit(filled, spot, cell, random);
        filled = edited.orElse(filled);
        edited.ifPresent(
            e -> edits.add(e.value(spot).words() + " = " + e.value(spot).shown().text()));
      }
      assertThat(Recalculation.agrees(filled, book)).as("seed %d, %s", seed, edits).isPositive();
    }
  }

  @ParameterizedTest
  @CsvSource({"3 in, 3", "1 in, 1", "8 in, 8", "2.0001 in, 2.0001"})
  void a_count_that_an_edit_spoils_is_an_error_in_both(String width, double inFile)
      throws IOException {
    String job =
        """
        page p
          width = 6 in
          count : count = width / (2 in) - 1
          twice = 2 * count
          table t by k
            given
              k : text
              n : count = width / (2 in) - 1
            worked out
              more : count = n + 1
          rows of t
            k   | n
            "a" |
            "b" | width / (4 in) + 1/2
        """;
    Filled before = filled(job);
    try (XSSFWorkbook book = Recalculation.exported(before)) {
      Places.cell(book, Places.at(before, before.spot("width"))).setCellValue(inFile);
      Filled after = filled(job.replace("6 in", width));
      assertThat(Recalculation.agrees(after, book)).isEqualTo(6);
    }
    assertThat(Recalculation.fixed(before)).isEmpty();
  }

  private static Filled filled(String job) {
    return TextLoader.of("workbook \"Job\"\n" + job).open().fill();
  }

  /** What a person wrote as a number or as the name of a row. */
  private static List<Spot> inputs(Filled filled, Map<Spot, Address> places) {
    return places.keySet().stream().filter(spot -> isInput(filled, spot)).toList();
  }

  private static boolean isInput(Filled filled, Spot spot) {
    CheckedPlace checked = filled.checked().place(spot.place());
    Value value = filled.results().value(spot);
    boolean written =
        spot.place().table() != null
            ? spot.place().isGiven()
                && !spot.place().comesWithRow()
                && filled.results().decisions().written(spot) != null
            : checked.formula() != null && checked.formula().literal().isPresent();
    boolean changes = value instanceof Value.Row || isPositive(value);
    return written && changes;
  }

  private static boolean isPositive(Value value) {
    return value instanceof Value.Amount amount && amount.quantity().number().signum() > 0;
  }

  /** The workbook with an edit; empty where it would open other rows, as no file can. */
  private static Optional<Filled> edit(Filled filled, Spot spot, Cell cell, Random random) {
    Value now = filled.results().value(spot);
    String entry = now instanceof Value.Row row ? name(filled, row, random) : size(filled, spot);
    Edit edit =
        spot.place() instanceof Column column
            ? filled.withCell(column, spot.row(), entry)
            : filled.withFormula(spot.place(), entry);
    assertThat(edit.diagnostics()).as(spot + " = " + entry).isEmpty();
    Filled edited = requireNonNull(edit.filled());
    if (edited.book() != filled.book() || !rowNames(edited).equals(rowNames(filled))) {
      return Optional.empty();
    }
    enter(edited, spot, cell);
    return Optional.of(edited);
  }

  private static String name(Filled filled, Value.Row row, Random random) {
    Table table = requireNonNull(filled.book().table(row.table()));
    RowKeys keys = filled.rows(table).keys();
    String name = keys.name(random.nextInt(filled.rows(table).count()));
    return "\"" + name.replace("\"", "\"\"") + "\"";
  }

  /** An eighth more, or one more of what is counted. */
  private static String size(Filled filled, Spot spot) {
    Place place = spot.place();
    Quantity quantity = ((Value.Amount) filled.results().value(spot)).quantity();
    Rational now = (Rational) quantity.number();
    String unit = quantity.dimension().baseSymbol();
    boolean counted = unit.isEmpty() && now.isWhole();
    Rational then = counted ? now.plus(Rational.ONE) : now.times(Rational.of(9, 8));
    assertThat(filled.checked().place(place).kind()).isInstanceOf(Kind.Measured.class);
    String number = then.numerator() + " * (1 / " + then.denominator() + ")";
    if (unit.startsWith("1/")) {
      return number + " / (1 " + unit.substring(2) + ")";
    }
    return unit.isEmpty() ? number : number + " * (1 " + unit + ")";
  }

  private static List<List<String>> rowNames(Filled filled) {
    return filled.book().tables().stream().map(table -> filled.rows(table).keys().names()).toList();
  }

  private static void enter(Filled edited, Spot spot, Cell cell) {
    if (cell.getCellType() == CellType.FORMULA) {
      cell.removeFormula();
    }
    Value value = edited.results().value(spot);
    if (value instanceof Value.Amount amount) {
      Form form = edited.checked().place(spot.place()).form();
      Real number = form == null ? amount.quantity().number() : amount.quantity().in(form.unit());
      cell.setCellValue(number.toDouble());
    } else {
      cell.setCellValue(((Value.Row) value).name());
    }
  }
}
