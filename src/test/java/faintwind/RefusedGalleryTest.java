package faintwind;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every bad input has a file here and beside it what the program says to it: the exit code, then
 * the messages. {@code -Dgolden.write=true} writes the expected files and docs/errors.md anew.
 */
class RefusedGalleryTest {
  private static final Path RESOURCES = Path.of("src/test/resources");
  private static final Path GALLERY = RESOURCES.resolve("refused");
  private static final Path CHECKLIST = Path.of("checklists/standard");
  private static final String BEGUN =
      """
      {"id":"e0001","at":"2026-11-28T09:01+01:00","who":"Mr Teach","what":"instrument",\
      "name":"Class pair","made_up":true}
      """;
  private static final Path PAGE = Path.of("docs/errors.md");

  @TempDir Path tmp;

  @BeforeEach
  void layOutWhatTheCommandLinesName() throws IOException {
    Files.writeString(tmp.resolve("log.csv"), "time_s,delta_K\n0,20\n1,20\n2,20\n");
    Files.writeString(tmp.resolve("there.csv"), "keep me\n");
    Files.writeString(tmp.resolve("notes.txt"), "buy copper\n");
    Files.writeString(tmp.resolve("counts.csv"), "time_s,signal_counts\n0,20\n1,20\n");
    Files.writeString(tmp.resolve("commas.csv"), "time_s,delta_K\n\"0,0\",\"20,1\"\n");
    Files.writeString(
        tmp.resolve("converted.csv"), "time_s,delta_K,speed_m_s,flag\n0,20,1,\n1,20,1,\n");
  }

  static List<Path> badInputs() throws IOException {
    try (Stream<Path> files = Files.walk(GALLERY)) {
      return files
          .filter(Files::isRegularFile)
          .filter(f -> !f.toString().endsWith(".expected"))
          .filter(f -> !folder(f).equals("files"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("badInputs")
  void badInputIsToldInFullAndNothingIsWritten(Path input) throws IOException {
    List<String> arguments = arguments(input);
    Map<String, String> before = contents();
    String told = answer(input, arguments);
    Path expected = expected(input);
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(expected, told);
    }
    assertThat(told).isEqualTo(Files.readString(expected));
    assertThat(told).doesNotStartWith("exit 0").contains("error: ").doesNotContain("fault in the");
    assertThat(contents()).isEqualTo(before);
  }

  @Test
  void pageOfErrorsShowsTheWholeGallery() throws IOException {
    String page = page();
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page);
  }

  private String answer(Path input, List<String> arguments) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    InputStream in = new ByteArrayInputStream(new byte[0]);
    Terminal terminal = Terminal.of(in, out, err, Messages.of(Locale.ENGLISH));
    int code = Main.run(terminal, arguments.toArray(new String[0]));
    String told =
        err.toString(StandardCharsets.UTF_8)
            .replace(tmp.toString(), "…")
            .replace(input.getParent() + "/", "")
            .replace(RESOURCES + "/", "");
    return "exit " + code + "\n" + told;
  }

  private List<String> arguments(Path input) throws IOException {
    if (input.toString().endsWith(".jsonl")) {
      Path instrument = Files.createDirectories(tmp.resolve("instrument"));
      Files.copy(input, instrument.resolve("journal.jsonl"));
      return List.of("check", instrument.toString());
    }
    if (folder(input).equals("checklist")) {
      return List.of("check", instrumentWithOwn(input).toString());
    }
    if (!input.toString().endsWith(".args")) {
      return List.of("check", input.toString());
    }
    return Files.readAllLines(input).stream()
        .map(a -> a.replace("{tmp}", tmp.toString()).replace("{resources}", RESOURCES.toString()))
        .toList();
  }

  /** A made-up instrument with a teacher's own file laid over the shipped one of the same id. */
  private Path instrumentWithOwn(Path input) throws IOException {
    Path instrument = tmp.resolve("instrument");
    Path own = instrument.resolve("checklist").resolve(placeInChecklist(Files.readString(input)));
    Files.createDirectories(own.getParent());
    Files.copy(input, own);
    Files.writeString(instrument.resolve("journal.jsonl"), BEGUN);
    return instrument;
  }

  private static String placeInChecklist(String text) throws IOException {
    if (text.contains("faintwind-checklist/1")) {
      return "checklist.json";
    }
    String file = text.split("\"", 5)[3] + ".json";
    try (Stream<Path> shipped = Files.walk(CHECKLIST)) {
      Path step = shipped.filter(f -> f.endsWith(file)).findFirst().orElseThrow();
      return CHECKLIST.relativize(step).toString();
    }
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(tmp)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(file.toString(), Files.readString(file));
      }
    }
    return contents;
  }

  /** What guards the program against its own files and has no bad input that a user could write. */
  private static final String NOT_REACHED =
      """
      `checklist.gate-missing` guards a whole checklist. Your own files lie over the shipped ones: \
      one that drops a gate, or a list that drops a step, is refused before that, and the shipped \
      one is used in its place. Other languages and later versions of the checklist are tried with it.

      `design.cells-unknown` is a stop on the design sheet for a battery whose file does not say \
      what its cells are. Commands and window read the shipped batteries alone, and each of these says it.
      """;

  private static String page() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("# Every refusal, as the program tells it");
    lines.add("");
    lines.add("Written by a test from the bad inputs in src/test/resources/refused: do not edit.");
    lines.add("All problems of an input are told at once, and nothing is written.");
    String format = "";
    for (Path input : badInputs()) {
      if (!format.equals(folder(input))) {
        format = folder(input);
        lines.addAll(List.of("", "## " + title(format)));
      }
      entry(input, lines);
    }
    lines.addAll(List.of("", "## Not reached by a command", "", NOT_REACHED.strip()));
    return String.join("\n", lines) + "\n";
  }

  private static void entry(Path input, List<String> lines) throws IOException {
    List<String> told = Files.readAllLines(expected(input));
    String name = String.valueOf(input.getFileName()).replaceFirst("\\.[a-z]+$", "");
    lines.addAll(List.of("", "### " + title(name), ""));
    lines.addAll(
        List.of(
            "```", excerpt(input), "```", "", "Exit code " + told.get(0).substring(5) + ":", ""));
    lines.add("```");
    lines.addAll(told.subList(1, told.size()));
    lines.add("```");
  }

  private static String excerpt(Path input) {
    try {
      String text = Files.readString(input);
      if (input.toString().endsWith(".args")) {
        return "faintwind "
            + text.strip()
                .replace("\n", " ")
                .replace("{tmp}/", "")
                .replace("{tmp}", "FOLDER")
                .replace("{resources}/", "");
      }
      if (text.isEmpty()) {
        return "(empty)";
      }
      List<String> head =
          text.replace('\0', '␀').lines().limit(6).map(RefusedGalleryTest::cut).toList();
      boolean whole = text.lines().count() <= 6;
      return String.join("\n", head) + (whole ? "" : "\n…");
    } catch (MalformedInputException notText) {
      return "(not UTF-8 text)";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The lines of a journal can be very long. */
  private static String cut(String line) {
    return line.length() > 160 ? line.substring(0, 160) + "…" : line;
  }

  private static String folder(Path file) {
    return GALLERY.relativize(file).getName(GALLERY.relativize(file).getNameCount() - 2).toString();
  }

  private static String title(String name) {
    String words = name.replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static Path expected(Path input) {
    String name = String.valueOf(input.getFileName()).replaceFirst("\\.[a-z]+$", ".expected");
    return input.resolveSibling(name);
  }
}
