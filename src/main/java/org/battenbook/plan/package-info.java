/**
 * What the planners of {@code plan.stick} and {@code plan.sheet} share: budgets of work, refusals,
 * common steps of lengths and costs, and lower bounds on cost. The planners do not know workbooks.
 *
 * <p>Lengths and costs are whole numbers of a common step. Doubles only guide a search. A bound or
 * a proof uses whole numbers only.
 */
@NullMarked
package org.battenbook.plan;

import org.jspecify.annotations.NullMarked;
