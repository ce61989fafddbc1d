package org.battenbook.cli;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code completion}: prints the script that lets a shell complete commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    versionProvider = Battenbook.Version.class,
    description = {
      "Prints a script for bash and zsh that completes commands and options.",
      "Use it with: source <(battenbook completion)"
    })
final class CompletionCommand implements Runnable {
  private final Output out;

  @Spec @Nullable CommandSpec spec;

  CompletionCommand(Output out) {
    this.out = out;
  }

  @Override
  public void run() {
    CommandSpec root = Objects.requireNonNull(spec).root();
    AutoComplete.bash(root.name(), root.commandLine()).lines().forEach(out::line);
  }
}
