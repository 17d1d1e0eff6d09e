package faintwind.files.asset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import faintwind.calibration.response.TypeLetter;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.physics.Thermocouple;
import faintwind.physics.part.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryTest {
  private static final String METAL =
      """
      {"format": "faintwind-metal/1", "id": "tin", "name": "Tin",
       "density_kg_m3": [7300, 7320], "specific_heat_J_kgK": [226, 228],
       "conductivity_W_mK": [66, 67], "cutting_speed_m_min": [30, 40],
       "first_bath": "none", "sources": ["handbook"]}
      """;

  @TempDir Path folder;

  @Test
  void everyShippedKindIsRead() throws IOException {
    Catalogue c = Library.shipped();
    assertThat(letters(c)).containsExactly("E", "J", "K", "N", "R", "S", "T");
    assertThat(c.metal("copper")).isPresent();
    assertThat(c.coat("gold")).isPresent();
    assertThat(c.wire("copper-30awg")).isPresent();
    assertThat(c.resistor("metal-film-half-watt")).isPresent();
    assertThat(c.logger("meter-200mV")).isPresent();
    assertThat(c.battery("9v-alkaline")).isPresent();
  }

  private static List<String> letters(Catalogue parts) {
    return parts.thermocouples().stream().map(t -> t.function().letter()).sorted().toList();
  }

  @Test
  void everyThermocoupleOfTheLibraryIsKnownToTheFitAndNoOther() throws IOException {
    assertThat(TypeLetter.known()).isEqualTo(String.join(", ", letters(Library.shipped())));
  }

  @Test
  void theFitsShortFormOfEachThermocoupleIsThatOfTheLibrary() throws IOException {
    Catalogue c = Library.shipped();
    for (TypeLetter letter : TypeLetter.values()) {
      Thermocouple function = c.thermocouple(letter.name()).orElseThrow().function();
      for (double t_C : new double[] {0, 20, 40, 60}) {
        assertThat(letter.sensitivity_V_K(t_C + 273.15))
            .as(letter + " at " + t_C + " °C")
            .isCloseTo(function.sensitivity_V_K(t_C + 273.15), withinPercentage(0.2));
      }
    }
  }

  @Test
  void ownMetalIsAddedAndTheNoteCarriesItsHash() throws IOException {
    Path file = put("metals/tin.json", METAL);
    Checked<Catalogue> read = Library.read(Optional.of(folder));
    assertThat(read.map(c -> c.metal("tin").isPresent())).isInstanceOf(Checked.Ok.class);
    assertThat(read.problems()).extracting(Problem::id).containsExactly("asset.added");
    assertThat(read.problems().get(0).found()).isEqualTo(Sha256.of(file));
  }

  @Test
  void ownFileOfTheSameIdReplacesTheShippedOne() throws IOException {
    put("metals/copper.json", METAL.replace("\"tin\"", "\"copper\""));
    Checked<Catalogue> read = Library.read(Optional.of(folder));
    double density =
        read.fold((c, n) -> c.metal("copper").orElseThrow().density_kg_m3().nominal(), p -> 0.0);
    assertThat(density).isEqualTo(7310);
    assertThat(read.problems()).extracting(Problem::id).containsExactly("asset.replaced");
  }

  @Test
  void allProblemsOfAllFilesAreTold() throws IOException {
    put("metals/tin.json", METAL.replace("[66, 67]", "[67, 66]"));
    put("metals/lead.json", METAL);
    put("coats/rust.json", "{\"format\": ");
    put("wires/w.json", METAL);
    Checked<Catalogue> read = Library.read(Optional.of(folder));
    assertThat(read.isOk()).isFalse();
    assertThat(read.problems())
        .extracting(Problem::id)
        .contains(
            "asset.reversed", "asset.id-is-not-file-name", "json.syntax", "json.other-format");
  }

  private Path put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }
}
