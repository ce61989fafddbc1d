/** Dimensions, units with exact factors, quantities and the forms they are shown in. */
@NullMarked
package org.battenbook.unit;

import org.jspecify.annotations.NullMarked;
