package faintwind;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Exit codes and streams of real processes; what they say is tested without processes. */
@Timeout(120)
class CommandLineProcessTest {
  private static final Path RESOURCES = Path.of("src/test/resources");
  private static final String CALIBRATION = RESOURCES.resolve("golden/calibration.json").toString();

  @TempDir Path folder;

  private record Ended(int code, String out, String err) {}

  @Test
  void versionIsToldWithExitCode0() throws Exception {
    Ended ended = run("convert", "--version");
    assertThat(ended.code()).isZero();
    assertThat(ended.out()).matches("faintwind \\d+\\.\\d+\\.\\d+\\R");
  }

  @Test
  void missingFolderIsTheWorldsFaultWithExitCode1() throws Exception {
    Path log = log("log.csv", "0,20");
    Ended ended =
        run("convert", CALIBRATION, log.toString(), "--out", folder + "/nowhere/speeds.csv");
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err()).contains("nowhere").contains("There is no such folder.");
  }

  @Test
  void wrongOptionIsMisuseWithExitCode2() throws Exception {
    assertThat(run("calibrate", "--speed", "9").code()).isEqualTo(2);
  }

  @Test
  void refusedTableGivesExitCode3AndWritesNothing() throws Exception {
    Path out = folder.resolve("cal.json");
    String table = RESOURCES.resolve("refused/runs-table/radius-zero.csv").toString();
    Ended ended = run("calibrate", table, "--out", out.toString());
    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("radius-zero.csv, run spin, line 3, radius_mm");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void badLogAmongGoodOnesGivesExitCode4AndTheOthersAreConverted() throws Exception {
    Path good = log("good.csv", "0,20");
    Path bad = log("bad.csv", "\"0,0\",\"20,1\"");
    String target = folder.resolve("speeds").toString();
    Ended ended = run("convert", CALIBRATION, good.toString(), bad.toString(), "--out-dir", target);
    assertThat(ended.code()).isEqualTo(4);
    assertThat(ended.err()).contains("bad.csv: None of the 1 rows could be read.");
    assertThat(folder.resolve("speeds/good.csv")).isRegularFile();
    assertThat(folder.resolve("speeds/bad.csv")).doesNotExist();
  }

  @Test
  void streamHandsEachRowOnBeforeTheNextArrives() throws Exception {
    Process process =
        start("convert", CALIBRATION, "-", "--out", "-").redirectError(nothing()).start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      OutputStream in = process.getOutputStream();
      send(in, "time_s,delta_K,note\n");
      assertThat(out.readLine()).isEqualTo("time_s,delta_K,note,speed_m_s,u95_m_s,flag");
      for (int i = 0; i < 5; i++) {
        send(in, i + ",20.5,row " + i + "\n");
        assertThat(out.readLine()).startsWith(i + ",20.5,row " + i + ",");
      }
      send(in, "six,?,row 5\n");
      assertThat(out.readLine()).isEqualTo("six,?,row 5,,,bad");
      in.close();
      assertThat(out.readLine()).isNull();
    }
    assertThat(process.waitFor()).isZero();
  }

  /** Fonts of a page need the folder for temporary files; without it an Error came through. */
  @Test
  @Tag("long")
  void reportWithoutAFolderForTemporaryFilesNamesIt() throws Exception {
    List<String> command = new ArrayList<>(start("report", "demo-projects/cellar").command());
    command.add(1, "-Djava.io.tmpdir=" + folder.resolve("gone"));
    command.addAll(List.of("--out", folder.resolve("log.html").toString()));
    Path err = folder.resolve("err.txt");
    Process process = new ProcessBuilder(command).redirectError(err.toFile()).start();
    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(err).content().contains("gone").doesNotContain("Exception", "\tat ");
  }

  @Test
  void onlyDataStandOnStandardOutput() throws Exception {
    Path log = log("log.csv", "0,20\n1,20\n2,x");
    Ended ended = run("convert", CALIBRATION, log.toString(), "--out", "-");
    assertThat(ended.code()).isZero();
    assertThat(ended.out().lines()).hasSize(4).allMatch(line -> line.split(",", -1).length == 5);
    assertThat(ended.err()).contains("Calibration: ").contains("Averaging time of the speed: ");
  }

  @Test
  void fileThatIsNotThereIsTheWorldsFaultForEveryCommand() throws Exception {
    String none = folder.resolve("none").toString();
    String out = folder.resolve("out").toString();
    assertThat(run("calibrate", none, "--out", out).code()).isEqualTo(1);
    assertThat(run("convert", none, none, "--out", out).code()).isEqualTo(1);
    assertThat(run("convert", CALIBRATION, none, "--out", out).code()).isEqualTo(1);
    assertThat(run("convert", CALIBRATION, none, "--out-dir", out).code()).isEqualTo(1);
    assertThat(run("report", none, "--out", out + ".html").code()).isEqualTo(1);
    assertThat(run("check", none).code()).isEqualTo(1);
    assertThat(run("size", none).code()).isEqualTo(1);
  }

  @Test
  void readerWhoWantsNoMoreEndsTheConversionQuietly() throws Exception {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 60_000; i++) {
      rows.append(i).append(",20.").append(i % 10).append('\n');
    }
    Path log = log("long.csv", rows.toString().strip());
    Path err = folder.resolve("err.txt");
    Process process =
        start("convert", CALIBRATION, log.toString(), "--out", "-")
            .redirectError(err.toFile())
            .start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      assertThat(out.readLine()).startsWith("time_s,");
    }
    assertThat(process.waitFor()).isZero();
    assertThat(err).isEmptyFile();
  }

  private Path log(String name, String rows) throws IOException {
    return Files.writeString(folder.resolve(name), "time_s,delta_K\n" + rows + "\n");
  }

  private static void send(OutputStream in, String text) throws IOException {
    in.write(text.getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  private static ProcessBuilder.Redirect nothing() {
    return ProcessBuilder.Redirect.DISCARD;
  }

  private static ProcessBuilder start(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(List.of("-Duser.language=en", "-cp", System.getProperty("java.class.path")));
    command.add(Main.class.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  private Ended run(String... arguments) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    try {
      Process process =
          start(arguments).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
      process.getOutputStream().close();
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }
}
