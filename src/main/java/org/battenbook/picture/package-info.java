/** Image files: how many pixels they have, out of their first bytes; alone imports the library. */
@NullMarked
package org.battenbook.picture;

import org.jspecify.annotations.NullMarked;
