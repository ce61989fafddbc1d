package org.battenbook.workbook;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Parts of large files that are made up of many alike. */
public final class Repeated {
  private Repeated() {}

  /** A text so many times, for the numbers from 0. */
  public static String repeated(int times, IntFunction<String> part) {
    return IntStream.range(0, times).mapToObj(part).collect(Collectors.joining());
  }

  /** A name of letters alone for a number. */
  public static String name(int number) {
    return Integer.toString(number, 5)
        .chars()
        .mapToObj(digit -> String.valueOf((char) ('a' + digit - '0')))
        .collect(Collectors.joining("", "n", "n"));
  }
}
