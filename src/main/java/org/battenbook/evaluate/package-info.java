/** Plans, stages and results: works out every place of a checked book. */
@NullMarked
package org.battenbook.evaluate;

import org.jspecify.annotations.NullMarked;
