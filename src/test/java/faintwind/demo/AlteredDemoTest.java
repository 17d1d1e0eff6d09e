package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.Main;
import faintwind.command.Shell;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The finished demonstration instrument with something altered in it. */
class AlteredDemoTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final Path SCRIPT = Path.of("src/test/resources/chain/verify.py");

  @TempDir Path temp;
  private final Random random = new Random(20261129);
  private Path copy;
  private List<Path> files;

  @BeforeEach
  void copyTheDemonstration() throws IOException {
    copy = temp.resolve("cellar");
    files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Path target = copy.resolve(CELLAR.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          files.add(Files.copy(file, target));
        }
      }
    }
  }

  private interface Look {
    void at(String altered) throws IOException, InterruptedException;
  }

  /** Alters one byte of one file, each file as likely as the next, looks, and puts it back. */
  private void alterOne(Look look) throws IOException, InterruptedException {
    Path file = files.get(random.nextInt(files.size()));
    byte[] whole = Files.readAllBytes(file);
    byte[] altered = whole.clone();
    int at = random.nextInt(whole.length);
    altered[at] ^= (byte) (1 + random.nextInt(255));
    Files.write(file, altered);
    look.at(copy.relativize(file).toString().replace('\\', '/'));
    Files.write(file, whole);
  }

  @Test
  void threeHundredAlteredBytesAreFoundAndNamed() throws Exception {
    assertThatThreeHundredAreFound();
  }

  /** With a check at the arm, a second day of air, an archive, a photo and a second calibration. */
  @Tag("slow")
  @Test
  void soTheyAreInAFolderThatWasUsedForLonger() throws Exception {
    Path session = CELLAR.resolve("runs/first-session");
    Path check = Files.createDirectories(temp.resolve("check"));
    for (String name : List.of("session.csv", "chain.json")) {
      Files.copy(session.resolve(name), check.resolve(name));
    }
    List<String> rows = Files.readAllLines(session.resolve("runs.csv"));
    rows.removeIf(row -> !row.startsWith("run,") && !row.startsWith("spin03"));
    Path table = Files.write(check.resolve("runs.csv"), rows);
    Path log = Files.copy(CELLAR.resolve("logs/north-shelf-day.csv"), temp.resolve("day ü.csv"));
    Path photo = copy.resolve("photos/0a9b8a4e5a60.png");
    did("recheck", copy, table, "--who", "Ida");
    did("convert", copy, log);
    did("pack", copy, "--out", temp.resolve("older.zip"));
    did("note", copy, "--file", temp.resolve("older.zip"), "--who", "Ida");
    did("note", copy, "--photo", photo, "--step", "mount-pair", "--who", "Ida", "the shelf");
    did("calibrate", copy);
    try (Stream<Path> all = Files.walk(copy)) {
      files = all.filter(Files::isRegularFile).filter(f -> !f.endsWith("writer.lock")).toList();
    }
    assertThat(files).hasSizeGreaterThan(20);
    assertThatThreeHundredAreFound();
  }

  private static void did(Object... arguments) {
    Shell shell = new Shell();
    assertThat(shell.run(arguments)).as(shell.said()).isIn(0, 4);
  }

  private void assertThatThreeHundredAreFound() throws Exception {
    assertThat(new InstrumentFolder(copy).audit().problems()).isEmpty();
    int found = 0;
    for (int i = 0; i < 300; i++) {
      List<String> named = new ArrayList<>();
      alterOne(
          name -> {
            for (Problem problem : new InstrumentFolder(copy).audit().problems()) {
              if (problem.isError() && problem.where().file().orElse("").equals(name)) {
                named.add(name);
              }
            }
          });
      found += named.isEmpty() ? 0 : 1;
    }
    assertThat(found).isEqualTo(300);
  }

  @Test
  void anAlteredCalibrationEndsTheCheckWithAnError() throws IOException {
    Path calibration =
        files.stream()
            .filter(f -> f.toString().matches(".*calibrations.*\\.json"))
            .findFirst()
            .orElseThrow();
    assertThat(check()).isZero();
    String text = Files.readString(calibration);
    Files.writeString(calibration, text.replaceFirst("\"value\" ?: ?(\\d)", "\"value\" : 9$1"));
    assertThat(check()).isEqualTo(3);
  }

  private int check() {
    Terminal terminal =
        Terminal.of(
            new ByteArrayInputStream(new byte[0]),
            new ByteArrayOutputStream(),
            new ByteArrayOutputStream(),
            Messages.of(Locale.ENGLISH));
    return Main.run(terminal, "check", copy.toString());
  }

  /** A page of another language, written from docs/formats/journal.md alone. */
  @Test
  void whoeverHasOnlyThePageOfTheFormatFindsThemToo() throws Exception {
    assumeTrue(python("-c", "pass").code() == 0, "there is no python3 here");
    assertThat(verify()).isEqualTo(new Said(0, ""));
    for (int i = 0; i < 30; i++) {
      alterOne(
          name -> {
            Said said = verify();
            assertThat(said.code()).as(name).isEqualTo(3);
            assertThat(said.text()).contains(name);
          });
    }
  }

  private record Said(int code, String text) {}

  private Said verify() throws IOException, InterruptedException {
    return python(SCRIPT.toString(), copy.toString());
  }

  private static Said python(String... arguments) throws InterruptedException {
    List<String> command = new ArrayList<>(List.of("python3"));
    command.addAll(List.of(arguments));
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
      return new Said(process.waitFor(), said);
    } catch (IOException e) {
      return new Said(-1, e.toString());
    }
  }
}
