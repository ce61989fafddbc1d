package org.battenbook.book;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.bound.Bound;
import org.battenbook.picture.PictureSize;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/** A cache of the image files that texts in a job name. It is thread-safe. */
public final class Pictures {
  private final Loader loader;
  private final SourceText job;
  private final Map<String, Seen> seen = new ConcurrentHashMap<>();

  /**
   * The size of an image.
   *
   * @param across the width in pixels; 0 if there is no image
   * @param down the height in pixels; 0 if there is no image
   * @param trouble why there is no size; null if there is one, or no image is named
   */
  public record Seen(int across, int down, Loader.@Nullable Unreadable trouble) {
    static final Seen NOTHING = new Seen(0, 0, null);
  }

  Pictures(Loader loader, SourceText job) {
    this.loader = loader;
    this.job = job;
  }

  /** The image with a path relative to the job; {@link Seen#NOTHING} for a blank path. */
  public Seen of(String file) {
    return file.isBlank() ? Seen.NOTHING : seen.computeIfAbsent(file.strip(), this::look);
  }

  private Seen look(String file) {
    try {
      if (seen.size() >= Bound.IMAGES.most()) {
        throw new Loader.Unreadable(
            "too-many-pictures",
            "the job names more than %s image files".formatted(Bound.IMAGES.shown()),
            "name fewer images");
      }
      PictureSize size = loader.picture(file, job);
      return new Seen(size.across(), size.down(), null);
    } catch (Loader.Unreadable trouble) {
      return new Seen(0, 0, trouble);
    }
  }
}
