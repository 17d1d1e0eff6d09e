package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
class ListenCommandTest {
  private static final String CALIBRATION = "src/test/resources/golden/calibration.json";

  @TempDir Path folder;

  private record Ended(int code, String out, String err) {}

  private Ended run(String typed, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    ByteArrayInputStream in = new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8));
    int code = Main.run(Terminal.of(in, out, err, Messages.of(Locale.ENGLISH)), arguments);
    return new Ended(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private List<String> lines(String name) throws IOException {
    return Files.readAllLines(folder.resolve(name));
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void aRehearsalIsRecordedAndSaysSo() throws IOException {
    String source = "virtual:?seed=2&pace=100000&speed_m_s=0.4";
    Ended ended = run("", "listen", source, "--out", path("log.csv"), "--for-s", "600");
    assertThat(ended.code()).isZero();
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("log.csv: ").contains("no breaks");
    assertThat(lines("log.csv").get(0)).startsWith("# rehearsal:");
    assertThat(lines("log.csv").get(3)).isEqualTo("time_s,delta_K,air_C,supply_V,gap");
    assertThat(lines("log.csv")).hasSizeBetween(600, 610);
  }

  @Test
  void withACalibrationTheSpeedComesWithEachRow() throws IOException {
    String source = "virtual:?seed=2&pace=100000&speed_m_s=0.4";
    Ended ended =
        run(
            "",
            "listen",
            source,
            "--calibration",
            CALIBRATION,
            "--out",
            path("log.csv"),
            "--for-s",
            "100");
    assertThat(ended.code()).isZero();
    List<String> rows = lines("log.csv");
    assertThat(rows.get(3)).endsWith(",gap,speed_m_s,u95_m_s,flag");
    List<String> told = ended.out().lines().toList();
    assertThat(told.get(0)).startsWith("# rehearsal:");
    assertThat(told.get(1)).isEqualTo("time_s,speed_m_s,u95_m_s,flag");
    assertThat(told).hasSize(rows.size() - 2);
    for (int i = 2; i < told.size(); i++) {
      String row = rows.get(i + 2);
      String time = told.get(i).substring(0, told.get(i).indexOf(','));
      String speed = told.get(i).substring(told.get(i).indexOf(',') + 1);
      assertThat(row).startsWith(time + ",").endsWith("," + speed);
      assertThat(speed).matches("\\d+\\.\\d{5},\\d+\\.\\d{5},[a-z+]*");
    }
  }

  @Test
  void aRecordedRehearsalConvertsAgainAndStaysOne() throws IOException {
    String source = "virtual:?seed=2&pace=100000&speed_m_s=0.4";
    String log = path("log.csv");
    run("", "listen", source, "--calibration", CALIBRATION, "--out", log, "--for-s", "100");
    Ended ended = run("", "convert", CALIBRATION, log, "--out", path("speeds.csv"));
    assertThat(ended.code()).isZero();
    List<String> speeds = lines("speeds.csv");
    assertThat(speeds.get(0)).startsWith("# rehearsal:");
    List<String> table = speeds.stream().filter(line -> !line.startsWith("#")).toList();
    assertThat(table.get(0)).isEqualTo("time_s,delta_K,air_C,supply_V,gap,speed_m_s,u95_m_s,flag");
    assertThat(table).hasSize(lines("log.csv").size() - 3);
    assertThat(table.get(5).split(",", -1)).hasSize(8);
  }

  @Test
  void typedReadingsFromAPipeAreTakenOneEachTimeItIsAsked() throws IOException {
    Ended ended =
        run("1,25\n\n1.5 mV\nq\n", "listen", "typed:?every_s=1&unit=mV", "--out", path("log.csv"));
    assertThat(ended.code()).isZero();
    assertThat(lines("log.csv"))
        .filteredOn(line -> !line.startsWith("#"))
        .containsExactly("time_s,signal_mV,gap", "0,1.25,", "2,1.5,");
    assertThat(ended.err()).contains("\u0007Reading 2, at 1 s");
  }

  @Test
  void aProfileReadsAForeignFile() throws IOException {
    String sample = Path.of("assets/profiles/semicolons-clock.sample.csv").toString();
    Ended ended =
        run(
            "",
            "listen",
            "file:" + sample,
            "--profile",
            "semicolons-clock",
            "--out",
            path("log.csv"),
            "--for-s",
            "4.9");
    assertThat(ended.code()).isZero();
    assertThat(lines("log.csv"))
        .filteredOn(line -> !line.startsWith("#"))
        .containsExactly(
            "time_s,signal_mV,air_C,gap",
            "0,1.502,12.4,",
            "1,1.498,12.4,",
            "2,1.495,,",
            "3.5,,12.5,",
            "5,1.489,12.5,");
  }

  @Test
  void askedToEndTheProcessFinishesItsRowAndSays0() throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.addAll(List.of(Main.class.getName(), "listen", "virtual:?seed=2&pace=100"));
    command.addAll(List.of("--calibration", CALIBRATION, "--out", path("log.csv")));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
      for (int i = 0; i < 20; i++) {
        assertThat(out.readLine()).isNotNull();
      }
      process.toHandle().destroy();
      String line = out.readLine();
      while (line != null) {
        line = out.readLine();
      }
    }
    assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    String text = Files.readString(folder.resolve("log.csv"));
    assertThat(text).endsWith("\n");
    assertThat(text.lines().skip(3))
        .hasSizeGreaterThan(18)
        .allMatch(line -> line.split(",", -1).length == 8);
  }

  private List<String> listened(String file, String profile, String lines) throws IOException {
    Path source = Files.writeString(folder.resolve(file), lines);
    List<String> arguments = new ArrayList<>(List.of("listen", "file:" + source, "--no-raw"));
    arguments.addAll(List.of("--force", "--out", path("log.csv"), "--for-s", "1.9"));
    if (!profile.isEmpty()) {
      arguments.addAll(List.of("--profile", profile));
    }
    Ended ended = run("", arguments.toArray(String[]::new));
    assertThat(ended.code()).as(ended.err()).isZero();
    assertThat(ended.err().contains("whole second")).isEqualTo(lines.contains("again"));
    return lines("log.csv");
  }

  @Test
  void theStartOfAStoredFileCountsAsItStands() throws IOException {
    String start = "# start: 2019-03-01T10:00:00+01:00";
    List<String> own =
        listened("own.csv", "", start + "\n# again\ntime_s,delta_K\n7,20\n8,20\n8,21\n9,21\n");
    assertThat(own).contains("# start: 2019-03-01T10:00+01:00", "7,20,", "8,20,", "8.5,21,");
    String profile =
        Files.readString(Path.of("assets/profiles/seconds-millivolts.json"))
            .replaceAll("\"as\": *\"s\"", "\"as\": \"iso\"");
    Path dated = Files.writeString(folder.resolve("dated.json"), profile);
    List<String> foreign =
        listened("in.txt", dated.toString(), "2019-03-01 10:00:00,1\n2019-03-01 10:00:02,1\n");
    assertThat(foreign.get(1)).startsWith("# start: 2019-03-01T10:00");
  }

  @Test
  void commasForASpreadsheetConvertAgain() throws IOException {
    String log = path("log.csv");
    String source = "virtual:?seed=2&pace=100000&speed_m_s=0.4";
    Ended ended = run("", "listen", source, "--decimal-comma", "--out", log, "--for-s", "60");
    assertThat(ended.code()).isZero();
    assertThat(lines("log.csv").get(1)).startsWith("# source: virtual:?seed=2");
    assertThat(lines("log.csv").get(3)).isEqualTo("time_s;delta_K;air_C;supply_V;gap");
    assertThat(lines("log.csv").get(9)).matches("\\d+(,\\d+)?(;\\d+(,\\d+)?){3};");
    assertThat(run("", "convert", CALIBRATION, log, "--out", path("speeds.csv")).code()).isZero();
  }
}
