package org.battenbook.book;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.bound.Bound;
import org.battenbook.picture.PictureSize;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/** The image files that texts of a job name, each looked into once. */
public final class Pictures {
  private final Loader loader;
  private final SourceText job;
  private final Map<String, Seen> seen = new ConcurrentHashMap<>();

  /**
   * What a name leads to.
   *
   * @param across pixels, 0 where it leads to no image
   * @param down pixels, likewise
   * @param trouble why there is no size; absent where there is, or no name
   */
  public record Seen(int across, int down, Loader.@Nullable Unreadable trouble) {
    static final Seen NOTHING = new Seen(0, 0, null);
  }

  Pictures(Loader loader, SourceText job) {
    this.loader = loader;
    this.job = job;
  }

  /** The image of a name, beside the job or in a folder below it; nothing for an empty name. */
  public Seen of(String file) {
    return file.isBlank() ? Seen.NOTHING : seen.computeIfAbsent(file.strip(), this::look);
  }

  private Seen look(String file) {
    try {
      if (seen.size() >= Bound.IMAGES.most()) {
        throw new Loader.Unreadable(
            "too-many-pictures",
            "the job names more than %s image files".formatted(Bound.IMAGES.shown()),
            "name fewer");
      }
      PictureSize size = loader.picture(file, job);
      return new Seen(size.across(), size.down(), null);
    } catch (Loader.Unreadable trouble) {
      return new Seen(0, 0, trouble);
    }
  }
}
