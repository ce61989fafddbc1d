package org.battenbook.planstore;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Random;
import org.battenbook.Golden;
import org.battenbook.bench.SmallShopJobs;
import org.battenbook.plan.PlanWatch;
import org.battenbook.plan.sheet.RandomSheets;
import org.battenbook.plan.sheet.SheetPlanner;
import org.battenbook.plan.sheet.SplitBoards;
import org.battenbook.plan.stick.PublishedSticks;
import org.battenbook.plan.stick.RandomSticks;
import org.battenbook.plan.stick.StickPlanner;
import org.junit.jupiter.api.Test;

/**
 * Plans that were kept are those of today's planners. Where a planner has come to other plans, its
 * {@code VERSION} is raised, and the digests are written anew with {@code -Dgolden=write}.
 */
class PlannerVersionTest {
  private static final String FILE = "plans/digests.txt";
  private static final long STEPS = 2_000_000;
  private static final int JOBS = 30;

  /** Too large for bin completion: a dive of linear programs saves its 49th stick. */
  private static final String NEEDS_LINEAR_PROGRAMS = "Falkenauer_u120_00";

  private static final long STEPS_OF_DIVE = 20_000_000;

  private final MessageDigest sticks = sha256();
  private final MessageDigest sheets = sha256();

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException never) {
      throw new AssertionError(never);
    }
  }

  private static <J, P> void add(Request<J, P> request, MessageDigest to) {
    Encoder plan = new Encoder();
    request.kind().writePlan(request.job(), request.plan(PlanWatch.NONE), plan);
    to.update(plan.bytes());
  }

  private String digests() {
    RandomSticks randomSticks = new RandomSticks(new Random(1));
    RandomSheets randomSheets = new RandomSheets(new Random(1));
    for (int job = 0; job < JOBS; job++) {
      add(Request.of(randomSticks.next(), STEPS), sticks);
      add(Request.of(SmallShopJobs.of(job), STEPS), sticks);
      add(Request.of(randomSheets.next(), STEPS), sheets);
    }
    add(Request.of(PublishedSticks.job(NEEDS_LINEAR_PROGRAMS), STEPS_OF_DIVE), sticks);
    add(Request.of(SplitBoards.job(1, 4, 10, 3, true), STEPS), sheets);
    add(Request.of(SplitBoards.job(2, 6, 12, 0, false), STEPS), sheets);
    return "sticks %d %s\nsheets %d %s\n"
        .formatted(
            StickPlanner.VERSION,
            HexFormat.of().formatHex(sticks.digest()),
            SheetPlanner.VERSION,
            HexFormat.of().formatHex(sheets.digest()));
  }

  @Test
  void other_plans_have_another_version() throws IOException {
    String now = digests();
    Path file = Golden.path(FILE);
    if (Files.exists(file)) {
      assertVersionsTell(Files.readString(file), now);
    }
    Golden.assertSame(FILE, now);
  }

  private static void assertVersionsTell(String before, String now) {
    for (int line = 0; line < 2; line++) {
      String[] old = before.lines().toList().get(line).split(" ", -1);
      String[] other = now.lines().toList().get(line).split(" ", -1);
      if (old[1].equals(other[1])) {
        assertThat(other[2]).as("plans of %s changed: raise VERSION", old[0]).isEqualTo(old[2]);
      }
    }
  }
}
