package org.battenbook.book;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.battenbook.syntax.Name;
import org.battenbook.syntax.PlanSection.Cutting;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The enums name what the texts of plans name. */
class PlanTableTest {
  private static final Pattern TABLE = Pattern.compile("(?m)^ *table \\{plan} (\\w+) by ");

  @ParameterizedTest
  @CsvSource({"STICKS, stick-plan.batten", "SHEETS, sheet-plan.batten"})
  void the_tables_of_a_plan_are_those_of_its_template(Cutting cutting, String template)
      throws IOException {
    List<String> written =
        TABLE.matcher(text(template)).results().map((MatchResult found) -> found.group(1)).toList();
    assertThat(PlanTable.of(cutting)).extracting(PlanTable::words).isEqualTo(written);
    assertThat(PlanTable.of(cutting)).contains(PlanTable.ofTaken(cutting));
  }

  @ParameterizedTest
  @EnumSource
  void a_role_is_found_by_its_own_words(PlanRole role) {
    assertThat(Name.key(role.words())).isEqualTo(role.words());
  }

  private static String text(String template) throws IOException {
    try (InputStream in = requireNonNull(PlanTable.class.getResourceAsStream(template))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
