package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code faintwind class}: made once, looked at, printed, reported. */
class ClassCommandTest {
  @TempDir Path temp;
  private final Shell shell = new Shell();

  @Test
  void fromMakingToTheReportWithoutAnybodysName() throws IOException {
    Path folder = temp.resolve("class");
    int made =
        shell.run(
            "class", "create", folder, "--pairs", 2, "--nickname", "Otters", "--name", "Year 10");
    assertThat(made).as(shell.said()).isZero();
    copy(Path.of("demo-projects/cellar"), folder.resolve("pair-02"));
    assertThat(shell.run("class", "show", folder, "--html", temp.resolve("c.html"))).isZero();
    assertThat(shell.said())
        .contains("Year 10: 2 pairs", "Pair 1, Otters: 0/5", "Heater alone: 100")
        .contains("No lesson is to come.");
    assertThat(Files.readString(temp.resolve("c.html"))).contains("<svg", "Otters");
    assertThat(shell.run("class", "lesson", folder, "--minutes", 60)).isZero();
    assertThat(shell.said()).contains("Pair 1, Otters: Write down what the instrument is for");
    Path sheet = temp.resolve("sheet.html");
    assertThat(shell.run("class", "lesson", folder, "--minutes", 60, "--pair", 1, "--out", sheet))
        .as(shell.said())
        .isZero();
    assertThat(Files.readString(sheet)).contains("Write down what the instrument is for");
    Path labels = temp.resolve("labels.html");
    assertThat(shell.run("class", "labels", folder, "--out", labels)).isZero();
    assertThat(Files.readString(labels)).contains("Pair 2", "pair-01");
    Path report = temp.resolve("report.html");
    assertThat(shell.run("class", "report", folder, "--out", report)).isZero();
    assertThat(Files.readString(report))
        .contains("0.097 to 2.9\u00a0m/s", "% at 0.1\u00a0m/s", "not calibrated yet")
        .doesNotContain("Made-up builder");
  }

  @Test
  void aDesignThatIsRefusedLeavesNothingBehind() throws IOException {
    Path folder = temp.resolve("class");
    Path broken = Files.writeString(temp.resolve("mine.json"), "{\"format\":");
    assertThat(shell.run("class", "create", folder, "--pairs", 2, "--design", broken)).isEqualTo(3);
    assertThat(shell.said()).contains("mine.json");
    assertThat(folder).doesNotExist();
    Path good = Path.of("assets/examples/design.json");
    assertThat(shell.run("class", "create", folder, "--pairs", 2, "--design", good)).isZero();
    assertThat(folder.resolve("design.json")).hasSameBinaryContentAs(good);
    assertThat(Files.readString(folder.resolve("pair-02/journal.jsonl")))
        .contains("\"what\":\"design\"");
  }

  @Test
  void misuseSaysWhatIsExpected() {
    Path folder = temp.resolve("class");
    assertThat(shell.run("class")).isEqualTo(2);
    assertThat(shell.said()).contains("create, ", "show");
    assertThat(shell.run("class", "create", folder, "--pairs", 0, "--lesson", "monday"))
        .isEqualTo(2);
    assertThat(shell.said())
        .contains("Pairs 0 is outside its range", "from 1 to 30", "\"monday\" is no lesson");
    assertThat(shell.run("class", "show", folder)).isEqualTo(1);
    assertThat(folder).doesNotExist();
  }

  @Test
  void everythingThatIsNotRightIsSaidAtOnceAndNothingIsWritten() {
    Path folder = temp.resolve("class");
    int made =
        shell.run(
            "class",
            "create",
            folder,
            "--pairs",
            1,
            "--nickname",
            "Otters",
            "--nickname",
            "Newts",
            "--lesson",
            "2026-02-30T09:50/45",
            "--lesson",
            "2026-12-01 09:50/601");
    assertThat(made).isEqualTo(2);
    assertThat(shell.said())
        .contains("more nicknames (2) than pairs (1)")
        .contains("\"2026-02-30T09:50\" is not a day and time", "from 1 to 600");
    made =
        shell.run(
            "class",
            "create",
            folder,
            "--pairs",
            1,
            "--name",
            " ",
            "--code",
            "471",
            "--role",
            "",
            "--lesson",
            "2026-12-01T09:50/45",
            "--lesson",
            "2026-12-01T10:34/45");
    assertThat(made).isEqualTo(3);
    assertThat(shell.said())
        .contains("The class has no name", "The code is too short", "One of the roles")
        .contains("begins before the one that lasts until 1 December 2026, 10:35");
    assertThat(folder).doesNotExist();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(to)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Files.delete(file);
      }
    }
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }
}
