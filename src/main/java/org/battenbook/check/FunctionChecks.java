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
 * Checks each workbook function by itself, and once more for each list of argument kinds that it is
 * called with: functions are generic in their kinds. A fault of the function itself is reported at
 * its definition, and not again at its calls.
 */
final class FunctionChecks {
  private final TypingContext typing;
  private final Diagnostics diagnostics;

  /** Whether each function, by its definition, has no fault by itself. */
  private final Map<Span, Boolean> sound = new HashMap<>();

  private final Map<Key, Checked> called = new HashMap<>();

  /** The functions being checked now, to detect recursion. */
  private final Set<Span> inProgress = new HashSet<>();

  /**
   * A function and the kinds of a call's arguments.
   *
   * @param definition where the function is defined
   */
  private record Key(Span definition, List<Kind> kinds) {}

  /** The result of a check: the function, or its first fault for these kinds. */
  private record Checked(@Nullable CheckedFunction function, @Nullable Diagnostic fault) {}

  FunctionChecks(TypingContext typing, Diagnostics diagnostics) {
    this.typing = typing;
    this.diagnostics = diagnostics;
  }

  /** Checks functions by themselves, including those that nothing calls. */
  void check(Collection<FunctionDefinition> functions) {
    functions.forEach(this::isSound);
  }

  private boolean isSound(FunctionDefinition definition) {
    Boolean known = sound.get(definition.span());
    if (known == null) {
      Diagnostics own = new Diagnostics();
      List<Kind> kinds =
          definition.parameters().stream().map(typing.environment()::parameterKind).toList();
      known = body(definition, kinds, own) != null && !own.hasFaults();
      sound.put(definition.span(), known);
      diagnostics.addAll(own);
    }
    return known;
  }

  /** See {@link TypingContext#checkCall}. A function that calls itself is a fault, too. */
  @Nullable CheckedFunction call(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics to) {
    if (inProgress.contains(definition.span())) {
      to.fault(
          "function-circle",
          call,
          "'%s' is calculated from itself".formatted(definition.name()),
          "a function cannot call itself, directly or through others");
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
      report(definition, checked.fault(), call, to);
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

  private static void report(
      FunctionDefinition definition, Diagnostic fault, Span call, Diagnostics to) {
    to.fault(
        fault.code(),
        call,
        "'%s' cannot be calculated from these: %s (%s)"
            .formatted(definition.name(), fault.message(), fault.span().place()),
        fault.advice());
  }

  /** Checks the body; null if it could not be parsed. */
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
    inProgress.add(definition.span());
    new FormulaCheck(typing, to, body, kinds).check(null);
    inProgress.remove(definition.span());
    return new CheckedFunction(definition, body);
  }
}
