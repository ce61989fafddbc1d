package org.battenbook.evaluate;

import org.battenbook.bind.Rows;
import org.battenbook.book.Table;
import org.battenbook.check.Decisions;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Passes on what results say of rows; what else is read of them is for others to tell. */
abstract class PassedReading implements Reading {
  final Results results;

  PassedReading(Results results) {
    this.results = results;
  }

  @Override
  public Rows rows(Table table) {
    return results.rows(table);
  }

  @Override
  public final Decisions decisions() {
    return results.decisions();
  }

  @Override
  public final Written written(CompiledPlace column) {
    return results.written(column);
  }

  @Override
  public final @Nullable Value missingRows(Table table) {
    return results.missingRows(table);
  }
}
