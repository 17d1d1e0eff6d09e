package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.ui.Cellar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten minutes at the arm say whether a calibration still holds. */
class RecheckCommandTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final Path SESSION = CELLAR.resolve("runs/first-session");
  private static final Path CALIBRATION = CELLAR.resolve("calibrations/2026-09-13.json");

  @TempDir Path temp;
  private final Shell shell = new Shell();

  /** Two speeds of the session, with something changed in their rows, in a folder of their own. */
  private Path runs(UnaryOperator<String> change, String... names) throws IOException {
    Path folder = Files.createDirectories(temp.resolve("two speeds ü"));
    for (String file : List.of("session.csv", "zero.csv", "chain.json")) {
      Files.copy(SESSION.resolve(file), folder.resolve(file));
    }
    List<String> rows = Files.readAllLines(SESSION.resolve("runs.csv"));
    Stream<String> wanted =
        rows.stream().skip(1).filter(row -> List.of(names).contains(row.split(",", -1)[0]));
    Stream<String> all = Stream.concat(Stream.of(rows.get(0)), wanted.map(change));
    return Files.write(folder.resolve("runs.csv"), all.toList());
  }

  /** As if the arm had turned so many times faster. */
  private static UnaryOperator<String> faster(double times) {
    return row -> {
      String[] cells = row.split(",", -1);
      cells[8] = String.format(Locale.ROOT, "%.2f", Double.parseDouble(cells[8]) / times);
      return String.join(",", cells);
    };
  }

  @Test
  void theSameInstrumentAgreesAtEachSpeed() throws IOException {
    Path runs = runs(row -> row, "spin03", "spin06");
    assertThat(shell.run("recheck", CALIBRATION, runs)).as(shell.said()).isZero();
    assertThat(shell.said())
        .contains("spin03: the arm says ")
        .contains("spin06: ")
        .contains("they agree")
        .contains("The calibration still holds.")
        .doesNotContain("differ");
  }

  @Test
  void oneSpeedIsEnough() throws IOException {
    assertThat(shell.run("recheck", CALIBRATION, runs(row -> row, "spin04"))).isZero();
    assertThat(shell.said())
        .contains("spin04: the arm says ")
        .contains("The calibration still holds.");
    Path folder = temp.resolve("two speeds ü/runs.csv");
    assertThat(shell.run("recheck", Cellar.shipped(temp, "rind-1"), folder))
        .as("by the one in force")
        .isZero();
    shell.run("new", temp.resolve("fresh"));
    assertThat(shell.run("recheck", temp.resolve("fresh"), folder)).isEqualTo(3);
  }

  @Test
  void whatWasFoundIsKeptAndMovesTheDueDate() throws IOException {
    Path rind = Cellar.shipped(temp, "rind-1");
    Path runs = runs(faster(1.1), "spin03", "spin06");
    assertThat(shell.run("recheck", rind, runs, "--who", "Jo")).as(shell.said()).isEqualTo(4);
    assertThat(shell.said()).contains("they differ").contains("runs/check-1/runs.csv");
    assertThat(rind.resolve("runs/check-1/session.csv"))
        .hasSameBinaryContentAs(SESSION.resolve("session.csv"));
    String journal = Files.readString(rind.resolve("journal.jsonl"));
    assertThat(journal).contains("\"kind\":\"check-table\"").contains("\"what\":\"recheck\"");
    assertThat(shell.run("check", rind)).as(shell.said()).isZero();
    assertThat(shell.said()).contains("a check at the arm differs from it");
    Path page = temp.resolve("page.html");
    assertThat(shell.run("report", rind, "--certificate", "--out", page)).isZero();
    assertThat(Files.readString(page)).contains("a check at the arm differs from it");
    Files.writeString(rind.resolve("runs/check-1/runs.csv"), "changed");
    assertThat(shell.run("check", rind)).isEqualTo(3);
  }

  @Test
  void oneThatReadsATenthLessIsDue() throws IOException {
    Path runs = runs(faster(1.1), "spin03", "spin06");
    assertThat(shell.run("recheck", CALIBRATION, runs)).as(shell.said()).isEqualTo(4);
    assertThat(shell.said()).contains("they differ").contains("Calibrate the instrument again");
    assertThat(shell.said().lines().filter(line -> line.contains("En -")).toList()).hasSize(2);
  }

  @Test
  void oneOfTwoThatDiffersIsEnough() throws IOException {
    Path runs =
        runs(row -> row.startsWith("spin06") ? faster(1.15).apply(row) : row, "spin03", "spin06");
    assertThat(shell.run("recheck", CALIBRATION, runs)).isEqualTo(4);
    assertThat(shell.said()).contains("they agree").contains("they differ");
  }

  @Test
  void runsWithoutASpeedAndFilesThatAreNotThereAreRefused() throws IOException {
    Path runs = runs(row -> row, "still");
    assertThat(shell.run("recheck", CALIBRATION, runs)).as(shell.said()).isEqualTo(3);
    assertThat(shell.said()).contains("No run of this table gives the speed of the air.");
    assertThat(shell.run("recheck", CALIBRATION, temp.resolve("none.csv"))).isEqualTo(1);
    assertThat(shell.run("recheck", temp.resolve("none.json"), runs)).isEqualTo(1);
    assertThat(shell.run("recheck", runs, runs)).isEqualTo(3);
    assertThat(shell.run("recheck", CALIBRATION)).isEqualTo(2);
  }
}
