package org.battenbook.check;

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

/** Checks a workbook's own functions, once for the arguments' kinds of all calls that are alike. */
final class FunctionChecks {
  private final Knowledge knowledge;
  private final Map<Key, CheckedFunction> known = new HashMap<>();
  private final Set<Span> underway = new HashSet<>();

  /**
   * A function for arguments of some kinds.
   *
   * @param definition where it stands
   */
  private record Key(Span definition, List<Kind> kinds) {}

  FunctionChecks(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /** Checks each function by itself, so that one that nothing calls is not left unread. */
  void checkAll(List<FunctionDefinition> functions, Diagnostics diagnostics) {
    for (FunctionDefinition function : functions) {
      List<Kind> kinds = function.parameters().stream().map(knowledge::parameterKind).toList();
      body(function, kinds, diagnostics);
    }
  }

  private @Nullable CheckedFunction body(
      FunctionDefinition definition, List<Kind> kinds, Diagnostics to) {
    Formula formula = definition.formula();
    if (formula == null || !underway.add(definition.span())) {
      return null;
    }
    Scope scope =
        Scope.ofFunction(
            definition.span().source(),
            definition.parameters().stream().map(FunctionDefinition.Parameter::name).toList());
    CheckedFormula body = new CheckedFormula(formula, scope);
    new FormulaCheck(knowledge, to, body, kinds).check(null);
    underway.remove(definition.span());
    return new CheckedFunction(definition, body);
  }

  /** A function checked for a call's kinds; absent, and a message given, where they do not fit. */
  @Nullable CheckedFunction checkCall(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics to) {
    Key key = new Key(definition.span(), kinds);
    CheckedFunction before = known.get(key);
    if (before != null) {
      return before;
    }
    Diagnostics ofBody = new Diagnostics();
    CheckedFunction function = body(definition, kinds, ofBody);
    if (function == null && definition.formula() == null) {
      return null;
    }
    if (function == null) {
      to.fault(
          "function-circle",
          call,
          "'%s' is worked out from itself".formatted(definition.name()),
          "a function may not call itself, directly or through others");
      return null;
    }
    List<Diagnostic> faults = ofBody.inOrder().stream().filter(Diagnostic::isFault).toList();
    if (!faults.isEmpty()) {
      Diagnostic first = faults.get(0);
      to.fault(
          first.code(),
          call,
          "'%s' cannot be worked out from these: %s (%s)"
              .formatted(definition.name(), first.message(), first.span().place()),
          first.repair());
      return null;
    }
    known.put(key, function);
    return function;
  }
}
