package org.battenbook.book;

import static org.battenbook.book.PlanRole.needed;
import static org.battenbook.book.PlanRole.optional;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.book.PlanRole.Says;
import org.battenbook.syntax.PlanSection.Cutting;

/**
 * What a plan can be told.
 *
 * @param parts by columns of the parts
 * @param stock by columns of the stock
 * @param kept what is written of an offcut that is kept, by columns of the table it is kept in
 * @param recorded what is written of stock that was taken, by columns of the table for that
 * @param settings by lines of the plan itself
 */
public record PlanRoles(
    List<PlanRole> parts,
    List<PlanRole> stock,
    List<PlanRole> kept,
    List<PlanRole> recorded,
    List<PlanRole> settings) {
  static final String MATERIAL = "material";
  static final String LABEL = "label";
  static final String PRICE = "price";
  static final String OFFCUT = "offcut";
  static final String ON_HAND = "on hand";
  static final String BOUGHT = "bought";
  static final String FROM_RACK = "from rack";

  private static final List<PlanRole> OF_PARTS =
      List.of(
          needed("quantity", Says.COUNT),
          optional(MATERIAL, Says.NAME),
          optional(LABEL, Says.TEXT));
  private static final List<PlanRole> OF_STOCK =
      List.of(
          optional(MATERIAL, Says.NAME),
          optional(PRICE, Says.PRICE),
          optional(ON_HAND, Says.COUNT),
          optional("any number", Says.YES_NO),
          optional(OFFCUT, Says.YES_NO),
          optional("least offcut", Says.LENGTH));
  private static final List<PlanRole> OF_KEPT =
      List.of(
          needed(ON_HAND, Says.COUNT),
          optional(MATERIAL, Says.NAME),
          optional(OFFCUT, Says.YES_NO));
  private static final List<PlanRole> OF_RECORDED =
      List.of(
          needed(BOUGHT, Says.COUNT),
          optional(FROM_RACK, Says.COUNT),
          optional(MATERIAL, Says.NAME),
          optional(PRICE, Says.PRICE));
  private static final PlanRole TIME = optional("planning time", Says.TIME);

  private static final PlanRoles STICKS =
      of(
          List.of(needed("length", Says.LENGTH)),
          List.of(
              optional("kerf", Says.LENGTH),
              optional("nests by", Says.LENGTH),
              optional("matched set", Says.NAME),
              optional("sets", Says.COUNT)),
          List.of(
              optional("starts at", Says.LENGTH),
              optional("first trim", Says.LENGTH),
              optional("last trim", Says.LENGTH)),
          List.of(TIME, optional("stops within", Says.LENGTH)));

  private static final PlanRoles SHEETS =
      of(
          List.of(needed("across", Says.LENGTH), needed("down", Says.LENGTH)),
          List.of(optional("may turn", Says.YES_NO)),
          List.of(optional("kerf", Says.LENGTH), optional("trim", Says.LENGTH)),
          List.of(TIME, optional("stages", Says.COUNT)));

  private static PlanRoles of(
      List<PlanRole> size, List<PlanRole> parts, List<PlanRole> stock, List<PlanRole> settings) {
    return new PlanRoles(
        all(size, OF_PARTS, parts),
        all(size, OF_STOCK, stock),
        all(size, OF_KEPT),
        all(size.stream().map(PlanRole::asOptional).toList(), OF_RECORDED),
        settings);
  }

  @SafeVarargs
  private static List<PlanRole> all(List<PlanRole>... lists) {
    List<PlanRole> all = new ArrayList<>();
    for (List<PlanRole> list : lists) {
      all.addAll(list);
    }
    return all;
  }

  public static PlanRoles of(Cutting cutting) {
    return cutting == Cutting.STICKS ? STICKS : SHEETS;
  }
}
