package org.battenbook.book;

import org.jspecify.annotations.Nullable;

/** The condition of a check or a caution: yes or no, once for a page or in each row of a table. */
public final class Condition extends Place {
  private final String word;
  private final @Nullable Table table;

  /**
   * Creates a condition.
   *
   * @param word the kind of its rule, {@code check} or {@code caution}
   * @param table the table of the rule; null for a rule of a page
   */
  Condition(String word, Page page, @Nullable Table table, Layer layer) {
    super(page, null, false, layer);
    this.word = word;
    this.table = table;
  }

  @Override
  public @Nullable Table table() {
    return table;
  }

  @Override
  public String label() {
    return "the %s at %s".formatted(word, origin().place());
  }

  @Override
  public <R> R accept(PlaceVisitor<R> visitor) {
    return visitor.condition(this);
  }
}
