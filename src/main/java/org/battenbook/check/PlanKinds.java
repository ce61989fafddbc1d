package org.battenbook.check;

import java.util.function.Function;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanRoles;
import org.battenbook.book.PlanStatement;
import org.battenbook.source.Diagnostics;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Kind;

/** Checks that the columns that a plan names have the kinds that it needs. */
final class PlanKinds {
  private final Function<Column, Kind> kinds;
  private final Diagnostics diagnostics;
  private boolean allowed = true;

  PlanKinds(Function<Column, Kind> kinds, Diagnostics diagnostics) {
    this.kinds = kinds;
    this.diagnostics = diagnostics;
  }

  /** Checks a plan; false if it has a fault. */
  boolean allow(PlanStatement plan) {
    PlanRoles roles = PlanRoles.of(plan.cutting());
    check(plan, plan.parts(), roles.parts());
    check(plan, plan.stock(), roles.stock());
    checkMaterial(plan);
    if (plan.keep() != null) {
      checkWritten(plan, plan.keep(), roles.kept());
    }
    if (plan.record() != null) {
      checkWritten(plan, plan.record(), roles.recorded());
    }
    return allowed;
  }

  private void fault(String code, PlanStatement plan, String message, String repair) {
    allowed = false;
    diagnostics.fault(code, plan.statement(), message, repair);
  }

  private void check(PlanStatement plan, PlanStatement.Source source, PlanRoles.Group roles) {
    for (PlanRole role : roles.all()) {
      Column column = source.column(role);
      Kind kind = column == null ? Kind.UNKNOWN : kinds.apply(column);
      if (column != null && kind != Kind.UNKNOWN && !fits(kind, role.valueKind())) {
        fault(
            "plan-kind",
            plan,
            "the plan '%s' reads '%s' from '%s', which is %s; it must be %s"
                .formatted(
                    plan.name(),
                    role.words(),
                    column.words(),
                    kind.words(),
                    role.valueKind().words()),
            "use another column of '%s'".formatted(source.table()));
      }
    }
  }

  private static boolean fits(Kind kind, PlanRole.ValueKind valueKind) {
    return switch (valueKind) {
      case LENGTH -> isOf(kind, Dimension.LENGTH);
      case TIME -> isOf(kind, Dimension.TIME);
      case COUNT -> kind.equals(Kind.NUMBER);
      case YES_NO -> kind == Kind.YES_NO;
      case TEXT -> kind == Kind.TEXT;
      case NAME -> kind == Kind.TEXT || kind instanceof Kind.RowOf;
      case PRICE -> kind instanceof Kind.Measured;
    };
  }

  private static boolean isOf(Kind kind, Dimension dimension) {
    return kind instanceof Kind.Measured measured && measured.dimension().equals(dimension);
  }

  /** Checks a table that the plan writes rows into: its columns must be inputs. */
  private void checkWritten(
      PlanStatement plan, PlanStatement.Source written, PlanRoles.Group roles) {
    check(plan, written, roles);
    for (Column column : written.columns().values()) {
      if (!column.isGiven() || column.comesWithRow()) {
        fault(
            "plan-keeps-in-worked-out",
            plan,
            "the plan '%s' would write into '%s', which is not an input"
                .formatted(plan.name(), column.words()),
            "use a table with written rows, and its columns under 'given'");
      }
    }
    Column ofStock = plan.stock().column(PlanRole.MATERIAL);
    Column here = written.column(PlanRole.MATERIAL);
    if (here != null && (ofStock == null || !kinds.apply(here).equals(kinds.apply(ofStock)))) {
      fault(
          "plan-material",
          plan,
          "the plan '%s' would write its material into '%s', but the material is %s"
              .formatted(
                  plan.name(),
                  here.words(),
                  ofStock == null ? "not set" : kinds.apply(ofStock).words()),
          "use columns of the same kind for the material of both");
    }
  }

  /** Checks that parts and stock name their material by the same kind, or neither names one. */
  private void checkMaterial(PlanStatement plan) {
    Column ofParts = plan.parts().column(PlanRole.MATERIAL);
    Column ofStock = plan.stock().column(PlanRole.MATERIAL);
    boolean both = ofParts != null && ofStock != null;
    if ((ofParts == null) != (ofStock == null)
        || (both && !kinds.apply(ofParts).equals(kinds.apply(ofStock)))) {
      fault(
          "plan-material",
          plan,
          both
              ? "the plan '%s' has parts whose material is %s, and stock whose material is %s"
                  .formatted(
                      plan.name(), kinds.apply(ofParts).words(), kinds.apply(ofStock).words())
              : "the plan '%s' has a material for %s only"
                  .formatted(plan.name(), ofParts == null ? "the stock" : "the parts"),
          "use columns of the same kind for the material of both");
    }
  }
}
