package org.battenbook.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.edit.BookRevision;
import org.battenbook.edit.EditRefused;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Span;

/** Makes any edit: changes the texts, and reads them again. */
final class TextEdit {
  private final Filled filled;
  private final WorkbookEdit edit;
  private final UnaryOperator<RowPlanner> plans;

  /**
   * An edit that is not made yet.
   *
   * @param plans how the planner of the workbook is asked for the plans whose jobs it changes
   */
  TextEdit(Filled filled, WorkbookEdit edit, UnaryOperator<RowPlanner> plans) {
    this.filled = filled;
    this.edit = edit;
    this.plans = plans;
  }

  /** The outcome. */
  Edit made() {
    try {
      Map<String, String> before = filled.revision().texts();
      BookRevision revision = filled.revision();
      edit.writeInto(revision);
      return read(before, revision.texts());
    } catch (EditRefused refused) {
      return Edit.refused(
          List.of(
              Diagnostic.fault(
                  refused.code(), edit.at(filled.results()), refused.message(), refused.repair())));
    }
  }

  /** Reads the texts of a workbook whose plans cannot be held, which tells why. */
  static Edit read(Filled filled) {
    Workbook read = filled.reread(revised(filled));
    if (read.hasFaults()) {
      return Edit.refused(read.diagnostics().stream().filter(Diagnostic::isFault).toList());
    }
    Filled now = read.fill();
    return new Edit(now, places(now), List.of());
  }

  private static Map<String, String> revised(Filled filled) {
    try {
      return filled.revision().texts();
    } catch (EditRefused impossible) {
      throw new IllegalStateException("these edits were made before", impossible);
    }
  }

  private static List<Place> places(Filled filled) {
    return filled.checked().places().stream().map(CheckedPlace::place).toList();
  }

  private Edit read(Map<String, String> before, Map<String, String> texts) {
    Workbook after = Workbook.revised(filled.reading(), texts, plans);
    if (after.hasFaults()) {
      return Edit.refused(refusals(after, before, texts));
    }
    Filled now = after.fill();
    return new Edit(now, places(now), news(after));
  }

  /**
   * The faults of the changed text. Where none lies in the edit itself, a message before them names
   * the edit.
   */
  private List<Diagnostic> refusals(
      Workbook after, Map<String, String> before, Map<String, String> texts) {
    List<Diagnostic> faults = after.diagnostics().stream().filter(Diagnostic::isFault).toList();
    boolean isAtEdit = faults.stream().anyMatch(one -> isAtEdit(one.span(), before, texts));
    List<Diagnostic> told = new ArrayList<>();
    if (!isAtEdit) {
      told.add(refusal(faults.get(0)));
    }
    told.addAll(faults);
    return told;
  }

  private Diagnostic refusal(Diagnostic mention) {
    return Diagnostic.fault(
        "edit-refused",
        edit.at(filled.results()),
        "%s leaves an error at %s: %s"
            .formatted(edit.words(filled.results()), mention.span().place(), mention.message()),
        mention.repair());
  }

  /** Whether words stand in what the edit wrote. */
  private boolean isAtEdit(Span words, Map<String, String> before, Map<String, String> texts) {
    String name = words.source().name();
    String now = texts.get(name);
    String then = before.getOrDefault(name, filled.reading().files().text(name));
    if (now == null || then == null) {
      return false;
    }
    int start = sameAtStart(then, now);
    int end = now.length() - sameAtEnd(then, now, Math.min(then.length(), now.length()) - start);
    return words.start() < end && words.end() > start;
  }

  private static int sameAtStart(String one, String other) {
    int same = 0;
    while (same < Math.min(one.length(), other.length())
        && one.charAt(same) == other.charAt(same)) {
      same++;
    }
    return same;
  }

  private static int sameAtEnd(String one, String other, int most) {
    int same = 0;
    while (same < most
        && one.charAt(one.length() - 1 - same) == other.charAt(other.length() - 1 - same)) {
      same++;
    }
    return same;
  }

  /** Cautions that were not told before. */
  private List<Diagnostic> news(Workbook after) {
    List<String> told = filled.diagnostics().stream().map(Diagnostic::message).toList();
    return after.diagnostics().stream()
        .filter(diagnostic -> !told.contains(diagnostic.message()))
        .toList();
  }
}
