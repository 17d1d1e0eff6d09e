package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.command.Shell;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What an opponent would alter, each found or rightly let pass: by {@code faintwind check} and by a
 * verifier in another language that knows the page of the format alone.
 */
@Tag("long")
class AlterationsTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");
  private static final Path SCRIPT = Path.of("src/test/resources/chain/verify.py");
  private static final String JOURNAL = "journal.jsonl";
  private static final String SUMMARY = "instrument.json";
  private static final String LOG = "logs/north-shelf-day.csv";
  private static final String CALIBRATION = "calibrations/2026-09-13.json";
  private static final int ERROR = 3;

  @TempDir Path temp;

  private interface Alteration {
    void in(Path folder) throws IOException;
  }

  private static Arguments of(String what, int code, String named, Alteration alteration) {
    return Arguments.of(what, code, named, alteration);
  }

  private static Alteration lines(UnaryOperator<List<String>> change) {
    return folder -> {
      Path file = folder.resolve(JOURNAL);
      List<String> lines = new ArrayList<>(Files.readAllLines(file));
      Files.writeString(file, String.join("\n", change.apply(lines)) + "\n");
    };
  }

  private static Alteration bytes(String name, UnaryOperator<byte[]> change) {
    return folder -> {
      Path file = folder.resolve(name);
      Files.write(file, change.apply(Files.readAllBytes(file)));
    };
  }

  private static Alteration text(String name, String from, String to) {
    return bytes(
        name,
        all -> {
          String text = new String(all, StandardCharsets.UTF_8);
          assertThat(text).contains(from);
          return text.replace(from, to).getBytes(StandardCharsets.UTF_8);
        });
  }

  private static List<String> with(List<String> lines, int at, String line) {
    lines.add(at, line);
    return lines;
  }

  private static byte[] joined(byte[] one, byte[] other) {
    byte[] all = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, all, one.length, other.length);
    return all;
  }

  private static byte[] marked(byte[] bytes) {
    return joined(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, bytes);
  }

  private static Path photo(Path folder, int which) throws IOException {
    try (Stream<Path> all = Files.list(folder.resolve("photos"))) {
      return all.sorted().toList().get(which);
    }
  }

  static Stream<Arguments> ofTheJournal() {
    return Stream.of(
        of("a line removed", ERROR, JOURNAL, lines(l -> without(l, 120))),
        of("the first line removed", ERROR, JOURNAL, lines(l -> without(l, 0))),
        of("the last line removed", ERROR, JOURNAL, lines(l -> without(l, l.size() - 1))),
        of("the last ten lines removed", ERROR, JOURNAL, lines(l -> l.subList(0, l.size() - 10))),
        of("all lines removed", ERROR, JOURNAL, lines(l -> new ArrayList<>())),
        of("a line added", ERROR, JOURNAL, lines(l -> with(l, 100, l.get(99)))),
        of("a line added at the end", ERROR, JOURNAL, lines(l -> with(l, l.size(), l.get(9)))),
        of("an empty line added", ERROR, JOURNAL, lines(l -> with(l, 50, ""))),
        of(
            "two lines swapped",
            ERROR,
            JOURNAL,
            folder -> lines(AlterationsTest::swapped).in(folder)),
        of("all lines reversed", ERROR, JOURNAL, lines(AlterationsTest::reversed)),
        of(
            "a reading altered",
            ERROR,
            JOURNAL,
            text(JOURNAL, "\"typed\":\"100.4\"", "\"typed\":\"100.2\"")),
        of("a name altered", ERROR, JOURNAL, text(JOURNAL, "Made-up builder", "Made-up worker")),
        of("a date altered", ERROR, JOURNAL, text(JOURNAL, "2026-09-11T16", "2026-09-10T16")),
        of(
            "a space added",
            ERROR,
            JOURNAL,
            text(JOURNAL, "\"what\":\"note\"", "\"what\": \"note\"")),
        of(
            "a letter written as an escape",
            ERROR,
            JOURNAL,
            text(JOURNAL, "made_up", "made\\u005fup")),
        of("a line cut off", ERROR, JOURNAL, bytes(JOURNAL, b -> Arrays.copyOf(b, b.length - 40))),
        of("cut in half", ERROR, JOURNAL, bytes(JOURNAL, b -> Arrays.copyOf(b, b.length / 2))),
        of("a byte-order mark added", ERROR, JOURNAL, bytes(JOURNAL, AlterationsTest::marked)),
        of("line ends of another system", ERROR, JOURNAL, text(JOURNAL, "\n", "\r\n")),
        of(
            "zeros at the end",
            ERROR,
            JOURNAL,
            bytes(JOURNAL, b -> Arrays.copyOf(b, b.length + 64))),
        of(
            "words at the end",
            ERROR,
            JOURNAL,
            bytes(JOURNAL, b -> joined(b, "seen by Jo\n".getBytes(StandardCharsets.UTF_8)))),
        of("the journal removed", ERROR, JOURNAL, folder -> Files.delete(folder.resolve(JOURNAL))),
        of("the chain taken off", ERROR, CALIBRATION, AlterationsTest::withoutAChain));
  }

  static Stream<Arguments> ofTheSummary() {
    return Stream.of(
        of("another name in the summary", ERROR, SUMMARY, text(SUMMARY, "Rind 1", "Rind 2")),
        of(
            "a space in the summary",
            ERROR,
            SUMMARY,
            bytes(SUMMARY, b -> joined(b, new byte[] {' '}))),
        of("a mark before the summary", ERROR, SUMMARY, bytes(SUMMARY, AlterationsTest::marked)),
        of(
            "an empty summary",
            ERROR,
            SUMMARY,
            bytes(SUMMARY, b -> "{}".getBytes(StandardCharsets.UTF_8))),
        of("the summary removed", ERROR, SUMMARY, folder -> Files.delete(folder.resolve(SUMMARY))));
  }

  static Stream<Arguments> ofFiles() {
    return Stream.of(
        of("a row of a log altered", ERROR, LOG, text(LOG, "\n100", "\n101")),
        of("a log cut short", ERROR, LOG, bytes(LOG, b -> Arrays.copyOf(b, b.length - 1))),
        of("a log emptied", ERROR, LOG, bytes(LOG, b -> new byte[0])),
        of("a mark before a log", ERROR, LOG, bytes(LOG, AlterationsTest::marked)),
        of("line ends of a log", ERROR, LOG, text(LOG, "\n", "\r\n")),
        of("a log removed", ERROR, LOG, folder -> Files.delete(folder.resolve(LOG))),
        of(
            "a log renamed",
            ERROR,
            LOG,
            folder -> Files.move(folder.resolve(LOG), folder.resolve("logs/day.csv"))),
        of(
            "letters of a name",
            ERROR,
            LOG,
            folder ->
                Files.move(
                    folder.resolve(LOG),
                    folder.resolve(LOG.toUpperCase(Locale.ROOT).replace("LOGS", "logs")))),
        of("a link in its place", ERROR, LOG, AlterationsTest::linked),
        of(
            "a calibration altered",
            ERROR,
            CALIBRATION,
            text(CALIBRATION, "\"u95_m_s\"", "\"u96_m_s\"")),
        of(
            "another calibration",
            ERROR,
            CALIBRATION,
            bytes(CALIBRATION, b -> "{}".getBytes(StandardCharsets.UTF_8))),
        of("pictures exchanged", ERROR, "photos/", AlterationsTest::exchanged),
        of(
            "a picture replaced",
            ERROR,
            "photos/",
            folder -> Files.write(photo(folder, 0), new byte[] {1})),
        of(
            "a file added",
            0,
            "others.txt",
            folder -> Files.writeString(folder.resolve("others.txt"), "x")));
  }

  static Stream<Arguments> thatAreNone() {
    return Stream.of(
        of("times of files", 0, "", AlterationsTest::touched),
        of("an empty folder", 0, "", folder -> Files.createDirectory(folder.resolve("empty ü"))),
        of("another name of the folder", 0, "", folder -> {}),
        of(
            "the lock of a window",
            0,
            "",
            folder -> Files.writeString(folder.resolve("writer.lock"), "Jo")),
        of("a copy written over itself", 0, "", bytes(LOG, b -> b)));
  }

  private static List<String> without(List<String> lines, int at) {
    lines.remove(at);
    return lines;
  }

  private static List<String> swapped(List<String> lines) {
    Collections.swap(lines, 70, 71);
    return lines;
  }

  private static List<String> reversed(List<String> lines) {
    Collections.reverse(lines);
    return lines;
  }

  private static void linked(Path folder) throws IOException {
    Path moved = Files.move(folder.resolve(LOG), folder.resolveSibling("elsewhere.csv"));
    Files.createSymbolicLink(folder.resolve(LOG), moved);
  }

  private static void exchanged(Path folder) throws IOException {
    byte[] one = Files.readAllBytes(photo(folder, 0));
    byte[] other = Files.readAllBytes(photo(folder, 1));
    Files.write(photo(folder, 0), other);
    Files.write(photo(folder, 1), one);
  }

  private static void touched(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.toList()) {
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
      }
    }
  }

  /** Every hash taken out, as if an older program had written it, with its summary. */
  private static void withoutAChain(Path folder) throws IOException {
    lines(
            l ->
                new ArrayList<>(
                    l.stream()
                        .map(line -> line.replaceAll(",\"prev\":\"[0-9a-f]{64}\"}$", "}"))
                        .toList()))
        .in(folder);
    Path summary = folder.resolve(SUMMARY);
    String text = Files.readString(summary);
    Files.writeString(
        summary,
        text.replaceAll("(?m)^ *\"(head|sha256|lines)\" :.*\n", "")
            .replaceAll(",\\s*}\\s*$", "\n}\n"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"ofTheJournal", "ofTheSummary", "ofFiles", "thatAreNone"})
  void isFoundOrRightlyLetPass(String what, int code, String named, Alteration alteration)
      throws Exception {
    Path folder = temp.resolve("Rind " + code + " ü");
    try (Stream<Path> all = Files.walk(CELLAR)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, folder.resolve(CELLAR.relativize(file).toString()));
      }
    }
    alteration.in(folder);
    Shell shell = new Shell();
    assertThat(shell.run("check", folder)).as(shell.said()).isEqualTo(code);
    assertThat(shell.said()).contains(named);
    if (named.isEmpty()) {
      assertThat(shell.said()).contains("no errors, no warnings");
    }
    Said other = verified(folder);
    assertThat(other.code()).as(other.text()).isEqualTo(code);
    assertThat(other.text()).contains(named);
    if (code == ERROR) {
      assertThat(shell.run("pack", folder, "--out", temp.resolve("a.zip"))).isEqualTo(ERROR);
    }
  }

  static Stream<Arguments> ofArchives() {
    return Stream.of(
        of("nothing", 0, "", zip -> {}),
        of("a log altered", ERROR, LOG, zip -> rewritten(zip, "files/" + LOG, b -> joined(b, b))),
        of("a log left out", ERROR, LOG, zip -> rewritten(zip, "files/" + LOG, b -> new byte[0])),
        of(
            "the manifest altered",
            ERROR,
            "manifest.json",
            zip -> rewritten(zip, "manifest.json", b -> joined(b, new byte[] {' '}))),
        of(
            "the journal altered",
            ERROR,
            JOURNAL,
            zip -> rewritten(zip, "files/" + JOURNAL, b -> Arrays.copyOf(b, b.length / 2))));
  }

  private static void rewritten(Path zip, String name, UnaryOperator<byte[]> change)
      throws IOException {
    Path other = zip.resolveSibling("other.zip");
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip));
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(other))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        byte[] bytes = in.readAllBytes();
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(entry.getName().equals(name) ? change.apply(bytes) : bytes);
        out.closeEntry();
      }
    }
    Files.move(other, zip, StandardCopyOption.REPLACE_EXISTING);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ofArchives")
  void anAlteredArchiveIsRefusedAndFoundByAStranger(
      String what, int code, String named, Alteration alteration) throws Exception {
    Path zip = temp.resolve("Käse 🧀.zip");
    Shell shell = new Shell();
    assertThat(shell.run("pack", CELLAR, "--out", zip)).isZero();
    alteration.in(zip);
    Said other = verified(zip);
    assertThat(other.code()).as(other.text()).isEqualTo(code);
    assertThat(other.text()).contains(named);
    assertThat(shell.run("unpack", zip, temp.resolve("theirs"))).isEqualTo(code);
    assertThat(shell.said()).contains(named);
    if (code == ERROR) {
      assertThat(temp.resolve("theirs")).isEmptyDirectory();
    }
  }

  private record Said(int code, String text) {}

  private static Said verified(Path path) throws IOException, InterruptedException {
    try {
      Process process =
          new ProcessBuilder("python3", SCRIPT.toString(), path.toString())
              .redirectErrorStream(true)
              .start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Said(process.waitFor(), said);
    } catch (IOException e) {
      assumeTrue(false, "there is no python3 here: " + e.getMessage());
      throw e;
    }
  }
}
