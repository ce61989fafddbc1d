package org.battenbook.bind;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.book.Book;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.Name;

/**
 * Finds a value by the name that a person types: {@code saw kerf}, {@code allowances.saw kerf},
 * {@code top rail of Tide chart, north} or {@code face of mouldings "ash cap"}.
 */
public final class SpotFinder {
  private final Book book;
  private final BookRows rows;

  public SpotFinder(Book book, BookRows rows) {
    this.book = book;
    this.rows = rows;
  }

  /**
   * The result of a search.
   *
   * @param spots all values that the name can mean
   * @param message why there is not exactly one; empty if there is
   */
  public record Answer(List<Spot> spots, String message) {
    public boolean isFound() {
      return spots.size() == 1;
    }
  }

  /** Finds a value by name. */
  public Answer find(String name) {
    String wanted = name.strip();
    Set<Spot> spots = new LinkedHashSet<>();
    lines(wanted, spots);
    if (spots.isEmpty()) {
      cells(wanted, spots);
      spots.removeIf(spot -> spots.stream().anyMatch(other -> isTakenFrom(spot, other)));
    }
    List<Spot> found = List.copyOf(spots);
    if (found.size() == 1) {
      return new Answer(found, "");
    }
    return new Answer(found, found.isEmpty() ? missing(wanted) : ambiguous(wanted, found));
  }

  /**
   * Whether a cell gets its value from another one, since its row is opened from that row. The
   * other cell is then the one to find.
   */
  private boolean isTakenFrom(Spot spot, Spot other) {
    return spot.place() instanceof Column column
        && other.place() instanceof Column there
        && rows.rows(column.table())
            .opening(spot.row())
            .filter(o -> o.from() == there.table() && o.cells().containsKey(column))
            .isPresent();
  }

  private void lines(String wanted, Set<Spot> spots) {
    String key = Name.key(wanted);
    for (Page page : book.pages()) {
      Line line = page.line(key);
      if (line != null) {
        spots.add(new Spot(line, 0));
      }
    }
    int dot = wanted.indexOf('.');
    if (spots.isEmpty() && dot > 0) {
      Page page = book.page(Name.key(wanted.substring(0, dot)));
      Line line = page == null ? null : page.line(Name.key(wanted.substring(dot + 1)));
      if (line != null) {
        spots.add(new Spot(line, 0));
      }
    }
  }

  /** Adds every way to read a name as a column, {@code of}, and a row. */
  private void cells(String wanted, Set<Spot> spots) {
    String words = " of ";
    for (int at = wanted.indexOf(words); at >= 0; at = wanted.indexOf(words, at + 1)) {
      String column = Name.key(wanted.substring(0, at));
      String row = wanted.substring(at + words.length()).strip();
      for (Table table : book.tables()) {
        Column found = table.column(column);
        if (found != null) {
          keysOf(table).row(rowName(table, row)).ifPresent(r -> spots.add(new Spot(found, r)));
        }
      }
    }
  }

  /** The name of a row without quotes and without the table's name before it. */
  private static String rowName(Table table, String row) {
    String key = Name.key(row);
    String prefix = table.key() + " \"";
    String bare = key.startsWith(prefix) ? row.substring(row.indexOf('"')) : row;
    boolean quoted = bare.length() >= 2 && bare.startsWith("\"") && bare.endsWith("\"");
    return quoted ? bare.substring(1, bare.length() - 1).replace("\"\"", "\"") : bare;
  }

  private String ambiguous(String wanted, List<Spot> found) {
    List<String> ways = new ArrayList<>();
    for (Spot spot : found) {
      Table table = spot.place().table();
      ways.add(
          table == null
              ? "%s.%s".formatted(spot.place().page(), spot.place().label())
              : "%s of %s \"%s\""
                  .formatted(spot.place().label(), table, keysOf(table).name(spot.row())));
    }
    return "'%s' can mean %s; name one of them".formatted(wanted, String.join(" or ", ways));
  }

  private String missing(String wanted) {
    String words = " of ";
    int at = wanted.indexOf(words);
    if (at < 0) {
      return noLine(wanted);
    }
    String column = wanted.substring(0, at);
    String row = wanted.substring(at + words.length());
    List<Table> having =
        book.tables().stream().filter(t -> t.column(Name.key(column)) != null).toList();
    if (having.isEmpty()) {
      List<String> columns =
          book.tables().stream()
              .flatMap(table -> table.columns().stream())
              .map(c -> c.name().text())
              .toList();
      return withQuestion(
          "there is no column '%s'".formatted(column), NearNames.question(column, columns));
    }
    List<String> rows = new ArrayList<>();
    having.forEach(table -> rows.addAll(keysOf(table).names()));
    String bare = rowName(having.get(0), row.strip());
    return withQuestion(
        "no row of %s is called \"%s\""
            .formatted(String.join(" or ", having.stream().map(t -> "'" + t + "'").toList()), bare),
        NearNames.question(bare, rows));
  }

  private String noLine(String wanted) {
    List<String> tables =
        book.tables().stream()
            .filter(table -> table.column(Name.key(wanted)) != null)
            .map(Table::toString)
            .toList();
    if (!tables.isEmpty()) {
      Table table = book.table(Name.key(tables.get(0)));
      String example =
          table == null || keysOf(table).names().isEmpty() ? "…" : keysOf(table).name(0);
      return "'%s' is a column of '%s'; name the row: '%s of %s'"
          .formatted(wanted, String.join("' and '", tables), wanted, example);
    }
    List<String> names = new ArrayList<>();
    for (Page page : book.pages()) {
      page.lines().forEach(line -> names.add(line.name().text()));
      page.tables().forEach(t -> t.columns().forEach(c -> names.add(c.name().text())));
    }
    return withQuestion(
        "there is nothing called '%s'".formatted(wanted), NearNames.question(wanted, names));
  }

  private static String withQuestion(String message, String question) {
    return question.isEmpty() ? message : message + "; " + question;
  }

  private RowKeys keysOf(Table table) {
    return rows.rows(table).keys();
  }
}
