package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.book.Loader;
import org.battenbook.cutting.Planning;
import org.battenbook.listing.BadList;
import org.battenbook.listing.Listing;
import org.battenbook.planstore.PlanStore;
import org.battenbook.source.SourceText;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;

/**
 * A job and the files beside it, in one text: {@code job.batten} first, and each further file below
 * a line {@code --- file NAME}.
 */
final class FilesInOneText implements Loader {
  static final String JOB = "job.batten";

  private static final String FILE = "--- file ";

  /** File systems take names of 255 bytes. */
  private static final int MOST_OF_A_NAME = 60;

  private final Map<String, byte[]> files = new LinkedHashMap<>();

  FilesInOneText(String text) {
    String[] parts = text.split("(?md)^" + FILE, -1);
    with(JOB, parts[0].getBytes(UTF_8));
    for (int i = 1; i < parts.length; i++) {
      String[] file = parts[i].split("\r?\n", 2);
      with(file[0], (file.length == 1 ? "" : file[1]).getBytes(UTF_8));
    }
  }

  /** The files in the bytes of a fuzzed input; what is not UTF-8 in them is replaced. */
  static FilesInOneText of(byte[] input) {
    return new FilesInOneText(new String(input, UTF_8));
  }

  static FilesInOneText of(Map<String, String> texts) {
    FilesInOneText files = new FilesInOneText("");
    texts.forEach((name, text) -> files.with(name, text.getBytes(UTF_8)));
    return files;
  }

  /** The one text of files. */
  static String joined(Map<String, String> texts) {
    StringBuilder all = new StringBuilder(texts.getOrDefault(JOB, ""));
    texts.forEach(
        (name, text) -> all.append(name.equals(JOB) ? "" : "\n" + FILE + name + "\n" + text));
    return all.toString();
  }

  FilesInOneText with(String name, byte[] content) {
    files.put(name, content);
    return this;
  }

  /** Opens the job with plans that take little time. */
  Workbook open() {
    try {
      return Workbook.open(JOB, this, planning());
    } catch (Unreadable impossible) {
      throw new IllegalStateException("the job is always there", impossible);
    }
  }

  private static Planning planning() {
    return new Planning(false, (plan, material) -> new ShortPatience(), PlanStore.NONE, false);
  }

  /** The texts by the names of their files. */
  Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    files.forEach((name, content) -> texts.put(name, new String(content, UTF_8)));
    return texts;
  }

  /**
   * Writes the files into a folder that had other ones; those whose names lead out are left out.
   */
  void writeInto(Path folder) throws IOException {
    try (DirectoryStream<Path> earlier = Files.newDirectoryStream(folder)) {
      for (Path file : earlier) {
        Files.delete(file);
      }
    }
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (isPlainName(file.getKey())) {
        Files.write(folder.resolve(file.getKey()), file.getValue());
      }
    }
  }

  private static boolean isPlainName(String name) {
    try {
      Path path = Path.of(name);
      return path.equals(path.getFileName())
          && name.length() <= MOST_OF_A_NAME
          && !name.matches("\\.*");
    } catch (InvalidPathException noName) {
      return false;
    }
  }

  /** Whether there is a file of this name. */
  boolean has(String name) {
    return files.containsKey(name);
  }

  @Override
  public SourceText load(String path, @Nullable SourceText from) throws Unreadable {
    return SourceText.of(path, new String(content(path), UTF_8));
  }

  @Override
  public Listing list(String path, SourceText from, @Nullable String page) throws Unreadable {
    try {
      Listing.checkEnding(path);
      return Listing.read(path, content(path), page);
    } catch (BadList bad) {
      throw new Unreadable(bad.code(), bad.message(), bad.repair());
    }
  }

  private byte[] content(String path) throws Unreadable {
    byte[] content = files.get(path);
    if (content == null) {
      throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
    }
    return content;
  }
}
