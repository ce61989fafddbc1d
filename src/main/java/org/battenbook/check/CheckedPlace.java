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
 * A place with the results of type checking.
 *
 * @param kind the kind of its values
 * @param form the form in which they are shown; null for values that are not quantities
 * @param layers the formula of each layer
 * @param entries the cells that are written in its rows; none for lines
 * @param furtherNeeds what its comparisons marked {@code even at worst} read, apart from their
 *     sides
 */
public record CheckedPlace(
    Place place,
    Kind kind,
    @Nullable Form form,
    List<Layered> layers,
    Entries entries,
    Set<Need> furtherNeeds) {

  /** The formula of a layer; null if the layer has none. */
  public record Layered(@Nullable CheckedFormula formula) {}

  public CheckedPlace {
    layers = List.copyOf(layers);
  }

  /** The same place with other further needs. */
  public CheckedPlace needing(Set<Need> needs) {
    return new CheckedPlace(place, kind, form, layers, entries, Set.copyOf(needs));
  }

  /** The formulas of all layers, then those in cells. */
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

  /** The number of operations in its formulas, with functions expanded inline. */
  public long operations() {
    long operations = entries.operations();
    for (Layered layer : layers) {
      operations += layer.formula() == null ? 0 : layer.formula().expandedSize();
    }
    return operations;
  }

  /** The names of rows in its formulas and cells that are still to be checked. */
  public List<LateName> lateNames() {
    List<LateName> names = new ArrayList<>(entries.lateNames());
    formulas().forEach(formula -> names.addAll(formula.lateNames()));
    return names;
  }

  /** The formula in effect, that of the last layer; null for an input without one. */
  public @Nullable CheckedFormula formula() {
    return layers.get(layers.size() - 1).formula();
  }

  /** All that its values are calculated from. */
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
