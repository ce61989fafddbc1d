/** How large a workbook and what it names may be; knows nothing else. */
@NullMarked
package org.battenbook.bound;

import org.jspecify.annotations.NullMarked;
