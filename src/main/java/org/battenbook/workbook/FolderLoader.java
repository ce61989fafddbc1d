package org.battenbook.workbook;

import java.nio.file.Path;
import org.battenbook.book.Loader;
import org.battenbook.source.SourceText;

public final class FolderLoader {
  static Loader of(Path p) {
    return (a, b) -> SourceText.of(a, "");
  }
}
