/**
 * Plans which part to cut from which stick, at the least cost, and says how far from the least a
 * plan can be. {@link org.battenbook.plan.stick.StickPlanner} is the entry. Small jobs are searched
 * completely; larger ones by column generation, for which this package alone imports ojAlgo.
 */
@NullMarked
package org.battenbook.plan.stick;

import org.jspecify.annotations.NullMarked;
