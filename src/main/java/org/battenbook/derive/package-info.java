/** Where values came from, what they feed, and what a change would move. */
@NullMarked
package org.battenbook.derive;

import org.jspecify.annotations.NullMarked;
