package org.battenbook.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import org.battenbook.book.Loader;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Workbooks that stand in a test's own text. */
public final class TextLoader implements Loader {
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** A loader that knows one job, {@code job.batten}. */
  public static TextLoader of(String job) {
    return new TextLoader().with("job.batten", job);
  }

  public TextLoader with(String name, String text) {
    texts.put(name, text);
    return this;
  }

  /** Opens {@code job.batten}. */
  public Workbook open() {
    try {
      return Workbook.open("job.batten", this);
    } catch (Unreadable e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public SourceText load(String path, @Nullable SourceText from) throws Unreadable {
    String text = texts.get(path);
    if (text == null) {
      throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
    }
    return SourceText.of(path, text);
  }
}
