package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.battenbook.parse.generated.WorkbookParser;

/**
 * Joins words that are one token: {@code sum of}, {@code rounded up to}, {@code shown as}, and the
 * unit after a number. The lexer does not read units, since it would read {@code 12 in/height} as
 * {@code in/h}.
 */
final class CompoundTokens {
  private static final Set<String> AGGREGATES = Set.of("sum", "largest", "smallest", "average");
  private static final Set<String> DIRECTIONS = Set.of("up", "down", "evenly");

  private final LineTokens line;
  private final LineFaults faults;
  private final List<Token> joined = new ArrayList<>();
  private boolean inSelection;
  private int at;

  private CompoundTokens(LineTokens line, LineFaults faults) {
    this.line = line;
    this.faults = faults;
  }

  static LineTokens join(LineTokens line, LineFaults faults) {
    CompoundTokens joins = new CompoundTokens(line, faults);
    while (joins.at < line.count()) {
      joins.next();
    }
    joins.joined.add(line.get(line.count()));
    return new LineTokens(line.source(), joins.joined, line.note());
  }

  private void next() {
    switch (line.type(at)) {
      case WorkbookParser.WORD -> word();
      case WorkbookParser.ROUNDED -> rounded();
      case WorkbookParser.SHOWN -> shown();
      case WorkbookParser.LENGTHS -> {
        take(1, WorkbookParser.LENGTHS);
        unit();
      }
      case WorkbookParser.OR -> or();
      case WorkbookParser.WHOLE,
          WorkbookParser.DECIMAL,
          WorkbookParser.FRACTION,
          WorkbookParser.MIXED -> {
        take(1, line.type(at));
        unit();
      }
      default -> take(1, line.type(at));
    }
  }

  private void word() {
    boolean opensName = joined.isEmpty() || lastJoined() != WorkbookParser.WORD;
    if (isPreference(at)) {
      take(2, WorkbookParser.WITH);
    } else if (isAtWorst(at)) {
      take(3, WorkbookParser.AT_WORST);
    } else if (opensName && is("of", at + 1)) {
      beforeOf();
    } else {
      take(1, WorkbookParser.WORD);
    }
  }

  private void beforeOf() {
    String word = word(line, at);
    if (AGGREGATES.contains(word)) {
      take(2, WorkbookParser.AGGREGATE);
    } else if (word.equals("count")) {
      take(2, WorkbookParser.COUNT_OF);
    } else if (word.equals("row")) {
      inSelection = true;
      take(2, WorkbookParser.ROW_OF);
    } else {
      take(1, WorkbookParser.WORD);
    }
  }

  private void rounded() {
    int to = DIRECTIONS.contains(word(line, at + 1)) ? at + 2 : at + 1;
    if (is("to", to)) {
      take(to - at + 1, WorkbookParser.ROUND);
      return;
    }
    int last = line.isWord(at + 1) ? at + 1 : at;
    faults.fault(
        "rounding-without-to",
        line.span(at, last),
        "'%s' does not say how to round".formatted(line.span(at, last).text()),
        "write rounded to, rounded up to, rounded down to or rounded evenly to, then the step;"
            + " a name cannot hold the word 'rounded'");
    take(1, WorkbookParser.ROUNDED);
  }

  private void shown() {
    if (is("as", at + 1)) {
      take(2, WorkbookParser.SHOWN_AS);
      unit();
    } else {
      take(1, WorkbookParser.SHOWN);
    }
  }

  /** After {@code shown as ft} it says another form. */
  private void or() {
    boolean ofForms =
        !joined.isEmpty()
            && lastJoined() == WorkbookParser.UNIT
            && joined.stream().anyMatch(token -> token.getType() == WorkbookParser.SHOWN_AS);
    take(1, WorkbookParser.OR);
    if (ofForms) {
      unit();
    }
  }

  /** Takes the unit that begins here, if one does. */
  private void unit() {
    int type = line.type(at);
    if (type == WorkbookParser.PERCENT || type == WorkbookParser.DEGREE) {
      takeUnit(at);
    } else if (type == WorkbookParser.WORD && !isPreference(at) && !isAtWorst(at)) {
      takeUnit(boardFeet(at));
    }
  }

  /** {@code bd ft} is one symbol of two words. */
  private int boardFeet(int index) {
    return is("bd", index) && is("ft", index + 1) ? index + 1 : index;
  }

  private void takeUnit(int lastWord) {
    int last = lastWord;
    while (true) {
      if (isGluedPair(last, WorkbookParser.SLASH, WorkbookParser.WORD)) {
        last = boardFeet(last + 2);
      } else if (isGluedPair(last, WorkbookParser.POWER, WorkbookParser.WHOLE)) {
        last += 2;
      } else {
        break;
      }
    }
    refuseRunningIntoName(last);
    CommonToken unit = merge(line, at, last, WorkbookParser.UNIT);
    unit.setText(symbol(line.span(at, last).text()));
    joined.add(unit);
    at = last + 1;
  }

  private boolean isGluedPair(int last, int sign, int then) {
    return line.type(last + 1) == sign
        && line.isGlued(last + 1)
        && line.type(last + 2) == then
        && line.isGlued(last + 2);
  }

  private static String symbol(String written) {
    String spaced = Spaces.single(written).replace('÷', '/');
    return spaced.startsWith("°") ? "deg" + spaced.substring(1) : spaced;
  }

  /** {@code 12 in/height of wall}: only a name goes on with a further word. */
  private void refuseRunningIntoName(int last) {
    int slash = last - 1;
    boolean runsOn = line.isWord(last + 1) && !isPreference(last + 1) && !isAtWorst(last + 1);
    if (!runsOn || line.type(slash) != WorkbookParser.SLASH) {
      return;
    }
    int lastWord = last + 1;
    while (line.isWord(lastWord + 1) && !isAtWorst(lastWord + 1)) {
      lastWord++;
    }
    int number = Math.max(0, at - 1);
    String unit = line.span(number, slash - 1).text();
    String name = line.span(last, lastWord).text();
    faults.fault(
        "unit-runs-into-name",
        line.span(number, lastWord),
        "'%s' is not a unit, since a name goes on there".formatted(line.span(at, last).text()),
        "put spaces around the sign: %s / %s".formatted(unit, name));
  }

  private int lastJoined() {
    return joined.get(joined.size() - 1).getType();
  }

  /** Whether {@code sum of} or its like stands there as two words. */
  static boolean isAggregate(LineTokens line, int index) {
    return AGGREGATES.contains(word(line, index)) && is(line, index + 1, "of");
  }

  /** {@code even at worst}, behind a comparison; a name cannot hold these words in this order. */
  private boolean isAtWorst(int index) {
    return is("even", index) && is("at", index + 1) && is("worst", index + 2);
  }

  /** {@code with smallest} or {@code with largest}, where a row is chosen. */
  private boolean isPreference(int index) {
    return inSelection
        && is("with", index)
        && (is("smallest", index + 1) || is("largest", index + 1));
  }

  private boolean is(String word, int index) {
    return is(line, index, word);
  }

  private void take(int words, int type) {
    joined.add(words == 1 ? line.get(at) : merge(line, at, at + words - 1, type));
    at += words;
  }

  /** One token out of several, from the first to the last. */
  static CommonToken merge(LineTokens line, int first, int last, int type) {
    CommonToken token = new CommonToken(line.get(first));
    token.setType(type);
    token.setText(line.span(first, last).text());
    token.setStopIndex(line.get(last).getStopIndex());
    return token;
  }

  static boolean is(LineTokens line, int index, String word) {
    return line.isWord(index)
        && line.get(index).getText().length() == word.length()
        && word.equals(word(line, index));
  }

  /** The word there in lower case, or empty where no word is. */
  static String word(LineTokens line, int index) {
    return line.isWord(index) ? line.get(index).getText().toLowerCase(Locale.ROOT) : "";
  }
}
