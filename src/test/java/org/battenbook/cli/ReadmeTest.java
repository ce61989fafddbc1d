package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What README and the guide show is what the program answers; an ellipsis at the end says that more
 * follows.
 */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Path GUIDE = Path.of("workbooks/GUIDE.md");
  private static final String PROMPT = "$ battenbook ";

  /** It would write into the folder of the project; {@code StartCommandTest} runs it. */
  private static final String START = PROMPT + "start ";

  private static final Pattern BLOCK = Pattern.compile("```\\w*\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TestFactory
  Stream<DynamicTest> each_command_answers_as_shown() throws IOException {
    return Stream.concat(runs(README).stream(), runs(GUIDE).stream())
        .map(run -> dynamicTest(run.lines().findFirst().orElse(""), () -> check(run)));
  }

  private static List<String> runs(Path file) throws IOException {
    List<String> runs =
        blocks(file).stream()
            .filter(block -> block.startsWith(PROMPT))
            .filter(block -> !block.startsWith(START))
            .toList();
    assertThat(runs).as(file.toString()).hasSizeGreaterThan(2);
    return runs;
  }

  private static void check(String run) {
    int end = run.indexOf('\n');
    String shown = run.substring(end + 1);
    CommandRun answer = CommandRun.of(words(run.substring(PROMPT.length(), end)));
    String told = answer.out() + answer.err();
    if (shown.endsWith("…\n")) {
      assertThat(told).startsWith(shown.substring(0, shown.lastIndexOf('…')).stripTrailing());
    } else {
      assertThat(told.stripTrailing()).isEqualTo(shown.stripTrailing());
    }
  }

  @Test
  void the_first_workbook_stands_there_as_it_is_shipped() throws IOException {
    assertThat(blocks(README)).contains(Files.readString(Path.of("workbooks/first-frame.batten")));
  }

  private static List<String> blocks(Path file) throws IOException {
    List<String> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(Files.readString(file));
    while (matcher.find()) {
      blocks.add(matcher.group(1));
    }
    return blocks;
  }

  private static String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return words.toArray(String[]::new);
  }
}
