package org.battenbook.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.listing.Listing;
import org.battenbook.parse.WorkbookParser;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/** A job and all that it follows, each file read once; circles among them are found. */
public final class FollowedFiles {
  /** How many workbooks may follow one another in a chain. */
  static final int MOST_DEEP = 32;

  private final Loader loader;
  private final Diagnostics diagnostics;
  private final Map<String, WorkbookFile> read = new LinkedHashMap<>();
  private final Map<SourceText, Set<SourceText>> seen = new LinkedHashMap<>();
  private final List<WorkbookFile> inOrder = new ArrayList<>();
  private final List<SourceText> open = new ArrayList<>();
  private final IdentityHashMap<PlanSection, WorkbookFile> planTables = new IdentityHashMap<>();
  private final Map<List<Object>, Listing> lists = new HashMap<>();
  private final WorkbookFile job;
  private final Pictures pictures;

  private FollowedFiles(String job, Loader loader, Diagnostics diagnostics)
      throws Loader.Unreadable {
    this.loader = loader;
    this.diagnostics = diagnostics;
    this.job = visit(loader.load(job, null));
    this.pictures = new Pictures(loader, this.job.source());
  }

  /**
   * Reads a job with all that it follows.
   *
   * @param job the job's path, for the loader
   * @param diagnostics takes what is wrong with the text of every file
   * @throws Loader.Unreadable when the job itself cannot be read
   */
  public static FollowedFiles read(String job, Loader loader, Diagnostics diagnostics)
      throws Loader.Unreadable {
    return new FollowedFiles(job, loader, diagnostics);
  }

  WorkbookFile job() {
    return job;
  }

  /** Every file, those that are followed first. */
  List<WorkbookFile> inOrder() {
    return inOrder;
  }

  /** What each file sees: itself and all that it follows, near and far. */
  Map<SourceText, Set<SourceText>> seen() {
    return seen;
  }

  /** The list that a workbook names; read once. */
  Listing list(Quoted file, SourceText from, @Nullable String page) throws Loader.Unreadable {
    List<Object> named = List.of(file.text(), from, Optional.ofNullable(page));
    Listing known = lists.get(named);
    if (known == null) {
      known = loader.list(file.text(), from, page);
      lists.put(named, known);
    }
    return known;
  }

  /** The tables of a plan; read once, however often a book is put together. */
  WorkbookFile planTables(PlanSection plan) {
    return planTables.computeIfAbsent(
        plan, p -> WorkbookParser.parse(PlanTemplate.text(p), diagnostics));
  }

  /** The image files that the job's texts name. */
  Pictures pictures() {
    return pictures;
  }

  private WorkbookFile visit(SourceText text) {
    WorkbookFile file = WorkbookParser.parse(text, diagnostics);
    read.put(text.name(), file);
    open.add(text);
    Set<SourceText> sees = new LinkedHashSet<>();
    sees.add(text);
    for (Quoted follows : file.follows()) {
      follow(follows, text, sees);
    }
    open.remove(text);
    seen.put(text, sees);
    inOrder.add(file);
    return file;
  }

  private void follow(Quoted follows, SourceText from, Set<SourceText> sees) {
    try {
      SourceText text = loader.load(follows.text(), from);
      if (open.stream().anyMatch(o -> o.name().equals(text.name()))) {
        reportCircle(follows, text);
        return;
      }
      WorkbookFile known = read.get(text.name());
      if (known == null && open.size() >= MOST_DEEP) {
        diagnostics.fault(
            "follows-too-deep",
            follows.span(),
            "more than %d workbooks follow one another here".formatted(MOST_DEEP),
            "follow fewer standards, or put some of them together");
        return;
      }
      WorkbookFile followed = known == null ? visit(text) : known;
      sees.addAll(seen.getOrDefault(followed.source(), Set.of(followed.source())));
    } catch (Loader.Unreadable unreadable) {
      diagnostics.fault(
          unreadable.code(), follows.span(), unreadable.message(), unreadable.repair());
    }
  }

  private void reportCircle(Quoted follows, SourceText back) {
    List<String> names = new ArrayList<>();
    boolean inCircle = false;
    for (SourceText text : open) {
      inCircle |= text.name().equals(back.name());
      if (inCircle) {
        names.add(text.shortName());
      }
    }
    names.add(back.shortName());
    diagnostics.fault(
        "follows-circle",
        follows.span(),
        "workbooks follow each other in a circle: " + String.join(" → ", names),
        "take one 'follows' out of the circle");
  }
}
