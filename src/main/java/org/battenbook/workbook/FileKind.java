package org.battenbook.workbook;

import java.util.regex.Pattern;
import org.battenbook.bound.Bound;

/** A kind of file that a job reads: its endings, its largest size, and the words for it. */
enum FileKind {
  WORKBOOK("a workbook, a file that ends in .batten", "workbooks", Bound.WORKBOOK_FILE, "batten") {
    @Override
    String smaller() {
      return "move parts of it into workbooks that it follows, and long tables into lists";
    }
  },
  LIST("a list, a file that ends in .csv or .xlsx", "lists", Bound.LIST_FILE, "csv|xlsx") {
    @Override
    String smaller() {
      return "keep only the rows and columns that the table needs";
    }
  },
  PICTURE("an image file", "images", Bound.IMAGE_HEAD, "png|jpe?g|gif|bmp|tiff?|webp") {
    @Override
    String smaller() {
      return "";
    }
  };

  private final String one;
  private final String several;
  private final Bound most;
  private final Pattern names;

  FileKind(String one, String several, Bound most, String endings) {
    this.one = one;
    this.several = several;
    this.most = most;
    this.names = Pattern.compile("(?is).+\\.(%s)".formatted(endings));
  }

  String one() {
    return one;
  }

  String several() {
    return several;
  }

  /** The largest file that is read. */
  int mostBytes() {
    return most.mostBytes();
  }

  /** What to do with a larger one. */
  abstract String smaller();

  boolean isNameOfOne(String name) {
    return names.matcher(name).matches();
  }
}
