package org.battenbook.export;

import java.util.List;
import java.util.stream.IntStream;
import org.battenbook.bind.Spot;
import org.battenbook.book.Rule;
import org.battenbook.evaluate.Results;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.layout.RuleLayout;
import org.battenbook.export.layout.RuleLayout.Ruled;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** Counts the rows in which a requirement fails or a caution applies, and gives its messages. */
record RuleCounts(Results results) {

  /** The count of all rules of a block. */
  CellContent all(RuleLayout block) {
    return sum(block.rules().stream().map(this::of).toList());
  }

  /** The count of one rule in all its rows. */
  CellContent of(Ruled ruled) {
    return sum(
        IntStream.range(0, ruled.rowCount()).mapToObj(row -> of(ruled.rule(), row)).toList());
  }

  /** 1 for a row in which the rule fails or applies, else 0. Missing if an input is missing. */
  CellContent of(Rule rule, int row) {
    Value value = results.value(new Spot(rule.condition(), row));
    return value instanceof Value.YesNo holds
        ? new CellContent.Figure(holds.yes() == rule.required() ? 0 : 1)
        : new CellContent.Missing();
  }

  private static CellContent sum(List<CellContent> counts) {
    double sum = 0;
    for (CellContent count : counts) {
      if (!(count instanceof CellContent.Figure figure)) {
        return new CellContent.Missing();
      }
      sum += figure.number();
    }
    return new CellContent.Figure(sum);
  }

  /** The messages of a rule in the first rows in which it fails or applies. */
  List<String> messages(Ruled ruled, int most) {
    return IntStream.range(0, ruled.rowCount())
        .filter(row -> of(ruled.rule(), row) instanceof CellContent.Figure one && one.number() > 0)
        .limit(most)
        .mapToObj(row -> ShownValue.of(results.message(ruled.rule(), row), null).text())
        .toList();
  }
}
