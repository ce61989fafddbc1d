package org.battenbook.check;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.battenbook.bind.Scope;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Checks each function by itself, and once more for each list of kinds that it is called with. What
 * is wrong with a function by itself is told where it stands, and calls of it say no more.
 */
final class FunctionChecks {
  private final Knowledge knowledge;
  private final Diagnostics diagnostics;
  private final Map<Span, Boolean> sound = new HashMap<>();
  private final Map<Key, Checked> called = new HashMap<>();
  private final Set<Span> underway = new HashSet<>();

  /**
   * A function for arguments of some kinds.
   *
   * @param definition where it stands
   */
  private record Key(Span definition, List<Kind> kinds) {}

  /** What came of it: a function, or else what is the first thing wrong with it for these kinds. */
  private record Checked(@Nullable CheckedFunction function, @Nullable Diagnostic fault) {}

  FunctionChecks(Knowledge knowledge, Diagnostics diagnostics) {
    this.knowledge = knowledge;
    this.diagnostics = diagnostics;
  }

  /** Checks functions by themselves, so that one that nothing calls is not left unread. */
  void check(Collection<FunctionDefinition> functions) {
    functions.forEach(this::isSound);
  }

  private boolean isSound(FunctionDefinition definition) {
    Boolean known = sound.get(definition.span());
    if (known == null) {
      Diagnostics own = new Diagnostics();
      List<Kind> kinds = definition.parameters().stream().map(knowledge::parameterKind).toList();
      known = body(definition, kinds, own) != null && !own.hasFaults();
      sound.put(definition.span(), known);
      diagnostics.addAll(own);
    }
    return known;
  }

  /**
   * A function for the kinds of a call; absent, with a message unless it is told where the function
   * stands, if it does not fit them.
   */
  @Nullable CheckedFunction call(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics to) {
    if (underway.contains(definition.span())) {
      to.fault(
          "function-circle",
          call,
          "'%s' is worked out from itself".formatted(definition.name()),
          "a function may not call itself, directly or through others");
      return null;
    }
    if (!isSound(definition)) {
      return null;
    }
    Key key = new Key(definition.span(), kinds);
    Checked checked = called.get(key);
    if (checked == null) {
      checked = checked(definition, kinds);
      called.put(key, checked);
    }
    if (checked.fault() != null) {
      tell(definition, checked.fault(), call, to);
    }
    return checked.function();
  }

  private Checked checked(FunctionDefinition definition, List<Kind> kinds) {
    Diagnostics ofBody = new Diagnostics();
    CheckedFunction function = body(definition, kinds, ofBody);
    return ofBody.inOrder().stream()
        .filter(Diagnostic::isFault)
        .findFirst()
        .map(fault -> new Checked(null, fault))
        .orElseGet(() -> new Checked(function, null));
  }

  private static void tell(
      FunctionDefinition definition, Diagnostic fault, Span call, Diagnostics to) {
    to.fault(
        fault.code(),
        call,
        "'%s' cannot be worked out from these: %s (%s)"
            .formatted(definition.name(), fault.message(), fault.span().place()),
        fault.advice());
  }

  /** The body, checked; absent where it could not be read. */
  private @Nullable CheckedFunction body(
      FunctionDefinition definition, List<Kind> kinds, Diagnostics to) {
    Formula formula = definition.formula();
    if (formula == null) {
      return null;
    }
    Scope scope =
        Scope.ofFunction(
            definition.span().source(),
            definition.parameters().stream().map(FunctionDefinition.Parameter::name).toList());
    CheckedFormula body = new CheckedFormula(formula, scope);
    underway.add(definition.span());
    new FormulaCheck(knowledge, to, body, kinds).check(null);
    underway.remove(definition.span());
    return new CheckedFunction(definition, body);
  }
}
