package org.battenbook.book;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.battenbook.bound.Bound;
import org.battenbook.listing.Listing;
import org.battenbook.parse.WorkbookParser;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.Quoted;
import org.battenbook.syntax.WorkbookFile;
import org.jspecify.annotations.Nullable;

/**
 * A cache of the texts and lists of a job: each is loaded once and parsed once. A revision replaces
 * some texts, and shares the parsed files of the others.
 */
final class LoadedFiles {
  private final Loader loader;
  private final Map<Asked, SourceText> texts = new HashMap<>();
  private final Map<Asked, Listing> lists = new HashMap<>();
  private long listCells;
  private final IdentityHashMap<SourceText, Parsed> parsed = new IdentityHashMap<>();
  private final IdentityHashMap<PlanSection, Parsed> planTables = new IdentityHashMap<>();

  /** The loaded texts, by file name. */
  private final Map<String, SourceText> loaded = new LinkedHashMap<>();

  /** The texts that replace loaded ones, by file name. */
  private final Map<String, SourceText> revised = new LinkedHashMap<>();

  /**
   * A request for a file.
   *
   * @param from the name of the file that names it; empty for the job itself
   * @param page the page of a list; empty if none is named
   */
  private record Asked(String path, String from, String page) {}

  /** A parsed file, and the diagnostics of parsing it. */
  private record Parsed(WorkbookFile file, Diagnostics found) {}

  LoadedFiles(Loader loader) {
    this.loader = loader;
  }

  /**
   * A copy with new texts for some files.
   *
   * @param newTexts the new texts, by file name
   */
  LoadedFiles revised(Map<String, String> newTexts) {
    LoadedFiles copy = new LoadedFiles(loader);
    copy.texts.putAll(texts);
    copy.lists.putAll(lists);
    copy.listCells = listCells;
    copy.parsed.putAll(parsed);
    copy.planTables.putAll(planTables);
    copy.loaded.putAll(loaded);
    copy.revised.putAll(revised);
    newTexts.forEach(copy::revise);
    return copy;
  }

  /** Replaces the text of a file, and forgets the parsed file of its earlier revision. */
  private void revise(String name, String text) {
    SourceText earlier = revised.put(name, SourceText.of(name, text));
    parsed.remove(earlier);
    planTables.keySet().removeIf(plan -> plan.span().source() == earlier);
  }

  /** The new text of each file that differs from the loaded one, by the loaded text. */
  Map<SourceText, String> revisions() {
    Map<SourceText, String> revisions = new LinkedHashMap<>();
    revised.forEach(
        (name, text) -> {
          SourceText before = loaded.get(name);
          if (before != null && !before.text().equals(text.text())) {
            revisions.put(before, text.text());
          }
        });
    return revisions;
  }

  /**
   * The current text of a workbook.
   *
   * @param path the path as written
   * @param from the workbook that follows it; null for the job itself
   * @throws Loader.Unreadable if it cannot be read
   */
  SourceText text(String path, @Nullable SourceText from) throws Loader.Unreadable {
    Asked asked = new Asked(path, from == null ? "" : from.name(), "");
    SourceText text = texts.get(asked);
    if (text == null) {
      text = loader.load(path, from);
      texts.put(asked, text);
      loaded.putIfAbsent(text.name(), text);
    }
    return revised.getOrDefault(text.name(), text);
  }

  WorkbookFile parse(SourceText text, Diagnostics diagnostics) {
    return reported(parsed.computeIfAbsent(text, LoadedFiles::parse), diagnostics);
  }

  /** The tables of a plan. */
  WorkbookFile planTables(PlanSection plan, Diagnostics diagnostics) {
    return reported(
        planTables.computeIfAbsent(plan, p -> parse(PlanTemplate.text(p))), diagnostics);
  }

  private static Parsed parse(SourceText text) {
    Diagnostics found = new Diagnostics();
    return new Parsed(WorkbookParser.parse(text, found), found);
  }

  /** Passes the diagnostics of a parsed file on, and returns the file. */
  private static WorkbookFile reported(Parsed parsed, Diagnostics diagnostics) {
    diagnostics.addAll(parsed.found());
    return parsed.file();
  }

  /**
   * Reads a list that a workbook names.
   *
   * @param page the page of a spreadsheet file; null for its first page
   * @throws Loader.Unreadable if it cannot be read, or the lists of the job are too large
   */
  Listing list(Quoted file, SourceText from, @Nullable String page) throws Loader.Unreadable {
    Asked asked = new Asked(file.text(), from.name(), Optional.ofNullable(page).orElse(""));
    Listing known = lists.get(asked);
    if (known == null) {
      known = loader.list(file.text(), from, page);
      refuseTooMany(known);
      lists.put(asked, known);
    }
    return known;
  }

  private void refuseTooMany(Listing another) throws Loader.Unreadable {
    listCells += another.cellCount();
    if (Bound.LIST_CELLS.isPassedBy(listCells)) {
      throw new Loader.Unreadable(
          "lists-too-large",
          "with '%s', the lists of this job have more than %s filled cells"
              .formatted(another.name(), Bound.LIST_CELLS.shown()),
          "keep only the rows and columns that the tables need");
    }
  }

  /** The image files that texts in a job name. */
  Pictures pictures(SourceText job) {
    return new Pictures(loader, job);
  }
}
