package org.battenbook.cutting;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.battenbook.number.Rational;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.Refusal;
import org.battenbook.planstore.KeptPlan;
import org.battenbook.planstore.PlanStore;
import org.battenbook.planstore.Request;
import org.jspecify.annotations.Nullable;

/**
 * Remembers plans and refusals by their requests. Many threads can use it at once; each plan is
 * made once. A plan that was stopped is not kept, since more time may give a better one.
 */
final class PlanMemory {
  /** The plans of about ten jobs; the least recently used go first. */
  private static final int MOST = 200;

  private static final long MILLISECONDS_BETWEEN_QUESTIONS = 20;

  private final PlanStore store;
  private final boolean fresh;
  private final Map<Request<?, ?>, CompletableFuture<Optional<?>>> plans =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(
            Map.Entry<Request<?, ?>, CompletableFuture<Optional<?>>> eldest) {
          return size() > MOST;
        }
      };

  /**
   * Begins with what a store has.
   *
   * @param fresh whether what it has is planned again
   */
  PlanMemory(PlanStore store, boolean fresh) {
    this.store = store;
    this.fresh = fresh;
  }

  /** A plan, and whether it was stopped. */
  record Answer<P>(P plan, boolean wasStopped) {}

  /** The watch of one plan, and whether it stopped the plan. */
  private static final class Waiting implements PlanWatch {
    private final Supplier<PlanWatch> from;
    private @Nullable PlanWatch watch;
    private boolean stopped;

    Waiting(Supplier<PlanWatch> from) {
      this.from = from;
    }

    private PlanWatch watch() {
      PlanWatch there = watch == null ? from.get() : watch;
      watch = there;
      return there;
    }

    @Override
    public void found(Rational used, Rational bound) {
      watch().found(used, bound);
    }

    @Override
    public boolean isCancelled() {
      stopped = stopped || watch().isCancelled() || Thread.currentThread().isInterrupted();
      return stopped;
    }
  }

  /**
   * The plan that is asked for.
   *
   * @param watch who waits, where it is not known yet
   * @throws org.battenbook.plan.Refusal if the job cannot be planned
   */
  <P> Answer<P> plan(Request<?, P> request, Supplier<PlanWatch> watch) {
    Waiting waiting = new Waiting(watch);
    CompletableFuture<Optional<?>> mine = new CompletableFuture<>();
    CompletableFuture<Optional<?>> first = putIfAbsent(request, mine);
    while (first != mine) {
      Optional<P> known = await(first, waiting);
      if (known.isPresent()) {
        return new Answer<>(known.get(), false);
      }
      if (waiting.stopped) {
        return new Answer<>(request.plan(waiting), true);
      }
      first = putIfAbsent(request, mine);
    }
    return workOut(request, waiting, mine);
  }

  /** Whether the answer to a request is known, and nobody has to wait for it. */
  boolean knows(Request<?, ?> request) {
    synchronized (plans) {
      CompletableFuture<Optional<?>> there = plans.get(request);
      return there != null && there.isDone() && there.join().isPresent();
    }
  }

  /** What is there of a request by now. */
  private CompletableFuture<Optional<?>> putIfAbsent(
      Request<?, ?> request, CompletableFuture<Optional<?>> mine) {
    synchronized (plans) {
      return plans.computeIfAbsent(request, key -> mine);
    }
  }

  private <P> Answer<P> workOut(
      Request<?, P> request, Waiting waiting, CompletableFuture<Optional<?>> mine) {
    Optional<?> kept = Optional.empty();
    try {
      KeptPlan<P> place = KeptPlan.of(request, store);
      Optional<P> stored = fresh ? Optional.empty() : place.read();
      kept = stored;
      if (stored.isPresent()) {
        return new Answer<>(stored.get(), false);
      }
      P plan = request.plan(waiting);
      if (!waiting.isCancelled()) {
        kept = Optional.of(plan);
        place.write(plan);
      }
      return new Answer<>(plan, waiting.stopped);
    } catch (Refusal refusal) {
      kept = Optional.of(refusal);
      throw refusal;
    } finally {
      finish(request, mine, kept);
    }
  }

  private void finish(
      Request<?, ?> request, CompletableFuture<Optional<?>> mine, Optional<?> kept) {
    if (kept.isEmpty()) {
      synchronized (plans) {
        plans.remove(request, mine);
      }
    }
    mine.complete(kept);
  }

  /**
   * The plan that another thread works out; absent where it is not kept, or nobody waits longer.
   */
  private static <P> Optional<P> await(CompletableFuture<Optional<?>> other, Waiting waiting) {
    while (other.isDone() || !waiting.isCancelled()) {
      try {
        return known(other.get(MILLISECONDS_BETWEEN_QUESTIONS, TimeUnit.MILLISECONDS));
      } catch (TimeoutException goesOn) {
        // Who waits is asked again.
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
      } catch (ExecutionException never) {
        throw new IllegalStateException("a plan ends with what is kept of it", never);
      }
    }
    return Optional.empty();
  }

  /** What a request of plans of one kind was answered with is of that kind, or a refusal. */
  @SuppressWarnings("unchecked")
  private static <P> Optional<P> known(Optional<?> answer) {
    if (answer.orElse(null) instanceof Refusal refusal) {
      throw refusal;
    }
    return (Optional<P>) answer;
  }
}
