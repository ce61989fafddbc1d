package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedPlace;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.RandomWorkbook;

/** What fuzzing starts from: the tables that define the language, its reference, random jobs. */
final class Seeds {
  private static final Path SPEC = Path.of("src/test/resources/spec");
  private static final Pattern SAMPLE = Pattern.compile("(?s)```batten\n(.*?)```");

  private static final List<String> FORMULAS =
      List.of(
          "evaluation.tsv",
          "formulas-aggregates.tsv",
          "formulas-names.tsv",
          "formulas-numbers.tsv",
          "formulas-operators.tsv",
          "formulas-texts.tsv",
          "formulas-units.tsv");

  private static final String PAGE = "page p\n a = 3 in\n b = 2\n x = ";

  private static final List<String> EDITS =
      List.of(
          "formula 3 0 2 * (1 in + 3 mm)",
          "formula 7 0 sum of 1 over pieces",
          "cell 9 1 15 3/8 in",
          "cell 12 0 \"b\"",
          "change 4 0 1 in because \"it was measured\"",
          "changecell 9 1 2 because \"one broke\"",
          "unchange 4 0 .",
          "unchangecell 9 1 .",
          "line 1 0 saw kerf = 1/8 in -- thin",
          "remove 2 0 .",
          "remove 10 1 .",
          "move 10 0 2",
          "copy 10 0 \"copy\"",
          "add 10 0 \"new\"");

  private Seeds() {}

  /** Workbooks, each with the files around it; most are at fault. */
  static Stream<byte[]> workbooks() throws IOException {
    List<String> texts = small();
    texts.addAll(inFuzzing(slips()));
    return bytes(texts);
  }

  /** Small workbooks that can mostly be filled. */
  static Stream<byte[]> smallWorkbooks() throws IOException {
    return bytes(small());
  }

  /** Each edit in each of so many jobs. */
  static Stream<byte[]> edits(int jobs) {
    List<String> texts = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      for (String edit : EDITS) {
        texts.add("%d%n%s%n".formatted(job, edit));
      }
    }
    return bytes(texts);
  }

  private static Stream<byte[]> bytes(List<String> texts) {
    return texts.stream().map(text -> text.getBytes(UTF_8));
  }

  private static String joined(RandomWorkbook job) {
    return FilesInOneText.joined(job.texts());
  }

  /** Rows, some of one cell beside their name, for each cell that the tables know. */
  static Stream<byte[]> rows() throws IOException {
    List<String> cells = inFuzzing(column("cells.tsv").toList());
    List<String> rows = new ArrayList<>();
    for (String heading : RowsFuzzTest.HEADINGS) {
      for (String cell : cells) {
        rows.add("title | %s\n\"a\" | %s\n\"b\" |\n".formatted(heading, cell));
      }
    }
    rows.add("title | width | hung\n\"a\" | 1' 3 1/2\" | yes\n\"b\" | -2 mm | no\n");
    return bytes(rows);
  }

  /** A spot in the last row of each place, as people say it. */
  static List<String> places(Filled filled) {
    return inFuzzing(spots(filled).toList());
  }

  private static Stream<String> spots(Filled filled) {
    return filled.checked().places().stream()
        .map(CheckedPlace::place)
        .map(place -> new Spot(place, lastRow(filled, place)))
        .filter(spot -> spot.row() >= 0)
        .map(filled.results().decisions()::words);
  }

  private static int lastRow(Filled filled, Place place) {
    return place.table() == null ? 0 : filled.rows(place.table()).count() - 1;
  }

  /** The job and its files out of each case of the diagnostics, what is told of them left out. */
  private static List<String> slips() throws IOException {
    String table = Files.readString(SPEC.resolve("diagnostics.txt"));
    return Stream.of(table.split("(?m)^=== .*\n"))
        .skip(1)
        .map(slip -> slip.split("(?m)^--- (?!file)", 2)[0])
        .toList();
  }

  /** Jobs that can be filled: the sample of the reference, one with a plan, and random ones. */
  static List<String> jobs() throws IOException {
    List<String> texts = new ArrayList<>();
    Matcher sample = SAMPLE.matcher(Files.readString(Path.of("workbooks/LANGUAGE.md")));
    sample.results().forEach(found -> texts.add(found.group(1)));
    texts.add(FilesInOneText.joined(Bench.with(Bench.ROWS)));
    LongStream.of(6, 9).forEach(seed -> texts.add(joined(RandomWorkbook.of(seed))));
    texts.add(joined(RandomWorkbook.withPlan(10)));
    return texts;
  }

  /** Those jobs, every statement and every formula. */
  private static List<String> small() throws IOException {
    List<String> texts = jobs();
    texts.addAll(inFuzzing(ofTables()));
    return texts;
  }

  private static List<String> ofTables() throws IOException {
    List<String> texts = new ArrayList<>();
    column("statements.tsv").forEach(lines -> texts.add(lines.replace(" ⏎ ", "\n")));
    for (String table : FORMULAS) {
      column(table).forEach(formula -> texts.add(PAGE + formula + "\n"));
    }
    return texts;
  }

  /** The tables have tests of their own: where nothing is fuzzed, they are not read once more. */
  private static List<String> inFuzzing(List<String> texts) {
    return System.getenv("JAZZER_FUZZ") == null ? List.of() : texts;
  }

  /** The first column of a table. */
  private static Stream<String> column(String table) throws IOException {
    return Files.readAllLines(SPEC.resolve(table)).stream()
        .skip(1)
        .map(line -> line.split("\t", 2)[0]);
  }
}
