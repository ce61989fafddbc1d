/**
 * What the planners of {@code plan.stick} and {@code plan.sheet} share: counted work, refusals,
 * exact common steps of lengths and costs, and lower bounds on cost. Knows no workbooks.
 *
 * <p>Lengths and costs are whole numbers of a common step. Doubles only guide a search; a bound is
 * always a sum of whole numbers.
 */
@NullMarked
package org.battenbook.plan;

import org.jspecify.annotations.NullMarked;
