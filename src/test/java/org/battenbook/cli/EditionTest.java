package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers name the edition of each workbook that states one. */
class EditionTest {
  private static final String WORDS = "Calculated with %s/saws.batten, edition winter 2026.";

  @TempDir Path folder;

  private String job(String asked) throws IOException {
    Files.writeString(
        folder.resolve("saws.batten"),
        "workbook \"Saws\" edition \"winter 2026\"\npage saws\n  kerf = 1/8 in\n");
    Path job = folder.resolve("job.batten");
    Files.writeString(
        job, "follows \"saws.batten\"" + asked + "\npage job\n  two cuts = 2 * kerf\n");
    return job.toString();
  }

  private JsonNode json(String... arguments) throws IOException {
    return JsonMapper.builder().build().readTree(CommandRun.of(arguments).out()).get("editions");
  }

  @Test
  void fill_why_and_the_export_name_it() throws IOException {
    String job = job("");
    JsonNode filled = json("fill", job, "--json");
    assertThat(filled).hasSize(1);
    assertThat(filled.get(0).get("file").asText()).isEqualTo(folder + "/saws.batten");
    assertThat(filled.get(0).get("edition").asText()).isEqualTo("winter 2026");
    assertThat(json("why", job, "kerf", "--json")).isEqualTo(filled);
    assertThat(CommandRun.of("why", job, "kerf").out()).contains(WORDS.formatted(folder));
    Path export = folder.resolve("job.xlsx");
    CommandRun.of("export", job, "--to", export.toString());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(export))) {
      Sheet sheet = book.getSheet("How calculated");
      assertThat(sheet.getRow(1).getCell(0).getStringCellValue()).endsWith(WORDS.formatted(folder));
    }
  }

  @Test
  void a_file_that_states_none_has_that_of_what_it_follows() throws IOException {
    job("");
    Files.writeString(folder.resolve("rates.batten"), "follows \"saws.batten\"\npage rates\n");
    Path job = folder.resolve("priced.batten");
    Files.writeString(job, "follows \"rates.batten\" edition \"winter 2026\"\npage job\n");
    assertThat(CommandRun.of("fill", job.toString()).err()).isEmpty();
  }

  @Test
  void the_edition_that_a_job_asks_for_is_silent_and_another_gives_a_caution() throws IOException {
    assertThat(CommandRun.of("fill", job(" edition \"winter 2026\"")).err()).isEmpty();
    CommandRun other = CommandRun.of("fill", job(" edition \"2025\""));
    assertThat(other.status()).isZero();
    assertThat(other.err())
        .contains(
            "caution: 'saws.batten' is edition \"winter 2026\"; this workbook asks for edition \"2025\"");
  }
}
