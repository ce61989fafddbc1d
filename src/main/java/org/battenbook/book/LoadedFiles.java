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
 * The texts and lists that a job was read from. Each is loaded once and parsed once. A revision has
 * other texts in place of some, and shares what was parsed of the rest.
 */
final class LoadedFiles {
  private final Loader loader;
  private final Map<Asked, SourceText> texts = new HashMap<>();
  private final Map<Asked, Listing> lists = new HashMap<>();
  private long listCells;
  private final IdentityHashMap<SourceText, Parsed> parsed = new IdentityHashMap<>();
  private final IdentityHashMap<PlanSection, Parsed> planTables = new IdentityHashMap<>();

  /** Each text as the loader gave it, by its name. */
  private final Map<String, SourceText> loaded = new LinkedHashMap<>();

  /** The texts that stand in place of loaded ones, by their name. */
  private final Map<String, SourceText> revised = new LinkedHashMap<>();

  /**
   * What a file asks for.
   *
   * @param from the name of the file that asks; empty for the job itself
   * @param page the page of a list; empty where none is named
   */
  private record Asked(String path, String from, String page) {}

  /** A text as it was parsed, and what was wrong with it. */
  private record Parsed(WorkbookFile file, Diagnostics found) {}

  LoadedFiles(Loader loader) {
    this.loader = loader;
  }

  /**
   * These files with other texts in place of some.
   *
   * @param newTexts by the name of the file
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

  /** Another text for a file; what was parsed of an earlier revision of it is let go. */
  private void revise(String name, String text) {
    SourceText earlier = revised.put(name, SourceText.of(name, text));
    parsed.remove(earlier);
    planTables.keySet().removeIf(plan -> plan.span().source() == earlier);
  }

  /** The new text of each file that no longer reads as it was loaded, by the loaded one. */
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
   * The text of a workbook.
   *
   * @param from the workbook that follows it; absent for the job itself
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
    return told(parsed.computeIfAbsent(text, LoadedFiles::parse), diagnostics);
  }

  /** The tables of a plan. */
  WorkbookFile planTables(PlanSection plan, Diagnostics diagnostics) {
    return told(planTables.computeIfAbsent(plan, p -> parse(PlanTemplate.text(p))), diagnostics);
  }

  private static Parsed parse(SourceText text) {
    Diagnostics found = new Diagnostics();
    return new Parsed(WorkbookParser.parse(text, found), found);
  }

  private static WorkbookFile told(Parsed parsed, Diagnostics diagnostics) {
    diagnostics.addAll(parsed.found());
    return parsed.file();
  }

  /** The list that a workbook names. */
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

  /** The image files that texts of a job name. */
  Pictures pictures(SourceText job) {
    return new Pictures(loader, job);
  }
}
