package org.battenbook.check;

import java.util.List;
import java.util.Optional;
import org.battenbook.book.Place;
import org.jspecify.annotations.Nullable;

/**
 * What a reference reads: a target, then a column for each dot, as in {@code moulding.face}.
 *
 * @param target what the first name reads
 * @param through the columns after the dots; each is read in the row that the value before it names
 */
public record Path(Target target, List<Place> through) {
  public Path {
    through = List.copyOf(through);
  }

  /** The place whose value it gives; null if it gives a row, an argument or a setting. */
  public @Nullable Place place() {
    return through.isEmpty()
        ? target.accept(new PlaceOf()).orElse(null)
        : through.get(through.size() - 1);
  }

  private record PlaceOf() implements TargetVisitor<Optional<Place>> {
    @Override
    public Optional<Place> here(Target.Here here) {
      return Optional.of(here.place());
    }

    @Override
    public Optional<Place> above(Target.Above above) {
      return Optional.of(above.column());
    }

    @Override
    public Optional<Place> outer(Target.Outer outer) {
      return Optional.of(outer.column());
    }

    @Override
    public Optional<Place> outerRow(Target.OuterRow outerRow) {
      return Optional.empty();
    }

    @Override
    public Optional<Place> parameter(Target.Parameter parameter) {
      return Optional.empty();
    }

    @Override
    public Optional<Place> inherited(Target.Inherited inherited) {
      return Optional.of(inherited.place());
    }

    @Override
    public Optional<Place> setting(Target.Setting setting) {
      return Optional.empty();
    }
  }
}
