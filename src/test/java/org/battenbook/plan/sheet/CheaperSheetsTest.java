package org.battenbook.plan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.battenbook.number.Rational;
import org.battenbook.plan.Effort;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.PanelFilling.Split;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets of three sizes: 12 by 12 at 4, 20 by 20 at 9, 40 by 40 at 30. */
class CheaperSheetsTest {
  private static final int SMALL = 0;
  private static final int MIDDLE = 1;
  private static final int LARGE = 2;
  private static final int ANY = Integer.MAX_VALUE;

  private static SheetPart part(long across, long down, int count) {
    String label = across + " by " + down;
    return new SheetPart(label, Rational.of(across), Rational.of(down), count, true);
  }

  private static SheetStock sheet(long side, long cost, int onHand) {
    OptionalInt limit = onHand == ANY ? OptionalInt.empty() : OptionalInt.of(onHand);
    Rational length = Rational.of(side);
    return new SheetStock(
        "sheet of " + side,
        length,
        length,
        Rational.of(cost),
        limit,
        SheetTrims.NONE,
        Rational.ZERO);
  }

  /** The kinds of pieces are numbered from the widest on. */
  private static SheetInstance instance(int small, int middle, SheetPart... parts) {
    List<SheetStock> stocks =
        List.of(sheet(12, 4, small), sheet(20, 9, middle), sheet(40, 30, ANY));
    SheetJob job = new SheetJob(List.of(parts), stocks, Rational.ZERO, OptionalInt.empty());
    return SheetScale.of(job).instance();
  }

  private static Effort effort(long steps) {
    return new Effort(steps, PlanWatch.NONE);
  }

  /** A sheet with all of some pieces, so many of each kind. */
  private static Layout layout(SheetInstance instance, int stock, int... pieces) {
    int[] order = IntStream.range(0, instance.kinds()).toArray();
    Layout empty = Layout.empty(instance, stock);
    Layout layout =
        PanelFilling.fill(instance, empty, pieces, order, Split.WIDER_REST, effort(ANY));
    assertThat(layout.counts()).containsExactly(pieces);
    return layout;
  }

  private static SheetPacking packing(SheetInstance instance, Layout... layouts) {
    int[] missing = instance.demand.clone();
    List.of(layouts).forEach(layout -> layout.takeFrom(missing));
    return SheetPacking.of(instance, List.of(layouts), missing);
  }

  private static SheetPacking moved(SheetInstance instance, Layout... layouts) {
    return new CheaperSheets(instance, effort(ANY)).moved(packing(instance, layouts));
  }

  private static List<Integer> stocks(SheetPacking packing) {
    return packing.layouts().stream().map(Layout::stock).toList();
  }

  @Test
  void a_piece_goes_to_the_cheapest_sheet_that_holds_it() {
    SheetInstance instance = instance(ANY, ANY, part(10, 10, 1));
    SheetPacking moved = moved(instance, layout(instance, LARGE, 1));
    assertThat(stocks(moved)).containsExactly(SMALL);
    assertThat(moved.cost() * 9).isEqualTo(4 * instance.costs[MIDDLE]);
    assertThat(moved.isWhole()).isTrue();
  }

  // 11 by 19 and 9 by 19 lie beside each other on 20 by 20 alone; by area 12 by 12 is too small.
  @Test
  void all_that_is_on_a_sheet_moves_together() {
    SheetInstance instance = instance(ANY, ANY, part(19, 11, 1), part(19, 9, 1));
    SheetPacking moved = moved(instance, layout(instance, LARGE, 1, 1));
    assertThat(stocks(moved)).containsExactly(MIDDLE);
    assertThat(moved.layouts().get(0).counts()).containsExactly(1, 1);
  }

  // 25 by 1 is less than 12 by 12 by area, and longer than 20.
  @Test
  void what_fits_by_its_area_alone_stays() {
    SheetInstance instance = instance(ANY, ANY, part(25, 1, 1));
    Layout before = layout(instance, LARGE, 1);
    assertThat(moved(instance, before).layouts()).containsExactly(before);
  }

  @Test
  void no_more_sheets_are_taken_than_there_are() {
    SheetInstance instance = instance(1, 1, part(10, 10, 3));
    Layout one = layout(instance, LARGE, 1);
    Layout two = layout(instance, LARGE, 1);
    Layout three = layout(instance, LARGE, 1);
    assertThat(stocks(moved(instance, one, two, three))).containsExactly(SMALL, MIDDLE, LARGE);
  }

  @Test
  void a_sheet_that_was_left_is_there_for_the_next() {
    SheetInstance instance = instance(1, 1, part(18, 18, 1), part(10, 10, 1));
    Layout small = layout(instance, MIDDLE, 0, 1);
    Layout wide = layout(instance, LARGE, 1, 0);
    assertThat(stocks(moved(instance, small, wide))).containsExactly(SMALL, MIDDLE);
  }

  @Test
  void pieces_that_no_sheet_has_stay_missing() {
    SheetInstance instance = instance(ANY, ANY, part(10, 10, 2));
    SheetPacking moved = moved(instance, layout(instance, LARGE, 1));
    assertThat(stocks(moved)).containsExactly(SMALL);
    assertThat(moved.isWhole()).isFalse();
  }

  @Test
  void without_effort_all_stays() {
    SheetInstance instance = instance(ANY, ANY, part(10, 10, 1));
    Layout before = layout(instance, LARGE, 1);
    SheetPacking same = new CheaperSheets(instance, effort(0)).moved(packing(instance, before));
    assertThat(same.layouts()).containsExactly(before);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void no_sheet_gets_dearer_and_every_piece_stays_with_its_own(long seed) {
    Random lots = new Random(seed);
    SheetPart[] parts =
        IntStream.range(0, 12)
            .mapToObj(kind -> part(1 + lots.nextInt(20), 1 + lots.nextInt(9), 1))
            .toArray(SheetPart[]::new);
    SheetInstance instance = instance(2, 3, parts);
    List<Layout> layouts = new ArrayList<>();
    for (int kind = 0; kind < instance.kinds(); kind++) {
      int[] pieces = new int[instance.kinds()];
      pieces[kind] = instance.demand[kind];
      layouts.add(layout(instance, LARGE, pieces));
    }
    Layout[] before = layouts.toArray(Layout[]::new);
    SheetPacking moved = moved(instance, before);
    assertThat(moved.isWhole()).isTrue();
    for (int i = 0; i < before.length; i++) {
      Layout after = moved.layouts().get(i);
      assertThat(after.counts()).containsExactly(before[i].counts());
      assertThat(instance.costs[after.stock()]).isLessThanOrEqualTo(instance.costs[LARGE]);
    }
    assertThat(stocks(moved).stream().filter(stock -> stock == SMALL).count()).isBetween(1L, 2L);
    assertThat(stocks(moved).stream().filter(stock -> stock == MIDDLE).count()).isBetween(1L, 3L);
  }
}
