/** Names to the places they mean, and places as people say them. */
@NullMarked
package org.battenbook.bind;

import org.jspecify.annotations.NullMarked;
