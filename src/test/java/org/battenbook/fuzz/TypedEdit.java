package org.battenbook.fuzz;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedPlace;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.ChangeEdit;
import org.battenbook.edit.ChangeRemoval;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.LineAddition;
import org.battenbook.edit.LineRemoval;
import org.battenbook.edit.RowAddition;
import org.battenbook.edit.RowCopy;
import org.battenbook.edit.RowMove;
import org.battenbook.edit.RowRemoval;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.workbook.Filled;
import org.jspecify.annotations.Nullable;

/**
 * An edit in one line: a word for its sort, the number of a place and of a row, and what is typed,
 * {@code cell 3 1 15 in}. Numbers beyond what there is begin again from 0.
 */
final class TypedEdit {
  private final Filled filled;
  private final int row;
  private final String typed;

  private TypedEdit(Filled filled, int row, String typed) {
    this.filled = filled;
    this.row = row;
    this.typed = typed;
  }

  /** The edit that a line means; absent where it means none of this workbook. */
  static @Nullable WorkbookEdit of(String line, Filled filled) {
    String[] words = line.split(" ", 4);
    List<Place> places =
        filled.checked().places().stream()
            .map(CheckedPlace::place)
            .filter(place -> place instanceof Line || place instanceof Column)
            .toList();
    if (words.length < 4 || places.isEmpty()) {
      return null;
    }
    Place place = places.get(number(words[1]) % places.size());
    TypedEdit edit = new TypedEdit(filled, number(words[2]), words[3]);
    return place instanceof Column column
        ? edit.ofColumn(words[0], column)
        : edit.ofLine(words[0], (Line) place);
  }

  /** The number that a word says; 0 where it says none. */
  static int number(String word) {
    return word.matches("\\d{1,4}") ? Integer.parseInt(word) : 0;
  }

  private @Nullable WorkbookEdit ofLine(String sort, Line line) {
    return switch (sort) {
      case "change" -> new ChangeEdit(line, -1, formula(), reason());
      case "unchange" -> new ChangeRemoval(line, -1);
      case "line" -> new LineAddition(line.page(), typed);
      case "remove" -> new LineRemoval(line);
      default -> new FormulaEdit(line, typed);
    };
  }

  private @Nullable WorkbookEdit ofColumn(String sort, Column column) {
    Table table = column.table();
    int rows = filled.rows(table).count();
    return switch (sort) {
      case "formula" -> new FormulaEdit(column, typed);
      case "change" -> new ChangeEdit(column, -1, formula(), reason());
      case "unchange" -> new ChangeRemoval(column, -1);
      case "add" -> new RowAddition(table, Map.of(column, typed));
      default -> rows == 0 ? null : ofRow(sort, column, row % rows);
    };
  }

  private WorkbookEdit ofRow(String sort, Column column, int at) {
    Table table = column.table();
    return switch (sort) {
      case "changecell" -> new ChangeEdit(column, at, formula(), reason());
      case "unchangecell" -> new ChangeRemoval(column, at);
      case "remove" -> new RowRemoval(table, at);
      case "move" -> new RowMove(table, at, number(typed) % (filled.rows(table).count() + 1));
      case "copy" ->
          new RowCopy(table, at, Map.of(Objects.requireNonNull(table.keyColumn()), typed));
      default -> new CellEdit(column, at, typed);
    };
  }

  private String formula() {
    return typed.split(" because ", 2)[0];
  }

  private @Nullable String reason() {
    String[] sides = typed.split(" because ", 2);
    return sides.length == 1 ? null : sides[1];
  }
}
