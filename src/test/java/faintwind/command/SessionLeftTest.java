package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was recorded at the turntable and then left is named, and can be kept later. */
@Tag("long")
class SessionLeftTest {
  @TempDir Path temp;
  private final Shell shell = new Shell();

  @Test
  void aSessionThatWasCutOffIsNamedAndKeptLater() throws IOException {
    Path rind = Cellar.shipped(temp, "rind ü 1");
    Path left = Files.createDirectories(rind.resolve("runs/2026-10-01"));
    for (String file : List.of("runs.csv", "session.csv", "zero.csv", "chain.json")) {
      Files.copy(rind.resolve("runs/first-session").resolve(file), left.resolve(file));
    }
    byte[] all = Files.readAllBytes(left.resolve("session.csv"));
    Files.write(left.resolve("session.csv"), Arrays.copyOf(all, all.length - 7));
    assertThat(shell.run("check", rind)).as(shell.said()).isZero();
    assertThat(shell.said())
        .contains("(runs/2026-10-01/session.csv)", "(runs/2026-10-01/runs.csv)")
        .contains("This was recorded in a session at the turntable")
        .contains("note " + rind + " --runs " + left.resolve("runs.csv"));
    assertThat(shell.run("note", rind, "--runs", left.resolve("runs.csv"), "--who", "Jo"))
        .as(shell.said())
        .isZero();
    Shell after = new Shell();
    assertThat(after.run("check", rind)).isZero();
    assertThat(after.said()).contains("no errors, no warnings");
  }
}
