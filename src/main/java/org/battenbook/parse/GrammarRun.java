package org.battenbook.parse;

import static java.util.Objects.requireNonNull;

import java.util.function.Function;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.BufferedTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;
import org.antlr.v4.runtime.tree.ParseTree;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.HeadingsContext;
import org.battenbook.parse.generated.WorkbookParser.PrimaryContext;
import org.battenbook.parse.generated.WorkbookParser.SoleFormulaContext;
import org.battenbook.parse.generated.WorkbookParser.StatementContext;
import org.jspecify.annotations.Nullable;

/**
 * One run of the generated parser over one logical line: the quick prediction first, the thorough
 * one only if that fails. What does not parse is explained in our own words.
 */
final class GrammarRun {
  private GrammarRun() {}

  /** The tree of a statement; absent, with a fault, where it is none. */
  static @Nullable StatementContext statement(LineTokens line, LineFaults faults) {
    return run(line, faults, WorkbookParser::statement);
  }

  /** The tree of a formula on its own; absent, with a fault, where it is none. */
  static @Nullable SoleFormulaContext soleFormula(LineTokens line, LineFaults faults) {
    return run(line, faults, WorkbookParser::soleFormula);
  }

  /** The tree of the headings over rows; absent, with a fault, where they are none. */
  static @Nullable HeadingsContext headings(LineTokens line, LineFaults faults) {
    return run(line, faults, WorkbookParser::headings);
  }

  /**
   * What a tree comes down to where no operator stands in it: the grammar has a level for each rank
   * of operators, and most have none.
   */
  static ParseTree only(ParseTree tree) {
    ParseTree at = tree;
    while (at.getChildCount() == 1 && !(at instanceof PrimaryContext)) {
      at = at.getChild(0);
    }
    return at;
  }

  private static <T extends ParserRuleContext> @Nullable T run(
      LineTokens line, LineFaults faults, Function<WorkbookParser, T> rule) {
    try {
      return rule.apply(parser(line, PredictionMode.SLL));
    } catch (ParseCancellationException quick) {
      return thorough(line, faults, rule);
    }
  }

  private static <T extends ParserRuleContext> @Nullable T thorough(
      LineTokens line, LineFaults faults, Function<WorkbookParser, T> rule) {
    try {
      return rule.apply(parser(line, PredictionMode.LL));
    } catch (ParseCancellationException failure) {
      Token offending = cause(failure).getOffendingToken();
      SyntaxExplanation.explain(line, offending.getTokenIndex(), faults);
      return null;
    }
  }

  /** What the strategy that gives up at once always wraps. */
  private static RecognitionException cause(ParseCancellationException failure) {
    return (RecognitionException) requireNonNull(failure.getCause());
  }

  private static WorkbookParser parser(LineTokens line, PredictionMode mode) {
    WorkbookParser parser =
        new WorkbookParser(new BufferedTokenStream(new ListTokenSource(line.tokens())));
    parser.removeErrorListeners();
    parser.setErrorHandler(new BailErrorStrategy());
    parser.getInterpreter().setPredictionMode(mode);
    return parser;
  }
}
