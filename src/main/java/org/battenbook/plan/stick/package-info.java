/**
 * Plans how to cut parts from sticks at the minimum cost: the one-dimensional cutting stock
 * problem. Each plan has a lower bound on the cost of any plan. {@link
 * org.battenbook.plan.stick.StickPlanner} is the entry point. Small jobs are searched completely by
 * bin completion, larger ones by column generation. Only this package imports the linear solver,
 * ojAlgo.
 */
@NullMarked
package org.battenbook.plan.stick;

import org.jspecify.annotations.NullMarked;
