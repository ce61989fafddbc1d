package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.antlr.v4.runtime.Vocabulary;
import org.battenbook.operation.Operation;
import org.battenbook.operation.Operations;
import org.battenbook.parse.generated.WorkbookParser;

/**
 * Pieces of text that laws throw at the parser: the words of every token and statement of the
 * grammar, the names of every operation, and what people write besides.
 */
public final class SoupPieces {
  private static final List<String> BESIDES =
      List.of(
          "width",
          "mat overlap",
          "3",
          "3/8",
          "15 3/8",
          "15-3/8",
          "2.5",
          ".5",
          "5.",
          "1,000",
          "1e3",
          "in",
          "ft",
          "USD/ft",
          "in^2",
          "\"",
          "\"text\"",
          "\"{width}\"",
          "{",
          "}",
          "'",
          "”",
          "½",
          "−",
          "*",
          "/",
          "<=",
          "<>",
          "--",
          " -- note",
          "sum of",
          "smallest",
          "first row",
          "above.",
          "this",
          "even at worst",
          "± 1/16 in",
          "from \"list.csv\"",
          "or 0.01 m",
          "2026-03-14",
          "2026-3-4",
          "\uD83D\uDDBC",
          "\uD83D",
          "é",
          "\u0000",
          "\t",
          "\n",
          "\n  ",
          "\r\n",
          "\u00A0",
          "\uFEFF",
          " ",
          " ",
          " ",
          "");

  private static final List<String> ALL = all();

  private SoupPieces() {}

  /** One piece. */
  public static String any(Random random) {
    return ALL.get(random.nextInt(ALL.size()));
  }

  private static List<String> all() {
    Vocabulary vocabulary = WorkbookParser.VOCABULARY;
    List<String> pieces = new ArrayList<>(BESIDES);
    IntStream.rangeClosed(1, vocabulary.getMaxTokenType())
        .mapToObj(type -> words(vocabulary, type))
        .forEach(pieces::add);
    Operations.functions().stream().map(Operation::name).forEach(pieces::add);
    return List.copyOf(pieces);
  }

  /** A token as it is written, or the words of its name: {@code for each} for {@code FOR_EACH}. */
  private static String words(Vocabulary vocabulary, int type) {
    String literal = vocabulary.getLiteralName(type);
    return literal == null
        ? vocabulary.getSymbolicName(type).toLowerCase(Locale.ROOT).replace('_', ' ')
        : literal.substring(1, literal.length() - 1);
  }
}
