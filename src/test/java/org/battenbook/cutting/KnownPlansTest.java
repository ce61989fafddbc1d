package org.battenbook.cutting;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.book.Table;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.battenbook.planstore.MemoryStore;
import org.battenbook.planstore.PlanStore;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A plan is made once for its job, unless it was stopped. */
class KnownPlansTest {
  private static final String JOB =
      """
      currency USD
      page cutting
        note = 1 in
        table parts by part
          given
            part   : text
            wood   : text
            length : length
            needed : count
        table stock by stick
          given
            stick  : text
            wood   : text
            length : length
        stick plan rail
          parts of parts
            material = wood
            length   = length
            quantity = needed
          stock of stock
            material = wood
            length   = length
        rows of parts
          part | wood  | length | needed
          "a"  | "ash" | 20 in  | 7
          "b"  | "ash" | 31 in  | 5
          "c"  | "oak" | 17 in  | 9
        rows of stock
          stick  | wood  | length
          "8 ft" | "ash" | 96 in
          "9 ft" | "oak" | 108 in
      """;

  /** Who waits, told by how many planners ran: a planner tells what it has found at its start. */
  private static final class Runs implements BiFunction<String, String, PlanWatch> {
    private final AtomicInteger count = new AtomicInteger();
    private boolean stops;

    @Override
    public PlanWatch apply(String plan, String material) {
      return new PlanWatch() {
        private boolean isRunning;

        @Override
        public void found(Rational used, Rational bound) {
          if (!isRunning) {
            count.incrementAndGet();
          }
          isRunning = true;
        }

        @Override
        public boolean isCancelled() {
          return stops;
        }
      };
    }
  }

  private final Runs runs = new Runs();

  private Planning planning(PlanStore store, boolean fresh) {
    return new Planning(false, runs, store, fresh);
  }

  private static Filled filled(String job, Planning planning) {
    try {
      return Workbook.open("job.batten", TextLoader.of(job), planning).fill();
    } catch (Loader.Unreadable missing) {
      throw new AssertionError(missing);
    }
  }

  private static boolean isProven(Filled filled) {
    return filled.plans().get(0).materials().stream().allMatch(one -> one.isProven());
  }

  @Test
  void each_material_is_planned_once_and_again_only_when_its_own_job_changes() {
    Planning planning = planning(PlanStore.NONE, false);
    assertThat(isProven(filled(JOB, planning))).isTrue();
    assertThat(runs.count).hasValue(2);
    filled(JOB, planning);
    filled(JOB.replace("note = 1 in", "note = 2 in"), planning);
    assertThat(runs.count).hasValue(2);
    filled(JOB.replace("| 7", "| 8"), planning);
    assertThat(runs.count).hasValue(3);
    filled(JOB, planning);
    assertThat(runs.count).hasValue(3);
  }

  /** Also where the text is read again, or comes back to a job that was planned before. */
  @Test
  void an_edit_that_leaves_the_job_of_a_plan_plans_nothing() {
    Filled filled = filled(JOB, planning(PlanStore.NONE, false));
    assertThat(runs.count).hasValue(2);
    Filled noted = edited(filled.withFormula(filled.spot("note").place(), "2 in"));
    Table parts = requireNonNull(noted.book().table("parts"));
    Filled same = edited(noted.withFormula(noted.spot("note").place(), "2 in shown as mm"));
    assertThat(runs.count).hasValue(2);
    Filled more = edited(same.withCell(needed(same), 0, "8"));
    assertThat(runs.count).hasValue(3);
    assertThat(more.book().table("parts")).isNotSameAs(parts);
    edited(more.withCell(needed(more), 0, "7"));
    assertThat(runs.count).hasValue(3);
  }

  private static Column needed(Filled filled) {
    return (Column) filled.spot("needed of a").place();
  }

  private static Filled edited(Edit edit) {
    assertThat(edit.diagnostics()).isEmpty();
    return requireNonNull(edit.filled());
  }

  @Test
  void a_plan_from_the_store_has_the_rows_of_the_one_that_was_worked_out() {
    MemoryStore store = new MemoryStore();
    Filled first = filled(JOB, planning(store, false));
    assertThat(runs.count).hasValue(2);
    Filled second = filled(JOB, planning(store, false));
    assertThat(runs.count).hasValue(2);
    assertThat(rows(second)).isEqualTo(rows(first)).hasSize(21);
  }

  private static List<String> rows(Filled filled) {
    List<String> rows = new ArrayList<>();
    filled
        .plans()
        .get(0)
        .materials()
        .forEach(
            one ->
                one.taken()
                    .forEach(
                        stick ->
                            stick
                                .cuts()
                                .forEach(cut -> rows.add(cut.name() + " " + cut.number("end")))));
    return rows;
  }

  @Test
  void fresh_plans_are_worked_out_and_replace_what_was_kept() {
    MemoryStore store = new MemoryStore();
    filled(JOB, planning(store, false));
    store.entries.replaceAll((name, entry) -> new byte[0]);
    filled(JOB, planning(store, true));
    assertThat(runs.count).hasValue(4);
    assertThat(store.entries).hasSize(2);
    assertThat(store.entries.values()).allMatch(entry -> entry.length > 0);
  }

  @Test
  void a_stopped_plan_is_kept_nowhere() {
    MemoryStore store = new MemoryStore();
    Planning planning = planning(store, false);
    runs.stops = true;
    filled(JOB, planning);
    assertThat(runs.count).hasValue(2);
    assertThat(store.entries).isEmpty();
    runs.stops = false;
    filled(JOB, planning);
    assertThat(runs.count).hasValue(4);
    assertThat(store.entries).hasSize(2);
  }

  @Test
  void many_threads_share_one_run_of_each_planner() throws Exception {
    Planning planning = planning(new MemoryStore(), false);
    int threads = 8;
    CountDownLatch all = new CountDownLatch(threads);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    List<Future<Boolean>> proven = new ArrayList<>();
    for (int thread = 0; thread < threads; thread++) {
      proven.add(
          pool.submit(
              () -> {
                all.countDown();
                all.await();
                return isProven(filled(JOB, planning));
              }));
    }
    for (Future<Boolean> one : proven) {
      assertThat(one.get()).isTrue();
    }
    pool.shutdown();
    assertThat(runs.count).hasValue(2);
  }

  // The one who works the plan out waits for the other to be stopped.
  @Test
  void who_waits_for_a_plan_of_another_thread_can_stop_waiting()
      throws InterruptedException, ExecutionException {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goesOn = new CountDownLatch(1);
    AtomicInteger number = new AtomicInteger();
    Planning planning =
        new Planning(
            false,
            (plan, material) ->
                number.getAndIncrement() == 0 ? holding(begun, goesOn) : new Stopped(),
            PlanStore.NONE,
            false);
    ExecutorService pool = Executors.newFixedThreadPool(1);
    Future<Boolean> first = pool.submit(() -> isProven(filled(ASH, planning)));
    begun.await();
    assertThat(rows(filled(ASH, planning))).hasSize(21);
    assertThat(first.isDone()).isFalse();
    goesOn.countDown();
    assertThat(first.get()).isTrue();
    pool.shutdown();
  }

  private static final String ASH = JOB.replace("\"oak\"", "\"ash\"");

  private static final class Stopped implements PlanWatch {
    @Override
    public boolean isCancelled() {
      return true;
    }
  }

  private static PlanWatch holding(CountDownLatch begun, CountDownLatch goesOn) {
    return new PlanWatch() {
      @Override
      public void found(Rational used, Rational bound) {
        begun.countDown();
        try {
          goesOn.await();
        } catch (InterruptedException interrupted) {
          throw new AssertionError(interrupted);
        }
      }
    };
  }

  /** Mistakes of ours, thrown from within a planner. */
  @ParameterizedTest
  @ValueSource(
      classes = {
        IllegalArgumentException.class,
        ArithmeticException.class,
        NumberFormatException.class,
        IllegalStateException.class,
        NullPointerException.class
      })
  void a_mistake_of_ours_is_no_refusal(Class<? extends RuntimeException> type) throws Exception {
    RuntimeException mistake = type.getConstructor(String.class).newInstance("our own");
    boolean[] fails = {true};
    MemoryStore store = new MemoryStore();
    Planning planning =
        new Planning(
            false,
            (plan, material) ->
                new PlanWatch() {
                  @Override
                  public void found(Rational used, Rational bound) {
                    if (fails[0]) {
                      throw mistake;
                    }
                  }
                },
            store,
            false);
    assertThatThrownBy(() -> filled(JOB, planning)).isSameAs(mistake);
    assertThat(store.entries).isEmpty();
    fails[0] = false;
    assertThat(isProven(filled(JOB, planning))).isTrue();
  }
}
