package org.battenbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.battenbook.source.SourceText;

/** Writes other texts into the files of a workbook: into all of them, or into none. */
final class RevisedFiles {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final List<Revised> files = new ArrayList<>();

  private record Revised(Path path, String before, String after) {}

  private RevisedFiles() {}

  /**
   * Writes texts into the files that they were read from.
   *
   * @throws SafeFile.NotWritten where one cannot be written, or is not as it was read; all are then
   *     as they were before
   */
  static void write(Map<SourceText, String> texts) throws SafeFile.NotWritten {
    RevisedFiles revised = new RevisedFiles();
    for (Map.Entry<SourceText, String> one : texts.entrySet()) {
      revised.files.add(revised(one.getKey(), one.getValue()));
    }
    revised.write();
  }

  private static Revised revised(SourceText source, String text) throws SafeFile.NotWritten {
    Path path = Path.of(source.name());
    byte[] before;
    try {
      before = Files.readAllBytes(path);
    } catch (IOException failure) {
      throw new SafeFile.NotWritten(path, "it cannot be read any more");
    }
    if (!Files.isWritable(path)) {
      throw new SafeFile.NotWritten(path, "it may not be changed; ask whoever owns it");
    }
    for (String mark : List.of("", BYTE_ORDER_MARK)) {
      if (Arrays.equals(before, bytes(mark + source.text()))) {
        return new Revised(path, mark + source.text(), mark + text);
      }
    }
    throw new SafeFile.NotWritten(path, "it was changed while it was planned; run it again");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private void write() throws SafeFile.NotWritten {
    for (int i = 0; i < files.size(); i++) {
      try {
        write(files.get(i).path, files.get(i).after);
      } catch (SafeFile.NotWritten failure) {
        for (Revised written : files.subList(0, i)) {
          write(written.path, written.before);
        }
        throw failure;
      }
    }
  }

  private static void write(Path path, String text) throws SafeFile.NotWritten {
    SafeFile.write(path, out -> out.write(bytes(text)));
  }
}
