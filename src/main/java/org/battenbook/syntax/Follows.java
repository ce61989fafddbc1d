package org.battenbook.syntax;

import org.jspecify.annotations.Nullable;

/**
 * {@code follows "shop.batten" edition "2026"}.
 *
 * @param edition the edition that it asks for, if any
 */
public record Follows(Quoted path, @Nullable Quoted edition) {}
