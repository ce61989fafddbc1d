package org.battenbook.book;

import static org.battenbook.book.PlanRole.BOUGHT;
import static org.battenbook.book.PlanRole.CAN_BUY_MORE;
import static org.battenbook.book.PlanRole.CAN_ROTATE;
import static org.battenbook.book.PlanRole.FROM_STOCK;
import static org.battenbook.book.PlanRole.HEIGHT;
import static org.battenbook.book.PlanRole.KERF;
import static org.battenbook.book.PlanRole.LABEL;
import static org.battenbook.book.PlanRole.LEFT_TRIM;
import static org.battenbook.book.PlanRole.LENGTH;
import static org.battenbook.book.PlanRole.MATCHED_SET;
import static org.battenbook.book.PlanRole.MATERIAL;
import static org.battenbook.book.PlanRole.MINIMUM_OFFCUT;
import static org.battenbook.book.PlanRole.NESTS_BY;
import static org.battenbook.book.PlanRole.OFFCUT;
import static org.battenbook.book.PlanRole.ON_HAND;
import static org.battenbook.book.PlanRole.PLANNING_TIME;
import static org.battenbook.book.PlanRole.PRICE;
import static org.battenbook.book.PlanRole.QUANTITY;
import static org.battenbook.book.PlanRole.RIGHT_TRIM;
import static org.battenbook.book.PlanRole.SETS;
import static org.battenbook.book.PlanRole.STAGES;
import static org.battenbook.book.PlanRole.STARTS_AT;
import static org.battenbook.book.PlanRole.STOP_TOLERANCE;
import static org.battenbook.book.PlanRole.TRIM;
import static org.battenbook.book.PlanRole.WIDTH;

import java.util.List;
import java.util.Set;
import org.battenbook.syntax.PlanSection.Cutting;

/**
 * The roles that a plan for sticks or for sheets can have.
 *
 * @param parts roles of columns of the parts
 * @param stock roles of columns of the stock
 * @param kept roles of columns of the table for kept offcuts
 * @param recorded roles of columns of the table that records the stock used
 * @param settings roles of settings
 */
public record PlanRoles(Group parts, Group stock, Group kept, Group recorded, Group settings) {

  /**
   * The roles that are allowed in one section of a plan.
   *
   * @param all all roles, in the order in which messages list them
   * @param needed the required roles
   */
  public record Group(List<PlanRole> all, Set<PlanRole> needed) {}

  private static final PlanRoles STICKS =
      new PlanRoles(
          new Group(
              List.of(LENGTH, QUANTITY, MATERIAL, LABEL, KERF, NESTS_BY, MATCHED_SET, SETS),
              Set.of(LENGTH, QUANTITY)),
          new Group(
              List.of(
                  LENGTH,
                  MATERIAL,
                  PRICE,
                  ON_HAND,
                  CAN_BUY_MORE,
                  OFFCUT,
                  MINIMUM_OFFCUT,
                  STARTS_AT,
                  LEFT_TRIM,
                  RIGHT_TRIM),
              Set.of(LENGTH)),
          new Group(List.of(LENGTH, ON_HAND, MATERIAL, OFFCUT), Set.of(LENGTH, ON_HAND)),
          new Group(List.of(LENGTH, BOUGHT, FROM_STOCK, MATERIAL, PRICE), Set.of(BOUGHT)),
          new Group(List.of(PLANNING_TIME, STOP_TOLERANCE), Set.of()));

  private static final PlanRoles SHEETS =
      new PlanRoles(
          new Group(
              List.of(WIDTH, HEIGHT, QUANTITY, MATERIAL, LABEL, CAN_ROTATE),
              Set.of(WIDTH, HEIGHT, QUANTITY)),
          new Group(
              List.of(
                  WIDTH,
                  HEIGHT,
                  MATERIAL,
                  PRICE,
                  ON_HAND,
                  CAN_BUY_MORE,
                  OFFCUT,
                  MINIMUM_OFFCUT,
                  KERF,
                  TRIM),
              Set.of(WIDTH, HEIGHT)),
          new Group(
              List.of(WIDTH, HEIGHT, ON_HAND, MATERIAL, OFFCUT), Set.of(WIDTH, HEIGHT, ON_HAND)),
          new Group(List.of(WIDTH, HEIGHT, BOUGHT, FROM_STOCK, MATERIAL, PRICE), Set.of(BOUGHT)),
          new Group(List.of(PLANNING_TIME, STAGES), Set.of()));

  public static PlanRoles of(Cutting cutting) {
    return switch (cutting) {
      case STICKS -> STICKS;
      case SHEETS -> SHEETS;
    };
  }
}
