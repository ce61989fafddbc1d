package org.battenbook.fuzz;

import org.battenbook.plan.PlanWatch;

/**
 * Takes the best plan found after a few questions. Questions are asked after steps of work, so that
 * the same input always gives the same plan.
 */
final class ShortPatience implements PlanWatch {
  private static final int QUESTIONS = 20;

  private int asked;

  @Override
  public boolean isCancelled() {
    return asked++ >= QUESTIONS;
  }
}
