package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.battenbook.edit.BookRevision;
import org.battenbook.edit.EditRefused;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * An edit means what its text means: values, shown texts, places, messages and refusals are those
 * of a workbook that is read from the edited texts, whichever way the edit was made.
 *
 * @param loaded the texts of the workbook as it was loaded, by the names of their files
 * @param reader reads a workbook from such texts
 */
public record EditLaw(Map<String, String> loaded, Function<Map<String, String>, Workbook> reader) {

  /**
   * Makes an edit and compares it with what reading its text gives.
   *
   * @param filled the workbook as it is now
   * @param where which edit it is, for people
   * @return the workbook after the edit; null where the edit is refused
   */
  public @Nullable Filled check(Filled filled, WorkbookEdit edit, String where) {
    String as = where + ": " + edit.words(filled.results()) + ", " + edit.at(filled.results());
    Edit result = filled.edit(edit);
    Filled after = result.filled();
    if (after == null) {
      assertRefused(filled, edit, result.diagnostics(), as);
    } else {
      assertRead(after, reader.apply(texts(result.texts())), as);
    }
    return after;
  }

  private static void assertRead(Filled after, Workbook read, String as) {
    assertThat(read.hasFaults()).as(as).isFalse();
    Filled fresh = read.fill();
    assertThat(Told.differences(after, fresh)).as(as).isEmpty();
    assertThat(Told.messages(after)).as(as).isEqualTo(Told.messages(fresh));
  }

  /** What reading says is wrong is what the edit says. */
  private void assertRefused(Filled filled, WorkbookEdit edit, List<Diagnostic> told, String as) {
    assertThat(told).as(as).isNotEmpty();
    Diagnostics typed = new Diagnostics();
    edit.checkTyped(typed);
    if (typed.hasFaults()) {
      assertThat(Told.messages(told)).as(as).isEqualTo(Told.messages(typed.inOrder()));
      return;
    }
    try {
      assertThat(Told.messages(told)).as(as).containsAll(Told.messages(read(filled, edit)));
    } catch (EditRefused refused) {
      assertThat(told.get(0).message()).as(as).isEqualTo(refused.message());
    }
  }

  /** The faults of the text that an edit makes. */
  private List<Diagnostic> read(Filled filled, WorkbookEdit edit) throws EditRefused {
    BookRevision revision = filled.revision();
    edit.writeInto(revision);
    Map<String, String> texts = texts(filled.revisions());
    texts.putAll(revision.texts());
    return reader.apply(texts).diagnostics().stream().filter(Diagnostic::isFault).toList();
  }

  private Map<String, String> texts(Map<SourceText, String> revisions) {
    Map<String, String> texts = new LinkedHashMap<>(loaded);
    revisions.forEach((source, text) -> texts.put(source.name(), text));
    return texts;
  }
}
