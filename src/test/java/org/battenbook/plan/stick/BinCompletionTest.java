package org.battenbook.plan.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.battenbook.plan.Effort;
import org.battenbook.plan.Offers;
import org.battenbook.plan.PlanWatch;
import org.junit.jupiter.api.Test;

/** Small jobs are proven without a linear program. */
class BinCompletionTest {
  private static final long SEED = 20261126;
  private static final long MUCH = 100_000_000;

  private final Random random = new Random(SEED);

  /** A whole number of full sticks cut up at random: no fewer can hold the pieces. */
  @Test
  void sticks_cut_up_without_waste_are_put_together_again() {
    for (int i = 0; i < 100; i++) {
      int sticks = 2 + random.nextInt(4);
      List<Long> pieces = new ArrayList<>();
      for (int stick = 0; stick < sticks; stick++) {
        cutUp(100, pieces);
      }
      StickInstance instance = instance(pieces, Offers.UNLIMITED);
      BinCompletion.Outcome outcome =
          BinCompletion.search(instance, pieces.size() + 1, 0, new Effort(MUCH, PlanWatch.NONE));
      String told = "seed " + SEED + ", job " + i + ": " + pieces;
      assertThat(outcome.complete()).as(told).isTrue();
      assertThat(outcome.found()).as(told).isNotNull();
      assertThat(outcome.found().cost()).as(told).isEqualTo(sticks);
      assertThat(outcome.found().isWhole()).as(told).isTrue();
    }
  }

  @Test
  void what_does_not_go_together_needs_a_stick_each() {
    StickInstance instance = instance(List.of(51L, 52L, 53L, 54L), Offers.UNLIMITED);
    BinCompletion.Outcome outcome =
        BinCompletion.search(instance, 4, 3, new Effort(MUCH, PlanWatch.NONE));
    assertThat(outcome.found()).isNull();
    assertThat(outcome.complete()).isTrue();
  }

  @Test
  void sticks_that_are_not_on_hand_are_not_taken() {
    StickInstance instance = instance(List.of(60L, 60L, 60L), 2);
    BinCompletion.Outcome outcome =
        BinCompletion.search(instance, 100, 0, new Effort(MUCH, PlanWatch.NONE));
    assertThat(outcome.found()).isNull();
    assertThat(outcome.complete()).isTrue();
  }

  @Test
  void without_effort_nothing_is_claimed() {
    StickInstance instance = instance(List.of(60L, 50L, 40L, 30L, 20L), Offers.UNLIMITED);
    BinCompletion.Outcome outcome =
        BinCompletion.search(instance, 6, 0, new Effort(1, PlanWatch.NONE));
    assertThat(outcome.complete()).isFalse();
  }

  private void cutUp(int length, List<Long> pieces) {
    int left = length;
    while (left > 40) {
      int piece = 10 + random.nextInt(20);
      pieces.add((long) piece);
      left -= piece;
    }
    pieces.add((long) left);
  }

  /** One kind for each piece, as far as they differ; sticks of 100. */
  private static StickInstance instance(List<Long> pieces, int limit) {
    List<Long> kinds = pieces.stream().distinct().sorted(Comparator.reverseOrder()).toList();
    return new StickInstance(
        kinds.stream().mapToLong(kind -> kind).toArray(),
        kinds.stream()
            .mapToInt(kind -> (int) pieces.stream().filter(kind::equals).count())
            .toArray(),
        new long[] {100},
        new long[] {1},
        new int[] {limit},
        new long[] {1});
  }
}
