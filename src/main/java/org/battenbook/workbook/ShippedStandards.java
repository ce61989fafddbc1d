package org.battenbook.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.battenbook.source.SourceText;
import org.battenbook.source.Utf8Reader;
import org.jspecify.annotations.Nullable;

/** The standards that come with the program: workbooks that a job can follow, and never changes. */
public final class ShippedStandards {
  private static final String PLACE = "/org/battenbook/standards/";

  /** Any of them, to find the others beside it. */
  private static final String FIRST = "frame-shop.batten";

  /** What the names of their texts begin with. No file of a job has such a name. */
  private static final String SHELF = "shipped standards/";

  private ShippedStandards() {}

  /** Whether a text with this name is one of them. */
  public static boolean isOne(String name) {
    return name.startsWith(SHELF);
  }

  /** Their file names, in order of the alphabet. */
  public static List<String> names() {
    URL first = Objects.requireNonNull(ShippedStandards.class.getResource(PLACE + FIRST));
    try {
      return first.openConnection() instanceof JarURLConnection jar
          ? namesIn(jar.getJarFile())
          : namesIn(Path.of(first.toURI()).resolveSibling(""));
    } catch (IOException | URISyntaxException broken) {
      throw new IllegalStateException("the program's own files cannot be read", broken);
    }
  }

  private static List<String> namesIn(JarFile jar) {
    String place = PLACE.substring(1);
    return sorted(
        jar.stream()
            .map(ZipEntry::getName)
            .filter(entry -> entry.startsWith(place))
            .map(entry -> entry.substring(place.length())));
  }

  private static List<String> namesIn(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return sorted(files.map(file -> String.valueOf(file.getFileName())));
    }
  }

  private static List<String> sorted(Stream<String> names) {
    return names.filter(FileKind.WORKBOOK::isNameOfOne).sorted().toList();
  }

  /** Whether one of them has this file name. */
  static boolean has(String file) {
    return FileKind.WORKBOOK.isNameOfOne(file)
        && !file.contains("/")
        && ShippedStandards.class.getResource(PLACE + file) != null;
  }

  /**
   * The content of one of them.
   *
   * @param file one of {@link #names}
   */
  public static byte[] bytes(String file) {
    return Objects.requireNonNull(found(file), file);
  }

  /** The text of one of them; null if none has that name. */
  static @Nullable SourceText text(String file) {
    byte[] bytes = has(file) ? found(file) : null;
    try {
      return bytes == null ? null : SourceText.of(SHELF + file, new Utf8Reader(file).text(bytes));
    } catch (Utf8Reader.NotUtf8 impossible) {
      throw new IllegalStateException(file, impossible);
    }
  }

  private static byte @Nullable [] found(String file) {
    try (InputStream in = ShippedStandards.class.getResourceAsStream(PLACE + file)) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException broken) {
      throw new IllegalStateException("the program's own files cannot be read", broken);
    }
  }
}
