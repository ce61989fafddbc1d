package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Objects;
import org.battenbook.book.Table;

/** Adds a bill up as a reader does: from the amounts as they are shown, and nothing else. */
final class BillSums {
  private final Filled job;

  BillSums(Filled job) {
    this.job = job;
  }

  /** Every total of the bill against the amounts above it. */
  void check() {
    assertThat(framing("pieces").add(framing("polygons")).add(framing("splayed")))
        .isEqualByComparingTo(amount("amount of Framing"));
    assertThat(sum("charges", "amount").subtract(sum("charges", "discount")))
        .isEqualByComparingTo(sum("charges", "net"))
        .isEqualByComparingTo(amount("net"));
    assertThat(sum("charges", "tax")).isEqualByComparingTo(amount("tax"));
    assertThat(amount("net").add(amount("tax"))).isEqualByComparingTo(amount("total"));
    assertThat(amount("deposit").add(amount("balance"))).isEqualByComparingTo(amount("total"));
    assertThat(sum("costs", "amount")).isEqualByComparingTo(amount("job.cost"));
    assertThat(amount("net").subtract(amount("job.cost"))).isEqualByComparingTo(amount("profit"));
    assertThat(billed("cost of used")).isEqualByComparingTo(amount("material used"));
    assertThat(billed("cost of bought")).isEqualByComparingTo(amount("material bought"));
    assertThat(sum("work", "cost")).isEqualByComparingTo(amount("labor cost"));
  }

  /** The prices of a table's frames, each its unit price times its quantity. */
  private BigDecimal framing(String name) {
    Table frames = table(name);
    for (int row = 0; row < job.rows(frames).count(); row++) {
      BigDecimal quantity = new BigDecimal(shown(frames, "quantity", row));
      assertThat(amount(frames, "unit price", row).multiply(quantity))
          .isEqualByComparingTo(amount(frames, "price", row));
    }
    return sum(name, "price");
  }

  private BigDecimal billed(String column) {
    return sum("moulding prices", column)
        .add(sum("wood prices", column))
        .add(sum("sheet prices", column))
        .add(sum("cleat prices", column))
        .add(sum("hardware prices", column))
        .add(sum("finish prices", column));
  }

  private BigDecimal sum(String name, String column) {
    Table table = table(name);
    BigDecimal sum = BigDecimal.ZERO;
    for (int row = 0; row < job.rows(table).count(); row++) {
      sum = sum.add(amount(table, column, row));
    }
    return sum;
  }

  private Table table(String name) {
    return Objects.requireNonNull(job.book().table(name));
  }

  private BigDecimal amount(Table table, String column, int row) {
    return amountIn(shown(table, column, row));
  }

  private BigDecimal amount(String place) {
    return amountIn(job.find(place).shown().text());
  }

  private String shown(Table table, String column, int row) {
    return job.value(Objects.requireNonNull(table.column(column)), row).shown().text();
  }

  /** An amount that is only near, {@code ≈}, is no number and fails. */
  private static BigDecimal amountIn(String shown) {
    return new BigDecimal(shown.split(" ", 2)[0]);
  }
}
