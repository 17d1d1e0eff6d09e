package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GlossaryTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);
  private static final Glossary GLOSSARY = Glossary.of(WORDS);
  private static final Pattern SHORT =
      Pattern.compile(
          "\\b(?=[A-Za-z0-9-]*[A-Z0-9][A-Za-z0-9]*\\b)[A-Z][A-Za-z0-9-]*[A-Z0-9]\\w*\\b");

  /** Keys of the keyboard, units, standards, kinds of files, marks on parts and in commands. */
  private static final Set<String> KNOWN =
      Set.of(
          ("F1 F2 F6 F11 ASTM B488 G173 CIPM-2007 CODATA IEC ISO ITS-90 IUPAC JCGM NIST MIL-R-39017"
                  + " R10 R20 GPa MJ GiB MB DC COM GND IN OUT HTML PDF PNG SVG JPEG JSON USB WAV STOP"
                  + " CAL CHOICE FILE FOLDER LINE LOG QUESTION REASON RUNS SPEEDS VALUE MicroPython"
                  + " NAME TEMP TMPDIR Log-Tchebycheff STEP CODE EUR UTF-8 UTF-16 BOM")
              .split(" "));

  /** Beginnings of keys that only the command line shows. */
  private static final Pattern COMMANDS =
      Pattern.compile(
          "(faintwind|usage|profile|file|runs|draft|import|source|convert|export|chain|json|table"
              + "|wav|live|asset|calibration|window\\.key|glossary|help)\\..*");

  private static String texts = "";

  @BeforeAll
  static void read() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("checklists/standard"))) {
      StringBuilder all = new StringBuilder();
      for (Path file : files.filter(GlossaryTest::isEnglish).toList()) {
        Files.readAllLines(file).stream()
            .filter(line -> !line.matches("\\s*\"(when|source|id|file)\".*"))
            .forEach(line -> all.append(line).append('\n'));
      }
      WORDS.bundle().keySet().stream()
          .filter(key -> !COMMANDS.matcher(key).matches())
          .forEach(key -> all.append(WORDS.bundle().getString(key)).append('\n'));
      texts = all.toString();
    }
  }

  private static boolean isEnglish(Path file) {
    return file.toString().endsWith(".json")
        && !file.toString().replace('\\', '/').contains("/lang/");
  }

  @Test
  void everyTermIsUsedSomewhereAndSaidShortly() {
    assertThat(GLOSSARY.terms()).hasSizeGreaterThan(100);
    assertThat(GLOSSARY.usedIn(List.of(texts)).terms()).containsExactlyElementsOf(GLOSSARY.terms());
    assertThat(GLOSSARY.terms())
        .allMatch(term -> term.meaning().matches("[A-Z].{15,210}\\.") && term.words().size() <= 3);
    assertThat(GLOSSARY.terms().stream().flatMap(t -> t.words().stream())).doesNotHaveDuplicates();
  }

  @Test
  void everyAbbreviationOnAScreenIsExplained() {
    Set<String> missing = new TreeSet<>();
    SHORT.matcher(texts).results().map(found -> found.group()).forEach(missing::add);
    assertThat(missing).contains("U95", "AICc", "AWG");
    missing.removeAll(KNOWN);
    missing.removeIf(GlossaryTest::isInATerm);
    assertThat(missing).isEmpty();
  }

  @Test
  void everyWordOfTheTradeOnAScreenIsExplained() {
    List<String> trade =
        List.of(
            ("thermocouple;junction;bore;blank;peck;centre drill;centre punch;chuck;V-block;deburr"
                    + ";degrease;flux;crimp;heat-shrink;varnish;epoxy;over range;offset;gain;noise"
                    + ";drift;regulator;drop-out;fuse;time constant;Biot number;natural convection"
                    + ";forced convection;heat capacity;correlation;zincate;anode;current density"
                    + ";hub;counterweight;slip rings;staircase;spin;residual;covariance"
                    + ";standard uncertainty;refits;straight-line look;in force;journal;waiver;gate"
                    + ";rehearsal;build log;certificate;tolerance;logarithm;cold joint;power bank")
                .split(";"));
    String lower = texts.toLowerCase(Locale.ROOT);
    assertThat(trade).allMatch(word -> lower.contains(word.toLowerCase(Locale.ROOT)));
    assertThat(trade).allMatch(GlossaryTest::isInATerm);
  }

  private static boolean isInATerm(String word) {
    return !GLOSSARY.usedIn(List.of(word)).terms().isEmpty();
  }

  @Test
  void aScreenShowsTheWordsItUses() {
    Glossary here = GLOSSARY.usedIn(List.of("Deburr both bores.", "U95 3 %"));
    assertThat(here.terms().stream().map(t -> t.words().get(0)).collect(Collectors.toList()))
        .containsExactly("bore", "deburr", "U95");
  }

  @Test
  void aSearchFindsTheWordBeforeThoseThatMentionIt() {
    assertThat(GLOSSARY.having("zincate").terms().get(0).words()).contains("zincate");
    assertThat(GLOSSARY.having("qqq").terms()).isEmpty();
  }
}
