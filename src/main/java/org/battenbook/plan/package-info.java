/**
 * Which part to cut from which stick or sheet: plans that are proven best, or say how far from it
 * they are at most. Knows no workbooks; imports {@code number} and, alone, the solver library.
 *
 * <p>Lengths decide exactly: they are whole ticks of their greatest common divisor. Doubles of the
 * linear programs only guide the search; whatever is called a bound is a sum of whole numbers that
 * was checked against every pattern.
 */
@NullMarked
package org.battenbook.plan;

import org.jspecify.annotations.NullMarked;
