package org.battenbook.value;

/** One case for each kind of {@link Value}; no defaults, so that none is forgotten. */
public interface ValueVisitor<R> {
  R amount(Value.Amount amount);

  R text(Value.Text text);

  R yesNo(Value.YesNo yesNo);

  R day(Value.Day day);

  R row(Value.Row row);

  R fault(Value.Fault fault);

  R waiting(Value.Waiting waiting);
}
