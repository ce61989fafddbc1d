package org.battenbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.battenbook.saving.Claim;
import org.battenbook.saving.NotWritten;
import org.battenbook.saving.Save;
import org.battenbook.source.SourceText;
import org.battenbook.workbook.ShippedStandards;

/** Writes other texts into the files of a workbook: into all of them, or into none. */
final class RevisedFiles {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private RevisedFiles() {}

  /**
   * Writes texts into the files that they were read from.
   *
   * @throws NotWritten where one cannot be written, or is not as it was read; all are then as they
   *     were before
   */
  static void write(Claim job, Map<SourceText, String> texts) throws NotWritten {
    Save save = Save.of(job);
    for (Map.Entry<SourceText, String> one : texts.entrySet()) {
      SourceText source = one.getKey();
      refuseShipped(source);
      Path path = Path.of(source.name());
      String mark = mark(path);
      save.replacing(path, bytes(mark + source.text()), bytes(mark + one.getValue()));
    }
    save.write();
  }

  private static void refuseShipped(SourceText source) throws NotWritten {
    if (ShippedStandards.isOne(source.name())) {
      throw new NotWritten(
          source.name(), "it comes with Battenbook; write such rows in a workbook of your own");
    }
  }

  /** What an editor may have put before the text; it is no part of it. */
  private static String mark(Path path) {
    byte[] mark = bytes(BYTE_ORDER_MARK);
    try (var in = Files.newInputStream(path)) {
      return Arrays.equals(in.readNBytes(mark.length), mark) ? BYTE_ORDER_MARK : "";
    } catch (IOException unreadable) {
      return "";
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
