package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings that tested something else are struck in every view, and a short is never good. */
class VoidReadingsTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final Pattern ROW = Pattern.compile("<tr.*?</tr>", Pattern.DOTALL);

  @TempDir Path temp;
  private Path folder;
  private final Shell shell = new Shell();

  @BeforeEach
  void copyTheCellar() throws IOException {
    folder = temp.resolve("Käse 🧀 rind");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
  }

  private String said(Object... words) {
    shell.run(words);
    return shell.said();
  }

  /** Rows of the build log with a text in them. */
  private List<String> rows(String with) throws IOException {
    Path log = temp.resolve("log.html");
    assertThat(shell.run("report", folder, "--out", log, "--force")).isZero();
    return ROW.matcher(Files.readString(log))
        .results()
        .map(found -> found.group())
        .filter(row -> row.contains(with))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"glue-heater", "make-junctions", "glue-junctions", "mount-pair"})
  void workDoneAgainUndoesWhatWasMeasuredOnIt(String work) throws IOException {
    assertThat(shell.run("note", folder, "--repair", "--step", work, "it came off, made anew"))
        .isZero();
    assertThat(said("step", folder, "mounted-check"))
        .contains("struck: ")
        .contains("was done again since. Measure again.")
        .doesNotContain(": good (");
    assertThat(said("check", folder))
        .contains("Loop to a heater lead, mounted has to be measured again")
        .contains("Heater power was used");
    assertThat(said("steps", folder)).contains("(first-power): after ");
    assertThat(rows("Loop to a heater lead, mounted"))
        .isNotEmpty()
        .allMatch(row -> row.contains("easure again"))
        .noneMatch(row -> row.contains("</svg> good"));
  }

  @Test
  void typedBeforeItsStepWasReachedItCountsNowhere() throws IOException {
    folder = temp.resolve("fresh");
    shell.run("new", folder);
    assertThat(shell.run("reading", folder, "mounted-check", "loop-mounted", "8.5")).isEqualTo(4);
    assertThat(said("step", folder, "mounted-check"))
        .contains("struck: 8.5")
        .contains("Measure again");
    assertThat(rows("Loop, end to end, mounted"))
        .isNotEmpty()
        .allMatch(row -> row.contains("easure again"));
  }

  @Test
  void typedBeforeTheClockOfItsStepHadEndedItCountsNowhere() throws IOException {
    assertThat(shell.run("step", folder, "jar-check", "--start-clock")).isZero();
    assertThat(shell.run("reading", folder, "jar-check", "jar-delta", "31.5")).isEqualTo(4);
    assertThat(shell.said()).contains("had ended");
    assertThat(said("step", folder, "jar-check"))
        .contains("struck: 31.5")
        .contains("had ended. Measure again.");
    assertThat(said("steps", folder))
        .contains("(jar-check): ")
        .containsPattern("ends \\d+ \\w+ 20");
    assertThat(rows("31.5")).isNotEmpty().allMatch(row -> row.contains("easure again"));
  }

  @Test
  void aShortOf27OhmIsAStopEverywhere() throws IOException {
    assertThat(shell.run("reading", folder, "loop-insulation", "loop-heater", "27 Ohm"))
        .isEqualTo(4);
    assertThat(shell.said()).contains("stop");
    assertThat(said("step", folder, "loop-insulation")).contains("27 Ohm: stop");
    assertThat(shell.run("check", folder)).isEqualTo(3);
    assertThat(shell.said()).contains("The heater was on").contains("says stop");
    assertThat(shell.run("step", folder, "loop-insulation", "--finish")).isEqualTo(3);
    String reason = "surely the wrong range of that meter";
    assertThat(
            shell.run(
                "step", folder, "loop-insulation", "--waive", "loop-heater", "--because", reason))
        .isEqualTo(3);
    assertThat(shell.run("put-in-force", folder)).isZero();
    assertThat(shell.said()).contains("Stop in ");
    assertThat(rows("27 Ohm"))
        .isNotEmpty()
        .anyMatch(row -> row.contains("</svg> stop"))
        .noneMatch(row -> row.contains("</svg> good"));
  }
}
