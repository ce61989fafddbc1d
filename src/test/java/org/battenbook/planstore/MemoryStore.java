package org.battenbook.planstore;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/** Entries in memory, as a test finds and leaves them. */
public final class MemoryStore implements PlanStore {
  public final Map<String, byte[]> entries = new ConcurrentHashMap<>();
  public final AtomicInteger writes = new AtomicInteger();

  @Override
  public byte @Nullable [] read(String name) {
    return entries.get(name);
  }

  @Override
  public void write(String name, byte[] entry) {
    writes.incrementAndGet();
    entries.put(name, entry);
  }
}
