package faintwind.files.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.files.SchemaCheck;
import faintwind.message.Checked;
import faintwind.message.Where;
import faintwind.record.JournalEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What docs/formats/journal.md shows of each kind of line is what the program reads and writes. */
class JournalPageTest {
  private static final Path PAGE = Path.of("docs/formats/journal.md");
  private static final ObjectMapper JSON = new ObjectMapper();

  private static List<String> examples() throws IOException {
    String page = Files.readString(PAGE);
    int begin = page.indexOf("```jsonl\n") + "```jsonl\n".length();
    return page.substring(begin, page.indexOf("```", begin)).lines().toList();
  }

  @Test
  void everyExampleIsReadAndWrittenAgainAsItStands() throws IOException {
    for (String line : examples()) {
      Checked<JournalEntry> read = JournalLine.read(line, Where.NOWHERE);
      assertThat(read.problems()).as(line).isEmpty();
      JournalEntry entry = read.fold((value, notes) -> value, problems -> null);
      JsonNode again = JSON.readTree(JournalLine.write(entry));
      assertThat(again).as(line).isEqualTo(JSON.readTree(line));
      assertThat(SchemaCheck.of("journal").problems(again, Where.NOWHERE)).as(line).isEmpty();
    }
  }

  @Test
  void everyKindHasAnExampleAndALineOfTheTable() throws IOException {
    List<String> shown = new ArrayList<>();
    for (String line : examples()) {
      shown.add(JSON.readTree(line).path("what").asText());
    }
    List<String> kinds =
        Arrays.stream(EventForm.class.getAnnotation(JsonSubTypes.class).value())
            .map(JsonSubTypes.Type::name)
            .toList();
    assertThat(new TreeSet<>(shown)).containsExactlyElementsOf(new TreeSet<>(kinds));
    String page = Files.readString(PAGE);
    String tables = page.lines().filter(line -> line.startsWith("|")).toList().toString();
    assertThat(kinds).allMatch(kind -> tables.contains("`" + kind + "`"));
  }
}
