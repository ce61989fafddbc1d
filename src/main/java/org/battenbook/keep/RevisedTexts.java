package org.battenbook.keep;

import java.util.HashMap;
import java.util.Map;
import org.battenbook.book.Loader;
import org.battenbook.listing.Listing;
import org.battenbook.picture.PictureSize;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Reads files as they would be with other texts in some of them. */
final class RevisedTexts implements Loader {
  private final Loader loader;
  private final Map<String, String> texts = new HashMap<>();

  RevisedTexts(Loader loader, Map<SourceText, String> revised) {
    this.loader = loader;
    revised.forEach((source, text) -> texts.put(source.name(), text));
  }

  @Override
  public SourceText load(String path, @Nullable SourceText from) throws Unreadable {
    SourceText now = loader.load(path, from);
    String text = texts.get(now.name());
    return text == null ? now : SourceText.of(now.name(), text);
  }

  @Override
  public Listing list(String path, SourceText from, @Nullable String page) throws Unreadable {
    return loader.list(path, from, page);
  }

  @Override
  public PictureSize picture(String path, SourceText from) throws Unreadable {
    return loader.picture(path, from);
  }
}
