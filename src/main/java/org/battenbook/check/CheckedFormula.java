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
 * A formula with the results of type checking: the kind and the meaning of each node, in arrays by
 * the node's id. Only the check changes it; later stages only read it.
 */
public final class CheckedFormula {
  private final Formula formula;
  private final Scope scope;
  private final Set<Need> needs = new LinkedHashSet<>();
  private final @Nullable Kind[] kinds;

  /**
   * The meaning of each node, if it has one: the {@link Value} of a literal, the {@link Path} of a
   * reference, the {@link Operation} or {@link CheckedFunction} of a call, or the {@link Table} of
   * an aggregate or a selection.
   */
  private final @Nullable Object[] facts;

  private boolean readsInherited;
  private @Nullable CheckedFormula tolerance;
  private final List<Compared> atWorst = new ArrayList<>();

  /**
   * A comparison marked {@code even at worst}.
   *
   * @param overRows whether it is inside an aggregate or a selection, and so runs for each row
   *     there
   */
  public record Compared(AtWorst node, boolean overRows) {}

  /** See {@link #expandedSize}. */
  private long expandedSize;

  private final List<LateName> lateNames = new ArrayList<>();

  private final Map<Integer, Form> holeForms = new HashMap<>();

  CheckedFormula(Formula formula, Scope scope) {
    this.formula = formula;
    this.scope = scope;
    this.kinds = new @Nullable Kind[formula.nodeCount()];
    this.facts = new @Nullable Object[formula.nodeCount()];
    this.expandedSize = formula.nodeCount();
  }

  /**
   * The kind and meaning of a node of a synthetic formula.
   *
   * @param fact the meaning, as {@link #fact(Expression)} returns it; null if it has none
   */
  public record NodeFact(Expression node, Kind kind, @Nullable Object fact) {}

  /**
   * A formula that the program made, with all results of a check.
   *
   * @param nodes the kind and meaning of each node
   * @param needs what the formula reads
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

  /** The tolerance after its {@code ±}; null if there is none. */
  public @Nullable CheckedFormula tolerance() {
    return tolerance;
  }

  void setTolerance(CheckedFormula checked) {
    tolerance = checked;
  }

  /** Its comparisons marked {@code even at worst}. */
  public List<Compared> atWorst() {
    return atWorst;
  }

  /** Whether another formula, built again, has the same nodes, meanings and needs. */
  public boolean saysSameAs(CheckedFormula other) {
    return formula.equals(other.formula)
        && Arrays.equals(facts, other.facts)
        && needs.equals(other.needs);
  }

  /** Whether any node counts the pixels of an image file. */
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

  /** The meaning of a node: a value, path, operation, function or table; null if it has none. */
  public @Nullable Object fact(Expression node) {
    return facts[node.id()];
  }

  /** What it reads, in the order in which it is written. */
  public Set<Need> needs() {
    return needs;
  }

  /** Whether it reads the value before a change. If so, it also needs what that value needs. */
  public boolean readsInherited() {
    return readsInherited;
  }

  void readInherited() {
    readsInherited = true;
  }

  /** The names of rows that are still to be checked, also in called functions and its tolerance. */
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

  /** The number of nodes once the calls of workbook functions are expanded inline. */
  public long expandedSize() {
    return expandedSize;
  }

  /** Adds a call of a workbook function to the expanded size. */
  void addCall(CheckedFunction function) {
    expandedSize += function.body().expandedSize();
  }

  /** The kind of the formula. */
  public Kind kind() {
    return kind(formula.expression());
  }

  /** The kind of a node; {@link Kind#UNKNOWN} after a fault. */
  public Kind kind(Expression node) {
    Kind kind = kinds[node.id()];
    return kind == null ? Kind.UNKNOWN : kind;
  }

  /**
   * The value of a literal with its units resolved, of a text without holes, or of a row given by
   * its name.
   */
  public Value constant(Expression literal) {
    return fact(literal, Value.class);
  }

  /** The value of a formula that is only a literal, with or without a minus; else empty. */
  public Optional<Value> literal() {
    return literal(formula.expression());
  }

  /** The value of a node that is only a literal, with or without a sign; else empty. */
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

  /** The path that a reference reads. */
  public Path path(Reference reference) {
    return fact(reference, Path.class);
  }

  /** The form that a hole of a text names; null if the value is shown in its own form. */
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

  /** The workbook function of a call; null for a built-in function. */
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

  /** The meaning of a node, which the caller knows to be of a type. */
  private <T> T fact(Expression node, Class<T> type) {
    Object fact = facts[node.id()];
    if (!type.isInstance(fact)) {
      throw new IllegalStateException(
          "no %s known of '%s'".formatted(type.getSimpleName(), node.span().text()));
    }
    return type.cast(fact);
  }
}
