package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.source.DisplayText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Names, notes and file names that hold what a terminal obeys: colors, a window title, a bell, a
 * clearing of the screen, turned directions. No command prints any of it, on neither stream.
 */
class HostileTextTest {
  private static final Pattern OUR_INK = Pattern.compile("\u001b\\[(0|1|1;31|33|2)m");

  private static final String TEXT = HostileTexts.TEXT;

  @TempDir Path folder;
  private String job = "";
  private String broken = "";
  private String alone = "";
  private String plans = "";

  @BeforeEach
  void lay_out_a_shop_of_hostile_names() throws IOException {
    Path shop = Files.createDirectory(folder.resolve("shop" + TEXT + "\n"));
    Files.writeString(
        shop.resolve(HostileTexts.LIST), "name,width\n\"c%s\",3 in\n".formatted(TEXT));
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(shop.resolve("list.xlsx"))) {
      XSSFSheet page = book.createSheet();
      page.createRow(0).createCell(0).setCellValue("name");
      page.getRow(0).createCell(1).setCellValue("width");
      page.createRow(1).createCell(0).setCellValue("s_x001B_[31m_x000A__x009B_2J_x202E_e");
      page.getRow(1).createCell(1).setCellValue("4 in");
      book.write(out);
    }
    job = write(shop, "job" + TEXT + ".batten", HostileTexts.JOB);
    broken = write(shop, "broken" + TEXT + ".batten", HostileTexts.BROKEN);
    alone = write(shop, "alone.batten", HostileTexts.ALONE);
    plans = write(shop, "plans.batten", HostileTexts.PLANS);
  }

  private static String write(Path shop, String name, String text) throws IOException {
    return Files.writeString(shop.resolve(name), text).toString();
  }

  @TestFactory
  Stream<DynamicTest> nothing_that_a_terminal_obeys_comes_out() {
    return commands()
        .map(c -> dynamicTest(DisplayText.safe(String.join(" ", c)), () -> assertHarmless(c)));
  }

  private Stream<List<String>> commands() {
    String place = "twice of r " + TEXT;
    String none = "nothing\n" + TEXT;
    return Stream.of(
        List.of("fill", job),
        List.of("fill", job, "--page", "p"),
        List.of("fill", job, "--page", none),
        List.of("fill", job, "--json"),
        List.of("fill", broken),
        List.of("fill", alone),
        List.of("fill", alone, "--json"),
        List.of("start", alone),
        List.of("standards", "--to", alone),
        List.of("fill", broken, "--json"),
        List.of("why", job, place),
        List.of("why", job, place, "--json"),
        List.of("why", job, place, "--depth", none),
        List.of("why", job, place, "--tolerance"),
        List.of("why", job, place, "--tolerance", "--json"),
        List.of("why", job, "spare"),
        List.of("why", job, "said"),
        List.of("why", job, none),
        List.of("why", job, "twice"),
        List.of("why", job, "width of u"),
        List.of("why", job, "width of v"),
        List.of("feeds", job, "width of r " + TEXT),
        List.of("feeds", job, "width of r " + TEXT, "--json"),
        List.of("feeds", job, "twise of " + TEXT),
        List.of("cuts", job),
        List.of("cuts", plans),
        List.of("cuts", plans, "--json"),
        List.of("cuts", plans, "--fresh", "--merge-stops"),
        List.of("cuts", plans, "--plan", none),
        List.of("cuts", plans, "--update-stock"),
        List.of("fill", plans),
        List.of("export", job, "--to", folder.resolve("o" + TEXT + ".csv").toString()),
        List.of("export", job, "--to", folder.resolve("o" + TEXT + ".xlsx").toString()),
        List.of("export", job, "--to", folder.resolve("o" + TEXT + ".json").toString()),
        List.of("export", job, "--to", folder.resolve(none + "/o.csv").toString()),
        List.of("export", job, "--to", none),
        List.of("export", job, "--to", "o.csv", "--table", none),
        List.of("export", job, "--to", "o.xlsx", "--table", none),
        List.of("completion", none),
        List.of("fill", none),
        List.of("fill", job, none),
        List.of("fill", job, "--pag" + TEXT),
        List.of(none));
  }

  private static void assertHarmless(List<String> arguments) {
    String[] words = arguments.toArray(String[]::new);
    CommandRun plain = CommandRun.of(words);
    assertHarmless(plain.out());
    assertHarmless(plain.err());
    assertThat(plain.out() + plain.err()).doesNotContain("an error in Battenbook");
    CommandRun colored = CommandRun.coloured(words);
    assertHarmless(OUR_INK.matcher(colored.out()).replaceAll(""));
    assertHarmless(OUR_INK.matcher(colored.err()).replaceAll("").replaceAll("\r", ""));
  }

  private static void assertHarmless(String told) {
    assertThat(told.codePoints().filter(c -> c != '\n' && DisplayText.isObeyed(c)))
        .as(DisplayText.safe(told))
        .isEmpty();
  }

  /** Else the commands above would tell of nothing but mistakes. */
  @Test
  void the_shop_can_be_read() {
    assertThat(CommandRun.of("fill", job).status()).isEqualTo(1);
    assertThat(CommandRun.of("why", job, "twice of r " + TEXT).status()).isZero();
    assertThat(CommandRun.of("fill", job).out()).contains("s [31m \uFFFD2J\uFFFDe");
    assertThat(CommandRun.of("cuts", plans, "--update-stock").out()).contains("1 stick, proven");
  }

  @Test
  void a_json_file_escapes_them_and_a_reader_gets_them_back() throws IOException {
    Path file = folder.resolve("o.json");
    assertThat(CommandRun.of("export", job, "--to", file.toString()).status()).isEqualTo(1);
    assertHarmless(Files.readString(file));
    assertThat(Files.readString(file)).contains("\\u009B2J\\u202E").contains("\\u007F");
    assertThat(new JsonMapper().readTree(file.toFile()).get("workbook").asText())
        .isEqualTo("Ferry " + TEXT);
  }
}
