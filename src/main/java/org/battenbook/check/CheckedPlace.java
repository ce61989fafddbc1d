package org.battenbook.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.battenbook.book.Place;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * A place whose formulas are checked.
 *
 * @param kind the kind of its values
 * @param form how they are shown; absent for values that are not quantities
 * @param layers the formula of each layer, absent where the layer has none
 * @param entries what rows say of their own; none for lines and for columns without a heading
 * @param furtherNeeds what its comparisons read, beside their sides, to hold even at worst
 */
public record CheckedPlace(
    Place place,
    Kind kind,
    @Nullable Form form,
    List<Layered> layers,
    Entries entries,
    Set<Need> furtherNeeds) {

  /** A layer's formula, or none. */
  public record Layered(@Nullable CheckedFormula formula) {}

  public CheckedPlace {
    layers = List.copyOf(layers);
  }

  /** The same place, its comparisons needing this to hold even at worst. */
  public CheckedPlace needing(Set<Need> needs) {
    return new CheckedPlace(place, kind, form, layers, entries, Set.copyOf(needs));
  }

  /** Those of all layers, then those in cells. */
  public List<CheckedFormula> formulas() {
    List<CheckedFormula> formulas = new ArrayList<>();
    for (Layered layer : layers) {
      if (layer.formula() != null) {
        formulas.add(layer.formula());
      }
    }
    formulas.addAll(entries.formulas());
    return formulas;
  }

  /** The operations of its formulas, functions written out. */
  public long operations() {
    long operations = entries.operations();
    for (Layered layer : layers) {
      operations += layer.formula() == null ? 0 : layer.formula().writtenOut();
    }
    return operations;
  }

  /** The names of rows that are not known yet, in its formulas and cells. */
  public List<LateName> lateNames() {
    List<LateName> names = new ArrayList<>(entries.lateNames());
    formulas().forEach(formula -> names.addAll(formula.lateNames()));
    return names;
  }

  /** The formula that holds; absent where the place is given and not filled in. */
  public @Nullable CheckedFormula formula() {
    return layers.get(layers.size() - 1).formula();
  }

  /** All that its values are worked out from. */
  public Set<Need> needs() {
    Set<Need> needs = new LinkedHashSet<>();
    boolean goesDeeper = true;
    for (int i = layers.size() - 1; i >= 0 && goesDeeper; i--) {
      CheckedFormula formula = layers.get(i).formula();
      goesDeeper = formula != null && formula.readsInherited();
      if (formula != null) {
        needs.addAll(formula.needs());
      }
    }
    entries.formulas().forEach(cell -> needs.addAll(cell.needs()));
    needs.addAll(furtherNeeds);
    return needs;
  }
}
