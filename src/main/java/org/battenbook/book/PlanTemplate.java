package org.battenbook.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.PlanSection;
import org.battenbook.syntax.PlanSection.Cutting;
import org.battenbook.syntax.PlanSection.Role;

/**
 * Generates the tables for the results of a plan, in the language of workbooks. The template is a
 * resource with holes, {@code {plan}}, for the names that the plan uses; <code>{{</code> and <code>
 * }}</code> are literal braces.
 */
final class PlanTemplate {
  private static final Pattern HOLE = Pattern.compile("\\{\\{|}}|\\{([a-z ]+)}");

  private final PlanSection plan;
  private final Map<String, String> holes = new HashMap<>();

  private PlanTemplate(PlanSection plan) {
    this.plan = plan;
    holes.put("plan", plan.name().text());
    holes.put("parts", plan.parts().table().text());
    holes.put("stock", plan.stock().table().text());
    PlanRoles roles = PlanRoles.of(plan.cutting());
    roles.parts().all().forEach(role -> holes.put(role.words(), defaultFor(role)));
    plan.parts().roles().forEach(role -> holes.put(role.role().key(), role.column().text()));
    roles.stock().all().forEach(this::putStock);
    putMaterial();
    putPrice();
    String label = column(plan.parts(), PlanRole.LABEL);
    holes.put(PlanRole.LABEL.words(), label.isEmpty() ? "\"{part}\"" : "part." + label);
  }

  /** The text of the tables of a plan; its spans lead to the plan. */
  static SourceText text(PlanSection plan) {
    return new PlanTemplate(plan).text();
  }

  private SourceText text() {
    boolean sticks = plan.cutting() == Cutting.STICKS;
    String text =
        HOLE.matcher(template(sticks ? "stick-plan.batten" : "sheet-plan.batten"))
            .replaceAll(found -> Matcher.quoteReplacement(filled(found.group(), found.group(1))));
    String name = (sticks ? "stick plan " : "sheet plan ") + plan.name().text();
    return SourceText.of(name, text, plan.name().span());
  }

  private String filled(String written, String hole) {
    return hole == null ? written.substring(1) : holes.getOrDefault(hole, written);
  }

  private void putStock(PlanRole role) {
    String column = column(plan.stock(), role);
    String read = column.isEmpty() ? defaultFor(role) : "stock." + column;
    boolean ofBoth = !column(plan.parts(), role).isEmpty();
    holes.put(role.words() + (ofBoth ? " of stock" : ""), ofBoth ? column : read);
  }

  private void putMaterial() {
    String material = column(plan.parts(), PlanRole.MATERIAL);
    holes.put(
        "alike", material.isEmpty() ? "" : " where %s = this.material row".formatted(material));
    holes.put("material", material.isEmpty() ? "" : "material row = part." + material);
  }

  /**
   * Sets the price of a stick or sheet: 1 if there are no prices, and 0 for an offcut from stock.
   */
  private void putPrice() {
    String offcut = column(plan.stock(), PlanRole.OFFCUT);
    String price = column(plan.stock(), PlanRole.PRICE);
    String each = price.isEmpty() ? "1" : "stock." + price;
    holes.put(
        PlanRole.PRICE.words(),
        offcut.isEmpty() ? each : "if stock.%s then 0 * %s else %s".formatted(offcut, each, each));
  }

  private static String column(PlanSection.Source source, PlanRole role) {
    return source.roles().stream()
        .filter(one -> one.role().key().equals(role.words()))
        .map(Role::column)
        .map(Object::toString)
        .findFirst()
        .orElse("");
  }

  /** The formula for a role without a column. */
  private static String defaultFor(PlanRole role) {
    return switch (role) {
      case PRICE -> "1";
      case OFFCUT -> "false";
      default -> "0 in";
    };
  }

  private static String template(String file) {
    try (InputStream in = PlanTemplate.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
