package org.battenbook.check;

import java.util.List;
import java.util.Map;
import org.battenbook.book.Place;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Span;
import org.battenbook.syntax.FunctionDefinition;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/** The typing context for an edit of a checked book, in which every kind is known. */
final class CheckedKinds implements TypingContext {
  private final CheckEnvironment environment;
  private final Map<Place, CheckedPlace> places;
  private final FunctionChecks functions = new FunctionChecks(this, new Diagnostics());

  CheckedKinds(CheckEnvironment environment, Map<Place, CheckedPlace> places) {
    this.environment = environment;
    this.places = places;
  }

  @Override
  public CheckEnvironment environment() {
    return environment;
  }

  @Override
  public Kind kind(Place place) {
    CheckedPlace known = places.get(place);
    return known == null ? Kind.UNKNOWN : known.kind();
  }

  @Override
  public @Nullable CheckedFunction checkCall(
      FunctionDefinition definition, List<Kind> kinds, Span call, Diagnostics diagnostics) {
    return functions.call(definition, kinds, call, diagnostics);
  }
}
