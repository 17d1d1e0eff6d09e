package faintwind.message;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The voice of the program (DEVELOPERS.md): what can be found in it by rule. */
class VoiceTest {
  private static final Pattern UNUSED =
      Pattern.compile(
          "\\b(?i:foretold|foretells?|told apart|tell apart|tells? \\w+ apart|told from|stands|anew"
              + "|isolating|wanted are|so many|makes dizzy|mended|whilst|aught)\\b");
  private static final Pattern STANDS_OUT = Pattern.compile("stands out");

  private static final Pattern JOINED =
      Pattern.compile(
          "[a-z,%)}] (The|It|This|These|If|Where|When|Put|Check|Choose|Look|Take|Expected|Copy"
              + "|Delete|Add|Write|Wait|Keep|Use|Measure|Nothing|Let|Switch|Press) (?=[a-z])");

  /** Such as "It does not: stop", where "If it does not, stop" is meant. */
  private static final Pattern INVERTED =
      Pattern.compile(
          "(?:^|[.;] )(?:It|They|Both|All|None|Neither|One|If [^.:,]{2,40})(?: \\w+){0,3}: "
              + "(?:stop|wait|look|swap|fill|wipe|take|put|press|measure|do|go|switch|coat|cut|lift"
              + "|pull|clamp|start|leave|try|scrape|bend|fingers|hands)\\b");

  /** Ohms beside megohms invite a slip of six digits. */
  private static final Pattern OHMS = Pattern.compile("\\d[ \\u00a0]\\u03a9");

  private static final Pattern WHOLE = Pattern.compile("(?s)[^a-z].*([.?!:}]|[A-Z][A-Z.a-z]*)");

  /** Words as they are written in a file: a sentence may begin with them. */
  private static final Pattern FILE_WORDS =
      Pattern.compile("(?s)([a-z]+[_.]\\w|turns |voltage, |cw or ).*");

  private static final ResourceBundle BUNDLE = Messages.of(Locale.ENGLISH).bundle();
  private static final Map<String, String> TEXTS = new TreeMap<>();

  @BeforeAll
  static void read() throws IOException {
    BUNDLE.keySet().forEach(key -> TEXTS.put(key, BUNDLE.getString(key)));
    Path steps = Path.of("checklists/standard");
    try (Stream<Path> files = Files.walk(steps)) {
      for (Path file : files.filter(VoiceTest::isEnglish).toList()) {
        add(steps.relativize(file).toString(), new ObjectMapper().readTree(file.toFile()));
      }
    }
  }

  private static boolean isEnglish(Path file) {
    return file.toString().endsWith(".json")
        && !file.toString().replace('\\', '/').contains("/lang/");
  }

  private static void add(String at, JsonNode node) {
    if (node.isTextual() && node.textValue().contains(" ") && !at.matches(".*(/when|/source)")) {
      TEXTS.put(at, node.textValue());
    }
    node.properties().forEach(f -> add(at + "/" + f.getKey(), f.getValue()));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      add(at + "/" + i, node.get(i));
    }
  }

  @Test
  void theRulesFindWhatTheyAreFor() {
    assertThat("The coat is damp It was not dry").containsPattern(JOINED);
    assertThat("Try it dry. It does not: stop here.").containsPattern(INVERTED);
    assertThat("The name stands on the report.").containsPattern(UNUSED);
    assertThat(WHOLE.matcher("the row is empty").matches()).isFalse();
    assertThat(WHOLE.matcher("The row is empty").matches()).isFalse();
  }

  @Test
  void wordsThatWeDoNotUseAreNotUsed() {
    assertThat(found(UNUSED)).isEmpty();
  }

  @Test
  void sentencesAreNotJoinedWithoutAStop() {
    assertThat(found(JOINED)).isEmpty();
  }

  @Test
  void conditionsAreSaidWithIf() {
    assertThat(found(INVERTED).stream().filter(text -> !text.contains("/wrong/"))).isEmpty();
  }

  @Test
  void ohmsAndMegohmsAreNotMixed() {
    assertThat(
            TEXTS.entrySet().stream()
                .filter(e -> e.getValue().contains("M\u03a9"))
                .filter(e -> OHMS.matcher(e.getValue()).find()))
        .isEmpty();
  }

  @Test
  void whatAProblemSaysIsAWholeSentence() {
    Set<String> parts = new TreeSet<>();
    for (String key : BUNDLE.keySet()) {
      String id = key.replaceFirst("\\.(expected|todo)$", "");
      if (!id.equals(key) && BUNDLE.containsKey(id)) {
        parts.addAll(List.of(id, key));
      }
    }
    assertThat(parts).hasSizeGreaterThan(500);
    assertThat(
            parts.stream()
                .map(key -> key + "=" + BUNDLE.getString(key))
                .filter(line -> !isWhole(line.substring(line.indexOf('=') + 1))))
        .isEmpty();
  }

  private static boolean isWhole(String text) {
    return WHOLE.matcher(text).matches()
        || (FILE_WORDS.matcher(text).matches() && text.endsWith("."));
  }

  private static List<String> found(Pattern pattern) {
    return TEXTS.entrySet().stream()
        .filter(e -> pattern.matcher(STANDS_OUT.matcher(e.getValue()).replaceAll("")).find())
        .map(e -> e.getKey() + "=" + e.getValue())
        .toList();
  }
}
