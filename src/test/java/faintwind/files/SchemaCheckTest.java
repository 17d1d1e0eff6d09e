package faintwind.files;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SchemaCheckTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  private static List<String> said(String schema, String json) {
    List<Problem> problems =
        SchemaCheck.of(schema).problems(JsonFile.object(json), Where.file("a.json"));
    return problems.stream().map(WORDS::line).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "class, faintwind-class", "lang, faintwind-language", "meter, faintwind-meter",
    "wire, faintwind-wire", "plan, faintwind-plan", "instrument, faintwind-instrument",
    "arm, faintwind-arm", "profile, faintwind-profile", "checklist, faintwind-checklist",
  })
  void aNewerFormatIsTheOnlyProblemOfItsFile(String schema, String format) {
    assertThat(said(schema, "{\"format\": \"" + format + "/2\", \"news\": 1}"))
        .containsExactly(
            "a.json, format: The file has the format "
                + format
                + "/2, of another version of the program. This version reads "
                + format
                + "/1. Use the version that wrote it, or a newer one.");
  }

  @Test
  void aFileOfAnotherKindIsCalledThat() {
    assertThat(said("class", "{\"format\": \"faintwind-plan/1\"}"))
        .singleElement()
        .asString()
        .contains("says that it is faintwind-plan/1", "faintwind-class/1 is expected");
  }

  @Test
  void whatASchemaRefusesIsSaidWithoutItsJargon() {
    String json =
        """
        {"format": "faintwind-class/1", "name": "5b", "purpose": "x", "lessons": [],
         "pairs": [], "roles": ["a"], "design": "../design.json", "colour": "red"}
        """;
    List<String> said = said("class", json);
    assertThat(said)
        .anyMatch(l -> l.contains("\"../design.json\" is not a name of a file"))
        .anyMatch(l -> l.contains("The list has 0 of at least 1 elements."))
        .anyMatch(l -> l.contains("The key \"colour\" is unknown here."));
    assertThat(said).noneMatch(l -> l.contains("regex") || l.contains("schema"));
  }
}
