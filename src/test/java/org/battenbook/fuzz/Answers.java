package org.battenbook.fuzz;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.battenbook.answer.CutsAnswer;
import org.battenbook.answer.FeedsAnswer;
import org.battenbook.answer.FillAnswer;
import org.battenbook.answer.ToleranceAnswer;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.bind.Spot;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedPlace;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.derive.Feeds;
import org.battenbook.export.TableExport;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Workbook;

/** Everything that is asked of a filled workbook, as the commands ask it. */
record Answers(Workbook workbook, Filled filled) {
  private static final int MOST_ASKED = 6;

  /** Reads files, fills the job, and asks; faults have to stand in what a person wrote. */
  static void check(FilesInOneText files) throws IOException {
    Workbook workbook = files.open();
    Bounds.checkTold(workbook.diagnostics(), files);
    if (workbook.hasFaults()) {
      FillAnswer.atFault(workbook).writeTo(OutputStream.nullOutputStream());
    } else {
      Filled filled = workbook.fill();
      checkFaults(filled, files);
      new Answers(workbook, filled).all();
    }
  }

  private static void checkFaults(Filled filled, FilesInOneText files) {
    for (FilledValue fault : filled.faults()) {
      Bounds.checkPlace(filled.results().decisions().origin(fault.spot()), files);
    }
  }

  private void all() throws IOException {
    fill();
    cuts();
    for (Spot spot : asked(filled)) {
      ask(spot);
    }
    for (Table table : filled.book().tables()) {
      TableExport.write(filled, table, OutputStream.nullOutputStream());
    }
  }

  private void fill() throws IOException {
    filled.pictureCautions();
    FillAnswer.of(workbook, filled).writeTo(OutputStream.nullOutputStream());
  }

  private void cuts() throws IOException {
    CutsAnswer.of(workbook, filled, filled.plans(), List.of())
        .writeTo(OutputStream.nullOutputStream());
  }

  private void ask(Spot spot) throws IOException {
    FilledValue value = filled.value(spot);
    WhyAnswer.of(filled, filled.why(spot)).writeTo(OutputStream.nullOutputStream());
    FeedsAnswer.of(filled, spot, Feeds.of(filled.results(), spot))
        .writeTo(OutputStream.nullOutputStream());
    new ToleranceAnswer(filled, value, ErrorBudget.of(filled.results(), spot))
        .writeTo(OutputStream.nullOutputStream());
  }

  /** A few spots, spread over the workbook: to ask of each takes too long for random inputs. */
  static List<Spot> asked(Filled filled) {
    List<Spot> spots = new ArrayList<>();
    for (CheckedPlace checked : filled.checked().places()) {
      Place place = checked.place();
      int rows = place.table() == null ? 1 : filled.rows(place.table()).count();
      if (rows > 0 && !(place instanceof ErrorBound)) {
        spots.add(new Spot(place, rows - 1));
      }
    }
    int step = spots.size() / MOST_ASKED + 1;
    List<Spot> asked = new ArrayList<>();
    for (int i = 0; i < spots.size(); i += step) {
      asked.add(spots.get(i));
    }
    return asked;
  }
}
