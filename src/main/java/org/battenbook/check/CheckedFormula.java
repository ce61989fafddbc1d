package org.battenbook.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Scope;
import org.battenbook.book.Table;
import org.battenbook.operation.Operation;
import org.battenbook.operation.PixelCount;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * A formula as written, with what the check learned of each node, by the node's id. Later stages
 * read it and never change it.
 */
public final class CheckedFormula {
  private final Formula formula;
  private final Scope scope;
  private final Set<Need> needs = new LinkedHashSet<>();
  private final @Nullable Kind[] kinds;
  private final @Nullable Object[] facts;
  private boolean readsInherited;
  private @Nullable CheckedFormula tolerance;
  private final List<Compared> atWorst = new ArrayList<>();

  /**
   * A comparison that is to hold even at worst.
   *
   * @param overRows whether it runs in each of the rows that an aggregate goes through
   */
  public record Compared(AtWorst node, boolean overRows) {}

  private long writtenOut;

  private final List<LateName> lateNames = new ArrayList<>();

  private final Map<Integer, Form> holeForms = new HashMap<>();

  CheckedFormula(Formula formula, Scope scope) {
    this.formula = formula;
    this.scope = scope;
    this.kinds = new @Nullable Kind[formula.nodeCount()];
    this.facts = new @Nullable Object[formula.nodeCount()];
    this.writtenOut = formula.nodeCount();
  }

  /**
   * What is known of a node of a formula that nobody wrote.
   *
   * @param fact what there is to know besides its kind; absent where there is nothing
   */
  public record NodeFact(Expression node, Kind kind, @Nullable Object fact) {}

  /**
   * A formula that nobody wrote, of which all is known.
   *
   * @param nodes what is known of each of its nodes
   * @param needs what it reads
   */
  public static CheckedFormula synthetic(
      Formula formula, Scope scope, Collection<NodeFact> nodes, Collection<Need> needs) {
    CheckedFormula checked = new CheckedFormula(formula, scope);
    for (NodeFact known : nodes) {
      checked.kinds[known.node().id()] = known.kind();
      checked.facts[known.node().id()] = known.fact();
    }
    checked.needs.addAll(needs);
    return checked;
  }

  public Formula formula() {
    return formula;
  }

  public Expression expression() {
    return formula.expression();
  }

  public Scope scope() {
    return scope;
  }

  /** What stands behind its {@code ±}; absent where nothing does. */
  public @Nullable CheckedFormula tolerance() {
    return tolerance;
  }

  void setTolerance(CheckedFormula checked) {
    tolerance = checked;
  }

  /** Its comparisons that are to hold even at worst. */
  public List<Compared> atWorst() {
    return atWorst;
  }

  /** Whether another formula, made anew of the same parts, says the same. */
  public boolean saysSameAs(CheckedFormula other) {
    return formula.equals(other.formula)
        && Arrays.equals(facts, other.facts)
        && needs.equals(other.needs);
  }

  /** Whether it counts pixels of an image file anywhere. */
  public boolean countsPixels() {
    return countsPixels(formula.expression());
  }

  private boolean countsPixels(Expression node) {
    return isPixelCount(node) || node.children().stream().anyMatch(this::countsPixels);
  }

  /** Whether a node counts the pixels of an image file. */
  public boolean isPixelCount(Expression node) {
    return facts[node.id()] instanceof PixelCount;
  }

  /** What was learned of a node besides its kind; absent where nothing is. */
  public @Nullable Object fact(Expression node) {
    return facts[node.id()];
  }

  /** What it reads, in the order of its words. */
  public Set<Need> needs() {
    return needs;
  }

  /**
   * Whether it reads the value that its place had before a change: what that reads, it needs too.
   */
  public boolean readsInherited() {
    return readsInherited;
  }

  void readInherited() {
    readsInherited = true;
  }

  /** The names of rows that are not known yet, in functions and behind its {@code ±} too. */
  List<LateName> lateNames() {
    if (tolerance == null) {
      return lateNames;
    }
    List<LateName> all = new ArrayList<>(lateNames);
    all.addAll(tolerance.lateNames());
    return all;
  }

  void addLateNames(List<LateName> names) {
    lateNames.addAll(names);
  }

  /** How many nodes it has once each function that it calls is written out in place of its call. */
  public long writtenOut() {
    return writtenOut;
  }

  void writeOut(CheckedFunction function) {
    writtenOut += function.body().writtenOut();
  }

  /** The kind of the whole. */
  public Kind kind() {
    return kind(formula.expression());
  }

  public Kind kind(Expression node) {
    Kind kind = kinds[node.id()];
    return kind == null ? Kind.UNKNOWN : kind;
  }

  /** The value of a literal, its units resolved; a text without holes; a row called by its name. */
  public Value constant(Expression literal) {
    return fact(literal, Value.class);
  }

  /** The value of a formula that is nothing but a literal, a minus before it or not. */
  public Optional<Value> literal() {
    return literal(formula.expression());
  }

  /** The value of a node that is nothing but a literal, a minus or a ± before it or not. */
  public Optional<Value> literal(Expression whole) {
    if (facts[whole.id()] instanceof Value value) {
      return Optional.of(value);
    }
    if (facts[whole.id()] instanceof Operation sign
        && sign.isSign()
        && kind(whole) != Kind.UNKNOWN
        && facts[whole.children().get(0).id()] instanceof Value value) {
      return Optional.of(sign.apply(List.of(value)));
    }
    return Optional.empty();
  }

  public Path path(Reference reference) {
    return fact(reference, Path.class);
  }

  /** The form that a hole of a text asks for; absent where the value shows in its own. */
  public @Nullable Form holeForm(Reference hole) {
    return holeForms.get(hole.id());
  }

  void setHoleForm(Reference reference, Form form) {
    holeForms.put(reference.id(), form);
  }

  /** The operation of an operator or of a call of a built-in function. */
  public Operation operation(Expression node) {
    return fact(node, Operation.class);
  }

  /** The workbook's own function that a call means; absent for a built-in one. */
  public @Nullable CheckedFunction function(Call call) {
    return facts[call.id()] instanceof CheckedFunction function ? function : null;
  }

  public Table table(Aggregate aggregate) {
    return fact(aggregate, Table.class);
  }

  public Table table(Selection selection) {
    return fact(selection, Table.class);
  }

  void setKind(Expression node, Kind kind) {
    kinds[node.id()] = kind;
  }

  void setFact(Expression node, Object fact) {
    facts[node.id()] = fact;
  }

  void need(Need need) {
    needs.add(need);
  }

  private <T> T fact(Expression node, Class<T> type) {
    Object fact = facts[node.id()];
    if (!type.isInstance(fact)) {
      throw new IllegalStateException(
          "no %s known of '%s'".formatted(type.getSimpleName(), node.span().text()));
    }
    return type.cast(fact);
  }
}
