package org.battenbook.workbook;

import org.battenbook.picture.PictureSize;

/** What kind of file is looked for, and the words for it. */
enum Sought {
  WORKBOOK("a workbook, a file that ends in .batten", "workbooks", 64 << 20, "batten") {
    @Override
    String smaller() {
      return "is it a workbook? a large one can be parted with 'follows'";
    }
  },
  LIST("a list, a file that ends in .csv or .xlsx", "lists", 16 << 20, "csv|xlsx") {
    @Override
    String smaller() {
      return "keep only the rows and columns that the table needs";
    }
  },
  PICTURE("an image file", "images", PictureSize.HEAD, "png|jpe?g|gif|bmp|tiff?|webp") {
    @Override
    String smaller() {
      return "";
    }
  };

  private final String one;
  private final String several;
  private final int mostBytes;
  private final String endings;

  Sought(String one, String several, int mostBytes, String endings) {
    this.one = one;
    this.several = several;
    this.mostBytes = mostBytes;
    this.endings = endings;
  }

  String one() {
    return one;
  }

  String several() {
    return several;
  }

  /** The largest file that is read. */
  int mostBytes() {
    return mostBytes;
  }

  /** What to do with a larger one. */
  abstract String smaller();

  boolean isNameOfOne(String name) {
    return name.matches("(?is).+\\.(%s)".formatted(endings));
  }
}
