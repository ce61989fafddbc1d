/** Source text, spans and diagnostics, and how they are printed. Imports the JDK alone. */
@NullMarked
package org.battenbook.source;

import org.jspecify.annotations.NullMarked;
