package org.battenbook.workbook;

import java.util.Optional;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement.Source;
import org.battenbook.number.Rational;
import org.battenbook.value.Value;

/** Stock that a plan takes. What is on hand is taken first; the rest is to be bought. */
public final class TakenStock {
  private final Source source;
  private final FilledRow row;
  private final int taken;

  TakenStock(Source source, FilledRow row, int taken) {
    this.source = source;
    this.row = row;
    this.taken = taken;
  }

  /** Its row of the stock. */
  public FilledRow row() {
    return row;
  }

  public String name() {
    return row.name();
  }

  /** How much is taken, in sticks or sheets. */
  public int taken() {
    return taken;
  }

  /** How many of them are to be bought. */
  public int toBuy() {
    return canBeBought() ? Math.max(0, taken - onHand()) : 0;
  }

  /** How many of them are on hand. */
  public int fromStock() {
    return taken - toBuy();
  }

  /** The price of all that is to be bought; empty where it has none. */
  public Optional<FilledValue> price() {
    Column column = source.column(PlanRole.PRICE);
    return Optional.ofNullable(column)
        .map(row::value)
        .filter(price -> price.exactNumber().filter(number -> number.signum() > 0).isPresent())
        .map(price -> price.times(toBuy()));
  }

  /** Its size: one column for sticks, two for sheets. */
  public String size() {
    Column length = source.column(PlanRole.LENGTH);
    return length != null ? shown(length) : shown(PlanRole.WIDTH) + " x " + shown(PlanRole.HEIGHT);
  }

  private String shown(PlanRole role) {
    Column column = source.column(role);
    return column == null ? "" : shown(column);
  }

  private String shown(Column column) {
    return row.value(column).shown().text();
  }

  private boolean canBeBought() {
    Column any = source.column(PlanRole.CAN_BUY_MORE);
    return source.column(PlanRole.ON_HAND) == null
        || (any != null && row.value(any).value() instanceof Value.YesNo yesNo && yesNo.yes());
  }

  private int onHand() {
    Column column = source.column(PlanRole.ON_HAND);
    return column == null
        ? 0
        : row.value(column).exactNumber().orElse(Rational.ZERO).floor().intValue();
  }
}
