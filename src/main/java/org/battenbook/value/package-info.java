/** The values that formulas give, and the kinds they are of. */
@NullMarked
package org.battenbook.value;

import org.jspecify.annotations.NullMarked;
