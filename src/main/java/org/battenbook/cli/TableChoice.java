package org.battenbook.cli;

import java.util.List;
import org.battenbook.book.Table;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.Name;
import org.battenbook.workbook.Filled;
import org.jspecify.annotations.Nullable;

/** Which table of a job is meant: the one that is named, or the only one that can be. */
final class TableChoice {
  private final Filled filled;

  private TableChoice(Filled filled) {
    this.filled = filled;
  }

  /**
   * The table that is meant.
   *
   * @param name as a person says it; absent if it was not said
   * @throws NoSuchChoice with the tables there are, where none or several are meant
   */
  static Table of(Filled filled, @Nullable String name) {
    TableChoice choice = new TableChoice(filled);
    return name == null ? choice.unsaid() : choice.called(name);
  }

  private Table called(String name) {
    Table found = filled.book().table(Name.key(name));
    if (found == null) {
      String question = NearNames.question(name, names(tables()));
      throw new NoSuchChoice(
          "no table is called '%s'; %s"
              .formatted(name, question.isEmpty() ? "there are: " + list(tables()) : question));
    }
    return found;
  }

  private Table unsaid() {
    List<Table> own = tables().stream().filter(this::isFilledByJob).toList();
    List<Table> meant = own.isEmpty() ? tables() : own;
    if (meant.isEmpty()) {
      throw new NoSuchChoice("the job has no table to write; end the file's name in .json");
    }
    if (meant.size() > 1) {
      throw new NoSuchChoice("a .csv file holds one table; choose it with --table: " + list(meant));
    }
    return meant.get(0);
  }

  private boolean isFilledByJob(Table table) {
    return table.isWrittenIn(filled.book().source());
  }

  private List<Table> tables() {
    return List.copyOf(filled.book().tables());
  }

  private static List<String> names(List<Table> tables) {
    return tables.stream().map(Table::toString).toList();
  }

  private static String list(List<Table> tables) {
    return String.join(", ", names(tables));
  }
}
