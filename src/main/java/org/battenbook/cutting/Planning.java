package org.battenbook.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import org.battenbook.book.PlanStatement;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.battenbook.planstore.PlanStore;
import org.battenbook.planstore.Request;
import org.battenbook.syntax.PlanSection.Cutting;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * Makes the plans of workbooks. A job that was planned once is not planned again, however often a
 * workbook is read. Many threads can use it at once.
 */
public final class Planning implements RowPlanner {
  private final boolean mergesStops;
  private final BiFunction<String, String, PlanWatch> watches;
  private final PlanMemory memory;
  private final PlanningTime mostTime;

  /** What was stopped since the workbook was opened: its rows stay the same until it is read. */
  private final Map<Request<?, ?>, Object> stopped = new ConcurrentHashMap<>();

  /** Planning with nobody waiting, a stop for each length, and no plans from earlier runs. */
  public Planning() {
    this(false, (plan, material) -> PlanWatch.NONE, PlanStore.NONE, false);
  }

  /**
   * Planning as asked for.
   *
   * @param mergesStops whether near-equal stops are merged, where a plan says within what
   * @param watches who waits, for each plan and material that is worked out
   * @param store where plans are kept from run to run
   * @param fresh whether what the store has is planned again
   */
  public Planning(
      boolean mergesStops,
      BiFunction<String, String, PlanWatch> watches,
      PlanStore store,
      boolean fresh) {
    this(mergesStops, watches, new PlanMemory(store, fresh), PlanningTime.USUAL);
  }

  private Planning(
      boolean mergesStops,
      BiFunction<String, String, PlanWatch> watches,
      PlanMemory memory,
      PlanningTime mostTime) {
    this.mergesStops = mergesStops;
    this.watches = watches;
    this.memory = memory;
    this.mostTime = mostTime;
  }

  /** The same planning for workbooks that may ask for up to another time. */
  public Planning upTo(PlanningTime most) {
    return new Planning(mergesStops, watches, memory, most);
  }

  @Override
  public Planning ofOneReading() {
    return upTo(mostTime);
  }

  @Override
  public Optional<Planned> plan(PlanStatement plan, Results results, Rational hours) {
    return Optional.of(planned(ordered(plan, results, hours)));
  }

  @Override
  public RowPlanner leavingUnknown() {
    return (plan, results, hours) ->
        Optional.of(ordered(plan, results, hours)).filter(this::isKnown).map(this::planned);
  }

  private boolean isKnown(Ordered<?, ?> ordered) {
    return ordered.orders().stream()
        .flatMap(order -> order.request().stream())
        .allMatch(request -> stopped.containsKey(request) || memory.knows(request));
  }

  private Planned planned(Ordered<?, ?> ordered) {
    Map<String, List<List<@Nullable Value>>> tables = new LinkedHashMap<>();
    rows(ordered).forEach(rows -> rows.putInto(tables));
    return new Planned(tables, ordered.limit().allowedInAll());
  }

  /** A plan with what it is to make of each material, and its rows, none as yet. */
  private record Ordered<J, P>(
      PlanStatement plan,
      PlanningLimit limit,
      List<MaterialOrder<J, P>> orders,
      PlanRows<J, P> rows) {}

  private Ordered<?, ?> ordered(PlanStatement plan, Results results, Rational hours) {
    PlanningLimit limit = new PlanningLimit(mostTime, hours, Material.count(plan, results));
    return plan.cutting() == Cutting.STICKS
        ? new Ordered<>(
            plan,
            limit,
            new StickOrders(plan, results, limit, mergesStops).orders(),
            new StickRows(plan))
        : new Ordered<>(
            plan, limit, new SheetOrders(plan, results, limit).orders(), new SheetRows(plan));
  }

  private <J, P> List<TableRows> rows(Ordered<J, P> ordered) {
    ordered.orders().forEach(order -> add(order, ordered));
    return ordered.rows().tables();
  }

  private <J, P> void add(MaterialOrder<J, P> order, Ordered<J, P> to) {
    Remarks remarks = new Remarks(order.refused());
    boolean isPlanned =
        order
            .request()
            .flatMap(
                request ->
                    remarks.read(
                        () -> {
                          P planned = plan(request, to.plan(), order.material());
                          to.rows().add(order, planned, remarks);
                          return planned;
                        }))
            .isPresent();
    if (!isPlanned) {
      to.rows().totals().addNone(order, remarks);
    }
  }

  @SuppressWarnings("unchecked")
  private <P> P plan(Request<?, P> request, PlanStatement plan, String material) {
    Object before = stopped.get(request);
    if (before != null) {
      return (P) before;
    }
    PlanMemory.Answer<P> answer =
        memory.plan(request, () -> watches.apply(plan.name().text(), material));
    if (answer.wasStopped()) {
      stopped.put(request, answer.plan());
    }
    return answer.plan();
  }
}
