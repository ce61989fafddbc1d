package org.battenbook.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.battenbook.parse.generated.WorkbookParser;
import org.battenbook.parse.generated.WorkbookParser.FactorContext;
import org.battenbook.parse.generated.WorkbookParser.KindContext;
import org.battenbook.parse.generated.WorkbookParser.NameContext;
import org.battenbook.parse.generated.WorkbookParser.ProductKindContext;
import org.battenbook.parse.generated.WorkbookParser.RowKindContext;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.KindExpression;
import org.battenbook.syntax.Name;

/** Reads the kind after a colon. */
final class KindBuilder {
  private static final Set<String> MEASURED =
      Set.of(
          "length",
          "area",
          "volume",
          "mass",
          "angle",
          "time",
          "temperature difference",
          "number",
          "count",
          "ratio",
          "money");

  private static final Set<String> OTHERS = Set.of("text", "date", "yes or no");

  private static final String KINDS =
      "a kind is length, area, volume, mass, angle, time, temperature difference, money, number,"
          + " count, ratio, text, date, yes or no, or row of and a table";

  private static final int HIGHEST_POWER = 9;

  private final SourceText source;
  private final LineFaults faults;

  KindBuilder(SourceText source, LineFaults faults) {
    this.source = source;
    this.faults = faults;
  }

  KindExpression kind(KindContext tree) {
    return tree instanceof RowKindContext row
        ? new KindExpression.RowOf(name(row.name()), span(row))
        : product((ProductKindContext) tree);
  }

  private KindExpression product(ProductKindContext tree) {
    List<KindExpression.Factor> factors = new ArrayList<>();
    for (int i = 0; i < tree.getChildCount(); i += 2) {
      boolean divides = i > 0 && isSlash((TerminalNode) tree.getChild(i - 1));
      factors.add(factor((FactorContext) tree.getChild(i), divides, tree.factor().size() > 1));
    }
    return new KindExpression.Product(factors, span(tree));
  }

  private static boolean isSlash(TerminalNode sign) {
    return sign.getSymbol().getType() == WorkbookParser.SLASH;
  }

  private KindExpression.Factor factor(FactorContext tree, boolean divides, boolean inProduct) {
    Name first = name(tree.name(0));
    Name name = tree.OR() == null ? first : yesOrNo(first, name(tree.name(1)));
    boolean calculated = inProduct || tree.POWER() != null;
    refuse(name, calculated);
    return new KindExpression.Factor(name, divides, power(tree));
  }

  private static Name yesOrNo(Name yes, Name no) {
    return new Name(yes.text() + " or " + no.text(), yes.span().to(no.span()));
  }

  private void refuse(Name name, boolean calculated) {
    if (!MEASURED.contains(name.key()) && !OTHERS.contains(name.key())) {
      faults.fault("no-such-kind", name.span(), "there is no kind '%s'".formatted(name), KINDS);
    } else if (calculated && OTHERS.contains(name.key())) {
      faults.fault(
          "kind-without-dimension",
          name.span(),
          "'%s' cannot be multiplied or divided".formatted(name),
          "multiply and divide measured kinds only: money / length");
    }
  }

  private int power(FactorContext tree) {
    if (tree.POWER() == null) {
      return 1;
    }
    String written = tree.WHOLE().getText();
    boolean fits = written.length() == 1 && !written.equals("0");
    if (!fits) {
      faults.fault(
          "kind-power",
          span(tree),
          "the power of a kind must be 1 to %s".formatted(HIGHEST_POWER),
          "write for example length^3");
    }
    return fits ? Integer.parseInt(written) : 1;
  }

  private Name name(NameContext tree) {
    return new FormulaBuilder(source, faults).name(tree);
  }

  private Span span(ParserRuleContext tree) {
    return LineTokens.span(source, tree);
  }
}
