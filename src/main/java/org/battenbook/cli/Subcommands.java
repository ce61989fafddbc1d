package org.battenbook.cli;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The commands of {@code battenbook}, in the order in which its help lists them. */
final class Subcommands {
  private static final String COMPLETION = "completion";

  private final Map<String, Supplier<Object>> makers = new LinkedHashMap<>();

  Subcommands(Surroundings surroundings) {
    Terminal terminal = surroundings.terminal();
    makers.put("start", () -> new StartCommand(terminal));
    makers.put("fill", () -> new FillCommand(surroundings));
    makers.put("cuts", () -> new CutsCommand(surroundings));
    makers.put("why", () -> new WhyCommand(surroundings));
    makers.put("feeds", () -> new FeedsCommand(surroundings));
    makers.put("export", () -> new ExportCommand(surroundings));
    makers.put("standards", () -> new StandardsCommand(terminal));
    makers.put(COMPLETION, () -> new CompletionCommand(terminal.out()));
  }

  /**
   * Makes the command that is called, and no other: each takes time at the start. Makes all of them
   * where none is named, and for the completion, which tells of all.
   */
  Collection<Object> of(String... arguments) {
    String called = arguments.length == 0 ? "" : arguments[0];
    Supplier<Object> maker = makers.get(called);
    return maker == null || called.equals(COMPLETION)
        ? makers.values().stream().map(Supplier::get).toList()
        : List.of(maker.get());
  }
}
