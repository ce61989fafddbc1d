package org.battenbook.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.atn.ATNConfigSet;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;
import org.battenbook.SpecTable;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What the language lets pass, its grammar reads in one way only. Apart from this stand an {@code
 * if} and conditions, which are open at their end: there the inner part takes all that follows, and
 * where that could surprise, the formula is refused.
 */
class GrammarTest {

  @TestFactory
  Stream<DynamicTest> formula_that_is_read_is_read_in_one_way() {
    return Stream.of("names", "numbers", "units", "operators", "aggregates", "texts")
        .flatMap(name -> SpecTable.read("formulas-" + name).each(cells -> check(cells.get(0))));
  }

  private static final Pattern OPEN_END = Pattern.compile("\\b(if|where|with)\\b");

  private static void check(String formula) {
    if (OPEN_END.matcher(formula).find()) {
      return;
    }
    SourceText source = SourceText.of("table", formula);
    Diagnostics diagnostics = new Diagnostics();
    if (FormulaParser.parse(source, diagnostics) != null) {
      assertThat(ambiguities(source)).isEmpty();
    }
  }

  private static List<String> ambiguities(SourceText source) {
    LineTokens line =
        TokenReader.formula(
            source.span(0, source.text().length()), new LineFaults(new Diagnostics()));
    org.battenbook.parse.generated.WorkbookParser parser =
        new org.battenbook.parse.generated.WorkbookParser(
            new CommonTokenStream(new ListTokenSource(line.tokens())));
    List<String> found = new ArrayList<>();
    parser.removeErrorListeners();
    parser.addErrorListener(new Ambiguities(found));
    parser.getInterpreter().setPredictionMode(PredictionMode.LL_EXACT_AMBIG_DETECTION);
    parser.soleFormula();
    return found;
  }

  /** Gathers the places at which two readings fit. */
  private static final class Ambiguities extends BaseErrorListener {
    private final List<String> found;

    Ambiguities(List<String> found) {
      this.found = found;
    }

    @Override
    public void reportAmbiguity(
        Parser parser,
        DFA dfa,
        int start,
        int stop,
        boolean exact,
        BitSet alternatives,
        ATNConfigSet configurations) {
      found.add("tokens %d to %d, alternatives %s".formatted(start, stop, alternatives));
    }
  }
}
