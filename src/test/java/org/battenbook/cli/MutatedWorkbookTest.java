package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.parse.SoupPieces;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;

/**
 * Workbooks with slips in them: whatever is left out, put in or swapped, they are read, checked,
 * filled and asked with values or messages.
 */
class MutatedWorkbookTest {
  private static final int TRIES = 3_000;

  @Test
  void any_slip_is_told_and_never_ours() throws IOException {
    List<String> workbooks = workbooks();
    for (long seed = 0; seed < TRIES; seed++) {
      Random random = new Random(seed);
      String text = mutated(workbooks.get(random.nextInt(workbooks.size())), random);
      assertThatCode(() -> use(TextLoader.of(text).open()))
          .as("seed %s: %s", seed, text)
          .doesNotThrowAnyException();
    }
  }

  /** The sample of the reference, now and then, and the jobs of the table of diagnostics. */
  private static List<String> workbooks() throws IOException {
    List<String> workbooks = new ArrayList<>();
    for (DiagnosticCase each :
        DiagnosticCase.readAll(Path.of("src/test/resources/spec/diagnostics.txt"))) {
      workbooks.add(
          each.setting().stream()
              .takeWhile(line -> !line.startsWith("---"))
              .collect(Collectors.joining("\n", "", "\n")));
    }
    String reference = Files.readString(Path.of("workbooks/LANGUAGE.md"));
    String sample = reference.split("```batten\n", 2)[1].split("```", 2)[0];
    workbooks.addAll(Collections.nCopies(workbooks.size() / 2, sample));
    return workbooks;
  }

  private static String mutated(String text, Random random) {
    List<String> words = new ArrayList<>(List.of(text.split("(?<=\\b)|(?=\\b)|(?<=\n)", -1)));
    for (int slips = 1 + random.nextInt(3); slips > 0; slips--) {
      int at = random.nextInt(words.size());
      switch (random.nextInt(4)) {
        case 0 -> words.set(at, "");
        case 1 -> words.set(at, SoupPieces.any(random));
        case 2 -> words.add(at, " " + SoupPieces.any(random) + " ");
        default -> Collections.swap(words, at, random.nextInt(words.size()));
      }
    }
    return String.join("", words);
  }

  private static void use(Workbook workbook) {
    DiagnosticPrinter printer = new DiagnosticPrinter();
    workbook.diagnostics().forEach(printer::print);
    if (!workbook.hasFaults()) {
      Filled filled = workbook.fill();
      filled.faults().forEach(value -> printer.print(DiagnosticReport.diagnostic(filled, value)));
      filled.checked().places().forEach(place -> ask(filled, place.place()));
    }
  }

  private static void ask(Filled filled, Place place) {
    boolean isEmpty = place.table() != null && filled.rows(place.table()).count() == 0;
    if (!isEmpty) {
      filled.value(new Spot(place, 0)).shown();
    }
  }
}
