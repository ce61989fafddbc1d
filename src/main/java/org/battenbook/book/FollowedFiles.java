package org.battenbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.battenbook.bound.Bound;
import org.battenbook.listing.Listing;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.Follows;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/**
 * A job and all files that it follows, directly or through others. It reads each file once, and
 * reports files that follow each other in a circle.
 */
public final class FollowedFiles {
  private final String jobPath;
  private final LoadedFiles files;
  private final Diagnostics diagnostics;
  private final Map<String, WorkbookFile> read = new LinkedHashMap<>();
  private final Map<SourceText, Set<SourceText>> seen = new LinkedHashMap<>();
  private final List<WorkbookFile> inOrder = new ArrayList<>();

  /** The chain of files being read now, from the job on. */
  private final List<SourceText> open = new ArrayList<>();

  /** Whether a followed file is missing: then most names would be unknown. */
  private boolean isIncomplete;

  private final JobSize size;
  private final WorkbookFile job;
  private final Pictures pictures;

  private FollowedFiles(
      String job, LoadedFiles files, @Nullable Pictures pictures, Diagnostics diagnostics)
      throws Loader.Unreadable {
    this.jobPath = job;
    this.files = files;
    this.diagnostics = diagnostics;
    this.size = new JobSize(diagnostics);
    this.job = visit(files.text(job, null));
    if (isIncomplete) {
      diagnostics.stop();
    }
    this.pictures = pictures == null ? files.pictures(this.job.source()) : pictures;
  }

  /**
   * Reads a job and all files that it follows.
   *
   * @param job the job's path, for the loader
   * @param diagnostics receives syntax errors and files that cannot be read
   * @throws Loader.Unreadable if the job itself cannot be read
   */
  public static FollowedFiles read(String job, Loader loader, Diagnostics diagnostics)
      throws Loader.Unreadable {
    return new FollowedFiles(job, new LoadedFiles(loader), null, diagnostics);
  }

  /**
   * The same job with new texts for some of its files. Other files are not parsed again. Files that
   * the new texts follow for the first time are loaded.
   *
   * @param texts the new text of each file that changes, by file name
   * @param diagnostics receives syntax errors and files that cannot be read
   */
  public FollowedFiles revised(Map<String, String> texts, Diagnostics diagnostics) {
    try {
      return new FollowedFiles(jobPath, files.revised(texts), pictures, diagnostics);
    } catch (Loader.Unreadable impossible) {
      throw new IllegalStateException("the job was loaded before", impossible);
    }
  }

  /** The new text of each file that differs from the loaded one, by the loaded text. */
  public Map<SourceText, String> revisions() {
    return files.revisions();
  }

  /** The current text of a file by name; null if the job has no such file. */
  public @Nullable String text(String name) {
    WorkbookFile file = read.get(name);
    return file == null ? null : file.source().text();
  }

  /** The job's own file. */
  public WorkbookFile job() {
    return job;
  }

  /** All files, each after the files that it follows; the job is last. */
  public List<WorkbookFile> inOrder() {
    return inOrder;
  }

  /** The files that each file sees: itself and all that it follows, directly or through others. */
  Map<SourceText, Set<SourceText>> seen() {
    return seen;
  }

  /**
   * Reads a list that a workbook names.
   *
   * @param page the page of a spreadsheet file; null for its first page
   * @throws Loader.Unreadable if it cannot be read
   */
  Listing list(Quoted file, SourceText from, @Nullable String page) throws Loader.Unreadable {
    return files.list(file, from, page);
  }

  /** The tables of a plan. */
  WorkbookFile planTables(PlanSection plan) {
    return files.planTables(plan, diagnostics);
  }

  /** The image files that texts in the job name. */
  Pictures pictures() {
    return pictures;
  }

  private WorkbookFile visit(SourceText text) {
    WorkbookFile file = files.parse(text, diagnostics);
    size.add(file);
    read.put(text.name(), file);
    open.add(text);
    Set<SourceText> sees = new LinkedHashSet<>();
    sees.add(text);
    for (Follows follows : file.follows()) {
      follow(follows, text, sees);
    }
    open.remove(text);
    seen.put(text, sees);
    inOrder.add(file);
    return file;
  }

  private void follow(Follows statement, SourceText from, Set<SourceText> sees) {
    if (diagnostics.isRefused()) {
      return;
    }
    Quoted follows = statement.path();
    try {
      SourceText text = files.text(follows.text(), from);
      if (open.stream().anyMatch(o -> o.name().equals(text.name()))) {
        reportCircle(follows, text);
        return;
      }
      WorkbookFile known = read.get(text.name());
      if (known == null && open.size() >= Bound.FOLLOWS_CHAIN.most()) {
        diagnostics.fault(
            "follows-too-deep",
            follows.span(),
            "more than %s workbooks follow each other here".formatted(Bound.FOLLOWS_CHAIN.shown()),
            "follow fewer workbooks, or combine some of them");
        return;
      }
      if (known == null && !size.admits(text, follows.span())) {
        return;
      }
      WorkbookFile followed = known == null ? visit(text) : known;
      checkEdition(statement, followed);
      sees.addAll(seen.getOrDefault(followed.source(), Set.of(followed.source())));
    } catch (Loader.Unreadable unreadable) {
      isIncomplete = true;
      unreadable.report(follows.span(), diagnostics);
    }
  }

  private void checkEdition(Follows statement, WorkbookFile followed) {
    Quoted asked = statement.edition();
    String found = edition(followed);
    if (asked == null || asked.text().equals(found)) {
      return;
    }
    diagnostics.caution(
        "other-edition",
        asked.span(),
        "'%s' is %s; this workbook asks for edition \"%s\""
            .formatted(
                statement.path().text(),
                found.isEmpty() ? "a file without an edition" : "edition \"" + found + "\"",
                asked.text()),
        found.isEmpty()
            ? "compare the results with earlier ones, then leave the edition out"
            : "compare the results with earlier ones, then write edition \"%s\"".formatted(found));
  }

  /**
   * The edition that a file states, else that of the first file that it follows and that has one.
   */
  private String edition(WorkbookFile file) {
    return seen.getOrDefault(file.source(), Set.of()).stream()
        .map(text -> Objects.requireNonNull(read.get(text.name())).edition())
        .filter(Objects::nonNull)
        .map(Quoted::text)
        .findFirst()
        .orElse("");
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
        "remove one 'follows' of the circle");
  }
}
