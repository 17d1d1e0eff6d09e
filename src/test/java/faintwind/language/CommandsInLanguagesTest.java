package faintwind.language;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.command.Shell;
import faintwind.files.instrument.Journal;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for people are in the language asked for; files for programs are the same in each. */
class CommandsInLanguagesTest {
  private static final Path CELLAR = Path.of("demo-projects/cellar");

  /** What nobody has reviewed is English and marked, to the end of its line. */
  private static final Pattern MARKED = Pattern.compile("\\[en] .*");

  /**
   * What is not of the program's words: options, paths, ids and the keys of a calibration as they
   * are typed, names that people gave, and months, which this language shares with English.
   */
  private static final Pattern NO_WORDS =
      Pattern.compile(
          "\"[^\"]*\"|--[a-z-]+|\\S*[/_]\\S*|\\S+\\.(csv|json|html|pdf)|\\b[a-z]+(-[a-z0-9]+)+\\b"
              + "|\\(care\\)|\\b(conduction|forced|leads|natural|radiation|tilt)\\b"
              + "|Made-up builder|Rind \\d, [a-z ]+|Half-inch copper, a quarter of a watt"
              + "|\\d{1,2} [A-Z][a-z]+ \\d{4}");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final Shell shell = new Shell();

  private String said(String command) {
    String[] words = (command + " --language " + PseudoLanguage.CODE).split(" ");
    assertThat(shell.run((Object[]) words)).as(command).isLessThan(2);
    return shell.said();
  }

  private static Set<String> english(String said) {
    String shown = NO_WORDS.matcher(MARKED.matcher(said).replaceAll("")).replaceAll("");
    return new TreeSet<>(PseudoWords.english(shown));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check demo-projects/ripening-room",
        "list demo-projects",
        "steps demo-projects/ripening-room",
        "step demo-projects/cellar-door heater-insulation",
        "size assets/examples/design.json",
      })
  void whatACommandSaysIsInTheLanguage(String command) {
    String said = said(command);
    assertThat(said).containsPattern("[ţĥéř]");
    assertThat(english(said)).isEmpty();
  }

  @Test
  void speedsAreTheSameBytesInEveryLanguage() throws IOException {
    Path english = folder.resolve("en.csv");
    Path other = folder.resolve("xa.csv");
    for (Path out : List.of(english, other)) {
      String code = out.equals(english) ? "en" : PseudoLanguage.CODE;
      assertThat(
              shell.run(
                  "convert",
                  CELLAR.resolve("calibrations/2026-09-13.json"),
                  "assets/examples/log.csv",
                  "--out",
                  out,
                  "--language",
                  code))
          .as(shell.said())
          .isZero();
    }
    assertThat(Files.readAllBytes(other)).isEqualTo(Files.readAllBytes(english));
  }

  @Test
  void theRecordIsTheSameInEveryLanguageAndOpensInEach() throws IOException {
    List<List<Event>> records = new ArrayList<>();
    for (String code : List.of("en", PseudoLanguage.CODE)) {
      Path rind = folder.resolve(code);
      for (String command :
          List.of(
              "new % --name Rind",
              "note % first --design assets/examples/design.json",
              "step % drill-heated --open",
              "step % drill-heated --read chips")) {
        String typed = command.replace("%", rind.toString()) + " --who Ida --language " + code;
        assertThat(shell.run((Object[]) typed.split(" "))).as(shell.said()).isZero();
      }
      records.add(Journal.in(rind).content().entries().stream().map(e -> e.event()).toList());
      for (String reader : List.of("en", PseudoLanguage.CODE)) {
        assertThat(shell.run("check", rind, "--language", reader)).as(shell.said()).isZero();
      }
    }
    assertThat(records.get(0)).hasSize(4).isEqualTo(records.get(1));
  }
}
