/** Symbolic error propagation: how each ± of a book comes into its values and comparisons. */
@NullMarked
package org.battenbook.tolerance;

import org.jspecify.annotations.NullMarked;
