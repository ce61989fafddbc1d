package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.WorkbookEdit;
import org.junit.jupiter.api.Test;

/** One filled workbook is read, asked and edited by eight threads at once. */
class SharedFilledTest {
  private static final int THREADS = 8;
  private static final int ROUNDS = 12;

  private static final List<List<String>> EDITS =
      List.of(
          List.of("markup", "85 %"),
          List.of("saw kerf", "3/32 in"),
          List.of("mat overlap", "3/16 in"),
          List.of("fitting allowance", "1/8 in"),
          List.of("quantity of Tide chart, north", "3"));

  /** What a cold first fill and first questions give is what they give alone. */
  @Test
  void a_workbook_is_filled_asked_and_edited_by_eight_threads() throws Exception {
    Workbook shared = museum();
    Filled filled = shared.fill();
    Map<String, String> values = Told.values(museum().fill());
    List<String> messages = Told.messages(museum().fill());
    List<String> edited = new ArrayList<>();
    for (List<String> edit : EDITS) {
      edited.add(total(museum().fill(), edit));
    }
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<?>> done = new ArrayList<>();
      for (int thread = 0; thread < THREADS; thread++) {
        Random random = new Random(thread);
        Callable<?> work =
            () -> {
              for (int round = 0; round < ROUNDS; round++) {
                switch (random.nextInt(4)) {
                  case 0 -> assertThat(Told.values(shared.fill())).isEqualTo(values);
                  case 1 -> assertThat(Told.messages(filled)).isEqualTo(messages);
                  case 2 -> askWhy(filled, random);
                  default -> {
                    int edit = random.nextInt(EDITS.size());
                    assertThat(total(filled, EDITS.get(edit))).isEqualTo(edited.get(edit));
                  }
                }
              }
              return null;
            };
        done.add(threads.submit(work));
      }
      for (Future<?> one : done) {
        assertDone(one);
      }
    } finally {
      threads.shutdownNow();
    }
  }

  private static void assertDone(Future<?> work) throws Exception {
    try {
      work.get();
    } catch (ExecutionException failed) {
      throw new AssertionError("a thread failed", failed.getCause());
    }
  }

  private static Workbook museum() throws Loader.Unreadable {
    return Workbook.open("workbooks/saltmarsh-ferry-museum.batten");
  }

  /** What the job costs after an edit, and after one more that builds on it. */
  private static String total(Filled filled, List<String> edit) {
    Filled later = requireNonNull(filled.editLeavingPlans(edit(filled, edit)).filled());
    Filled once = requireNonNull(later.planned().filled());
    Filled twice =
        requireNonNull(once.withFormula(once.spot("tax exempt").place(), "true").filled());
    return once.find("balance").exact() + " then " + twice.find("balance").exact();
  }

  private static WorkbookEdit edit(Filled filled, List<String> edit) {
    Spot spot = filled.spot(edit.get(0));
    return spot.place() instanceof Column column
        ? new CellEdit(column, spot.row(), edit.get(1))
        : new FormulaEdit(spot.place(), edit.get(1));
  }

  private static void askWhy(Filled filled, Random random) {
    List<Place> places =
        filled.checked().places().stream()
            .map(CheckedPlace::place)
            .filter(place -> hasRow(filled, place))
            .toList();
    Place place = places.get(random.nextInt(places.size()));
    int row = place.table() == null ? 0 : random.nextInt(filled.rows(place.table()).count());
    Spot spot = new Spot(place, row);
    assertThat(filled.why(spot).value()).isEqualTo(filled.results().value(spot));
  }

  private static boolean hasRow(Filled filled, Place place) {
    return place.table() == null || filled.rows(place.table()).count() > 0;
  }
}
