package org.battenbook.planstore;

import org.jspecify.annotations.Nullable;

/**
 * Where entries are kept. It may lose or damage them, and it never fails: what cannot be read is
 * not there, and what cannot be written is not kept.
 */
public interface PlanStore {
  /** Keeps nothing. */
  PlanStore NONE =
      new PlanStore() {
        @Override
        public byte @Nullable [] read(String name) {
          return null;
        }

        @Override
        public void write(String name, byte[] entry) {}
      };

  /** An entry, as far as it is there. */
  byte @Nullable [] read(String name);

  /**
   * Keeps an entry; an earlier one of that name is replaced.
   *
   * @param name of small letters and digits
   */
  void write(String name, byte[] entry);
}
