package org.battenbook.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.battenbook.source.NearNames;

/** What to do about a file that is not there. */
final class MissingFile {
  private static final int MOST_LISTED = 8;

  private final Path folder;
  private final String name;
  private final FileKind sought;

  private MissingFile(Path file, FileKind sought) {
    this.folder = FolderLoader.folderOf(file);
    this.name = String.valueOf(file.getFileName());
    this.sought = sought;
  }

  /** A cure, as the end of a message; empty where none is known. */
  static String cure(Path file, FileKind sought) {
    return new MissingFile(file, sought).cure();
  }

  private String cure() {
    if (ShippedStandards.has(name)) {
      return isInStandards()
          ? "your folder 'standards' is used instead of the shipped standards: put the file there"
              + " (battenbook standards --to FOLDER writes it out), or give that folder another name"
          : "write \"standards/%s\" for the file that comes with Battenbook".formatted(name);
    }
    List<String> beside = FolderLoader.filesIn(folder, sought);
    return NearNames.questionOr(list(beside), name, beside);
  }

  private boolean isInStandards() {
    return folder.endsWith(JobFolder.STANDARDS) && Files.isDirectory(folder);
  }

  private String list(List<String> beside) {
    if (beside.isEmpty()) {
      return "";
    }
    String more = beside.size() > MOST_LISTED ? ", …" : "";
    return "the %s in that folder: %s%s"
        .formatted(
            sought.several(), String.join(", ", beside.stream().limit(MOST_LISTED).toList()), more);
  }
}
