package org.battenbook.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.battenbook.answer.ExactText;
import org.battenbook.bind.Spot;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.number.PlainDecimal;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Ink;
import org.battenbook.unit.Form;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Shown;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.jspecify.annotations.Nullable;

/** Shows how far a value may be off, and each tolerance that comes into it. */
final class ToleranceReport {
  private static final MathContext SIX_DIGITS = new MathContext(6);

  private final Filled filled;
  private final Output out;

  ToleranceReport(Filled filled, Output out) {
    this.filled = filled;
    this.out = out;
  }

  void print(FilledValue value, ErrorBudget errors) {
    line("%s = %s  %s".formatted(value.words(), value.shown().text(), value.at()));
    errors.open().forEach(open -> line("  its tolerance is not known: " + open));
    Form form = form(value.spot());
    sum("worst case", errors.worst(), form);
    sum("root-sum-square", errors.rootSumSquare(), form);
    if (!errors.sources().isEmpty()) {
      out.line();
      table(errors.sources(), form)
          .lines(PageReport.WIDTH, Ink.HEADING)
          .forEach(line -> out.line(line.indented("  ")));
    } else if (errors.open().isEmpty()) {
      line("  nothing that it is calculated from has a ±");
    }
  }

  private void sum(String name, @Nullable Quantity sum, @Nullable Form form) {
    if (sum != null) {
      Shown shown = ShownValue.of(new Value.Amount(sum), form);
      String exactly = sum.number().isExact() ? "exactly " : "";
      String more = shown.approximate() ? "  (%s%s)".formatted(exactly, inFull(sum, form)) : "";
      line("  %-17s± %s%s".formatted(name, shown.text(), more));
    }
  }

  private TextTable table(List<ErrorBudget.Source> sources, @Nullable Form form) {
    TextTable table =
        new TextTable(
            List.of(
                new TextTable.Column("source", false),
                new TextTable.Column("±", true),
                new TextTable.Column("times", true),
                new TextTable.Column("adds", true),
                new TextTable.Column("at", false)));
    for (ErrorBudget.Source source : sources) {
      table.add(
          List.of(
              filled.value(source.spot()).words(),
              readable(source.tolerance(), form(source.spot())),
              ExactText.of(new Value.Amount(source.coefficient())),
              readable(source.contribution(), form),
              filled.value(source.spot()).at()));
    }
    return table;
  }

  /** In the form of the value where that holds it, else in full. */
  private static String readable(Quantity quantity, @Nullable Form form) {
    Value value = new Value.Amount(quantity);
    Shown shown = ShownValue.of(value, form);
    return shown.approximate() ? inFull(quantity, form) : shown.text();
  }

  /** In the unit of a form, exact where that can be, else to six digits. */
  private static String inFull(Quantity quantity, @Nullable Form form) {
    if (form == null) {
      return ExactText.of(new Value.Amount(quantity));
    }
    Unit unit = form.isFeetAndInches() ? Units.INCH : form.unit();
    Real number = quantity.in(unit);
    String digits = number.isExact() && !form.isDecimal() ? number.toString() : decimal(number);
    return (digits + " " + unit.symbol()).strip();
  }

  private static String decimal(Real number) {
    return number instanceof Rational exact && !PlainDecimal.holds(exact)
        ? exact.toString()
        : PlainDecimal.of(number.isExact() ? number : nearly(number));
  }

  private static Real nearly(Real number) {
    BigDecimal six = BigDecimal.valueOf(number.toDouble()).round(SIX_DIGITS);
    return Rational.parse(six.toPlainString());
  }

  private @Nullable Form form(Spot spot) {
    return filled.checked().place(spot.place()).form();
  }

  private void line(String text) {
    out.line(text);
  }
}
