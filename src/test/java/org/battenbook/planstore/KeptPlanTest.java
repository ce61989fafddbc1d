package org.battenbook.planstore;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiConsumer;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.RandomSheets;
import org.battenbook.plan.sheet.SheetCheck;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.plan.sheet.SplitBoards;
import org.battenbook.plan.stick.PlanCheck;
import org.battenbook.plan.stick.RandomSticks;
import org.battenbook.plan.stick.StickJob;
import org.battenbook.plan.stick.StickPlan;
import org.junit.jupiter.api.Test;

/** A plan that was kept comes back as it was, or not at all. */
class KeptPlanTest {
  private static final long SEED = 20261127;
  private static final long STEPS = 300_000;
  private static final int JOBS = 200;
  private static final int FLIPS = 40;
  private static final int HEAD = 4 + 32;
  private static final int SUM = 32;

  private final Random random = new Random(SEED);
  private final RandomSticks sticks = new RandomSticks(random);
  private final RandomSheets sheets = new RandomSheets(random);

  private static <J, P> P kept(Request<J, P> request, MemoryStore store) {
    P plan = request.plan(PlanWatch.NONE);
    KeptPlan.of(request, store).write(plan);
    return plan;
  }

  private static <J, P> Optional<P> read(Request<J, P> request, byte[] entry) {
    MemoryStore store = new MemoryStore();
    KeptPlan.of(request, store).write(request.plan(PlanWatch.NONE));
    store.entries.replaceAll((name, old) -> entry);
    return KeptPlan.of(request, store).read();
  }

  private static byte[] only(MemoryStore store) {
    return store.entries.values().iterator().next();
  }

  private static <J, P> void comesBack(Request<J, P> request, int job) {
    MemoryStore store = new MemoryStore();
    P plan = kept(request, store);
    assertThat(KeptPlan.of(request, store).read())
        .as("seed %d, job %d: %s", SEED, job, request.job())
        .contains(plan);
  }

  @Test
  void any_plan_comes_back_as_it_was() {
    for (int job = 0; job < JOBS; job++) {
      comesBack(Request.of(sticks.next(), STEPS), job);
      comesBack(Request.of(sheets.next(), STEPS), job);
    }
  }

  @Test
  void so_do_those_of_many_cuts() {
    comesBack(Request.of(SplitBoards.job(1, 3, 12, 3, true), STEPS), 0);
  }

  private <J, P> void isRefusedDamaged(Request<J, P> request) {
    MemoryStore store = new MemoryStore();
    kept(request, store);
    byte[] entry = only(store);
    for (int flip = 0; flip < FLIPS; flip++) {
      byte[] damaged = entry.clone();
      damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
      store.entries.replaceAll((name, old) -> damaged);
      assertThat(KeptPlan.of(request, store).read()).isEmpty();
    }
    for (int length = 0; length < entry.length; length++) {
      byte[] cut = Arrays.copyOf(entry, length);
      store.entries.replaceAll((name, old) -> cut);
      assertThat(KeptPlan.of(request, store).read()).isEmpty();
    }
  }

  @Test
  void a_damaged_entry_is_no_plan() {
    for (int job = 0; job < 10; job++) {
      isRefusedDamaged(Request.of(sticks.next(), STEPS));
      isRefusedDamaged(Request.of(sheets.next(), STEPS));
    }
  }

  /** Damaged, with a sum that is true again: what the sum cannot see, the check has to. */
  private <J, P> int isSoundOrNone(Request<J, P> request, BiConsumer<J, P> check) {
    MemoryStore store = new MemoryStore();
    kept(request, store);
    byte[] entry = only(store);
    int passed = 0;
    for (int flip = 0; flip < FLIPS; flip++) {
      byte[] damaged = entry.clone();
      int at = HEAD + random.nextInt(damaged.length - HEAD - SUM);
      damaged[at] =
          (byte)
              (random.nextBoolean() ? damaged[at] ^ (1 << random.nextInt(8)) : random.nextInt(6));
      summed(damaged);
      store.entries.replaceAll((name, old) -> damaged);
      Optional<P> plan = KeptPlan.of(request, store).read();
      plan.ifPresent(read -> check.accept(request.job(), read));
      passed += plan.isPresent() ? 1 : 0;
    }
    return passed;
  }

  private static void summed(byte[] entry) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(Arrays.copyOf(entry, entry.length - SUM));
      System.arraycopy(sum, 0, entry, entry.length - SUM, SUM);
    } catch (NoSuchAlgorithmException never) {
      throw new AssertionError(never);
    }
  }

  @Test
  void what_is_read_can_be_cut_whatever_the_sum_says() {
    int passed = 0;
    for (int job = 0; job < JOBS; job++) {
      passed += isSoundOrNone(Request.of(sticks.next(), STEPS), PlanCheck::canBeCut);
      passed += isSoundOrNone(Request.of(sheets.next(), STEPS), SheetCheck::checked);
    }
    assertThat(passed).isBetween(1, 2 * JOBS * FLIPS - 1);
  }

  @Test
  void an_entry_of_another_job_is_no_plan() {
    StickJob job = sticks.next();
    Request<StickJob, StickPlan> request = Request.of(job, STEPS);
    MemoryStore store = new MemoryStore();
    kept(Request.of(job, STEPS + 1), store);
    assertThat(read(request, only(store))).isEmpty();
    assertThat(KeptPlan.of(request, store).read()).isEmpty();
  }

  @Test
  void a_plan_of_sheets_is_none_of_sticks() {
    SheetJob job = sheets.next();
    Request<SheetJob, SheetPlan> request = Request.of(job, STEPS);
    MemoryStore store = new MemoryStore();
    kept(Request.of(sticks.next(), STEPS), store);
    assertThat(read(request, only(store))).isEmpty();
  }
}
