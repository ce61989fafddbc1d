package org.battenbook.evaluate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedPlace;

/** Numbers the places of a book, so that results are arrays. */
final class Slots {
  private final Map<Place, Slot> byPlace = new HashMap<>();
  private final List<Slot> inOrder = new ArrayList<>();

  Slots(CheckedBook book) {
    for (CheckedPlace checked : book.places()) {
      Place place = checked.place();
      Slot slot = new Slot(inOrder.size(), place);
      byPlace.put(place, slot);
      inOrder.add(slot);
    }
  }

  int count() {
    return inOrder.size();
  }

  Slot at(int number) {
    return inOrder.get(number);
  }

  Slot of(Place place) {
    Slot slot = byPlace.get(place);
    if (slot == null) {
      throw new IllegalArgumentException("no place " + place);
    }
    return slot;
  }
}
