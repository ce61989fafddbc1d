package org.battenbook.planstore;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The place of one plan in a store. An entry is a mark, the SHA-256 of the request, the plan, and
 * the SHA-256 of all before: a plan that claims to be proven and is not could not be told
 * otherwise.
 */
public final class KeptPlan<P> {
  /** Says what the bytes are, and in which form; another form has another mark. */
  private static final byte[] MARK = {'B', 'B', 'P', 1};

  private static final int HASH = 32;

  private final Request<?, P> request;
  private final PlanStore store;
  private final byte[] key;

  private KeptPlan(Request<?, P> request, PlanStore store) {
    this.request = request;
    this.store = store;
    this.key = sha256(request.canonical());
  }

  public static <P> KeptPlan<P> of(Request<?, P> request, PlanStore store) {
    return new KeptPlan<>(request, store);
  }

  private String name() {
    return HexFormat.of().formatHex(key);
  }

  /** The plan that was kept; absent where there is none that is true to its job. */
  public Optional<P> read() {
    byte[] entry = store.read(name());
    return entry == null ? Optional.empty() : Optional.ofNullable(plan(request, entry));
  }

  private <J> @Nullable P plan(Request<J, P> of, byte[] entry) {
    int end = entry.length - HASH;
    int start = MARK.length + HASH;
    if (end < start || !Arrays.equals(entry, 0, start, head(), 0, start)) {
      return null;
    }
    byte[] sum = sha256(Arrays.copyOf(entry, end));
    if (!Arrays.equals(sum, 0, HASH, entry, end, entry.length)) {
      return null;
    }
    try {
      Decoder from = new Decoder(Arrays.copyOfRange(entry, start, end));
      P plan = of.kind().readPlan(of.job(), from);
      from.end();
      return plan;
    } catch (Damaged | ArithmeticException noPlan) {
      // Numbers that grow past all digits are none of a plan.
      return null;
    }
  }

  /** Keeps a plan in place of an earlier one. */
  public void write(P plan) {
    store.write(name(), entry(request, plan));
  }

  private <J> byte[] entry(Request<J, P> of, P plan) {
    Encoder to = new Encoder();
    of.kind().writePlan(of.job(), plan, to);
    byte[] written = to.bytes();
    byte[] summed =
        ByteBuffer.allocate(MARK.length + HASH + written.length).put(head()).put(written).array();
    return ByteBuffer.allocate(summed.length + HASH).put(summed).put(sha256(summed)).array();
  }

  private byte[] head() {
    return ByteBuffer.allocate(MARK.length + HASH).put(MARK).put(key).array();
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException("every Java has SHA-256", never);
    }
  }
}
