package org.battenbook.unit;

/**
 * A quantity as people read it.
 *
 * @param text with its unit; begins with {@code ≈ } if the form cannot hold the value exactly
 * @param approximate whether it begins so
 */
public record Shown(String text, boolean approximate) {}
