package org.battenbook.listing;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The kinds of files that lists are read from. */
enum ListFormat {
  CSV(".csv") {
    @Override
    List<List<String>> read(String name, byte[] bytes, @Nullable String page) throws BadList {
      if (page != null) {
        throw new BadList(
            "list-without-pages",
            "'%s' has no pages: a .csv file is one table".formatted(name),
            "remove 'page'");
      }
      return CsvReader.read(name, bytes);
    }
  },
  XLSX(".xlsx") {
    @Override
    List<List<String>> read(String name, byte[] bytes, @Nullable String page) throws BadList {
      return XlsxReader.read(name, bytes, page);
    }
  };

  private final String ending;

  ListFormat(String ending) {
    this.ending = ending;
  }

  abstract List<List<String>> read(String name, byte[] bytes, @Nullable String page) throws BadList;

  /** The format of a file by its name's ending. */
  static ListFormat called(String name) throws BadList {
    String low = name.toLowerCase(Locale.ROOT);
    for (ListFormat format : values()) {
      if (low.endsWith(format.ending)) {
        return format;
      }
    }
    throw new BadList(
        "list-ending",
        "'%s' is not a list: its name must end in .csv or .xlsx".formatted(name),
        "save it as .csv or .xlsx");
  }
}
