package org.battenbook.check;

/** A visitor of {@link Target}, without defaults, so that no case is forgotten. */
public interface TargetVisitor<R> {
  R here(Target.Here here);

  R above(Target.Above above);

  R outer(Target.Outer outer);

  R outerRow(Target.OuterRow outerRow);

  R parameter(Target.Parameter parameter);

  R inherited(Target.Inherited inherited);

  R setting(Target.Setting setting);
}
