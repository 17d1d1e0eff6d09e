package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SizeCommandTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  @TempDir Path tmp;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int size(String... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "size";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, all);
  }

  private Path changed(String from, String to) throws IOException {
    String text = Files.readString(HALF_INCH);
    assertThat(text).contains(from);
    return Files.writeString(tmp.resolve("design.json"), text.replace(from, to));
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void soundDesignIsSizedAndWhatWasAssumedIsTold() {
    assertThat(size(HALF_INCH.toString())).isZero();
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(text).contains("Delta in still air: 32.4", "Heater resistor: 100 Ω   (99 to 101)");
    assertThat(text).contains("Delta at 1 m/s depends most on: published convection formulas");
    assertThat(told()).startsWith("warning: The design does not say").contains("sense.gain = 1");
  }

  @Test
  void jsonCarriesUnitBandVerdictAndSourceOfEveryQuantity() throws IOException {
    assertThat(size(HALF_INCH.toString(), "--json")).isZero();
    JsonNode sized = new ObjectMapper().readTree(out.toByteArray());
    assertThat(sized.get("format").asText()).isEqualTo("faintwind-size/1");
    assertThat(sized.get("stops").asBoolean()).isFalse();
    assertThat(sized.get("quantities")).hasSizeGreaterThan(60);
    for (JsonNode q : sized.get("quantities")) {
      assertThat(q.get("low").asDouble()).isLessThanOrEqualTo(q.get("value").asDouble());
      assertThat(q.get("high").asDouble()).isGreaterThanOrEqualTo(q.get("value").asDouble());
      assertThat(q.get("verdict").asText()).isIn("good", "improve", "stop", "plain");
      assertThat(q.get("source").asText()).isNotBlank();
      assertThat(q.has("unit")).isTrue();
    }
  }

  @Test
  void designThatCannotWorkIsSizedWithTheReasonAndExitCodeFour() throws IOException {
    Path design = changed("9v-alkaline", "4xaa-alkaline");
    assertThat(size(design.toString())).isEqualTo(4);
    assertThat(told()).contains("error: battery_h: The battery gives 6.4 V when fresh");
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("   stop");
  }

  @Test
  void refusedDesignGivesNothingOnStandardOutput() throws IOException {
    Path design = changed("\"bore_mm\": 3.3", "\"bore_mm\": 13");
    assertThat(size(design.toString(), "--json")).isEqualTo(3);
    assertThat(out.size()).isZero();
    assertThat(told()).contains("does not fit into a ball");
  }

  @Test
  void designThatIsNotThereIsRefusedByName() {
    assertThat(size(tmp.resolve("none.json").toString())).isEqualTo(1);
    assertThat(told()).contains("none.json");
  }

  @Test
  void partsListIsWrittenForSeveralInstrumentsAndNeverOverAnother() throws IOException {
    Path parts = tmp.resolve("parts.csv");
    assertThat(size(HALF_INCH.toString(), "--parts", parts.toString(), "--instruments", "12"))
        .isZero();
    String text = Files.readString(parts);
    assertThat(text).contains(",24,7,31,piece,").contains("100 Ω").contains("±1 %");
    assertThat(size(HALF_INCH.toString(), "--parts", parts.toString())).isEqualTo(2);
    assertThat(Files.readString(parts)).isEqualTo(text);
  }

  @Test
  void partsListOfADesignThatStopsSaysSoOnEveryPage() throws IOException {
    String stop = "src/test/resources/design/hot-in-a-classroom.json";
    Path csv = tmp.resolve("stop.csv");
    Path html = tmp.resolve("stop.html");
    Path pdf = tmp.resolve("stop.pdf");
    for (Path target : List.of(csv, html, pdf)) {
      assertThat(size(stop, "--parts", target.toString(), "--instruments", "30")).isEqualTo(4);
    }
    assertThat(Files.readAllLines(csv).get(1)).contains("STOP: do not buy or build this.");
    assertThat(Files.readString(html)).contains("STOP: do not buy or build this.");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        assertThat(stripper.getText(document)).as("page %d", page).contains("STOP");
      }
    }
  }

  @Test
  void partsListIsAPageWhereTheNameSaysSoAndStrangePricesAreTold() throws IOException {
    Path design =
        changed(
            "\"use\":",
            "\"prices\": {\"currency\": \"€\", \"ball-copper-12.7mm\": 1.25, \"bal\": 2},"
                + " \"use\":");
    Path page = tmp.resolve("parts.html");
    Path print = tmp.resolve("parts.pdf");
    assertThat(size(design.toString(), "--parts", page.toString())).isZero();
    assertThat(Files.readString(page))
        .contains("5.00", "Total: 5.00 €, without 103 parts", "Smallest detectable speed");
    assertThat(told()).contains("The price of \"bal\" belongs to no part of this list");
    assertThat(size(design.toString(), "--parts", print.toString())).isZero();
    assertThat(Files.readAllBytes(print)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
  }

  @Test
  void everyResultInThinAirSaysThatItIsOutsideItsRangeAndTheReasonStandsOnce() throws IOException {
    Path design = changed("\"pressure_hPa\": 1013.25", "\"altitude_m\": 5000");
    assertThat(size(design.toString())).isZero();
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(text).containsPattern("Delta at 1 m/s: .*outside range");
    assertThat(text).containsPattern("Time constant in still air: .*outside range");
    assertThat(text).containsPattern("Smallest detectable speed.*outside range");
    assertThat(told()).containsOnlyOnce("The air is outside the range of its properties");
  }

  @Test
  void suggestionsAndSubstitutionsAreLinesNotJson() {
    assertThat(size(HALF_INCH.toString(), "--suggest", "--substitutes")).isZero();
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(text).contains("Balances all wishes", "Resistor of 120 Ω instead");
    assertThat(text).contains("Heater power: 0.249 → 0.208 W");
    assertThat(size(HALF_INCH.toString(), "--suggest", "--json")).isEqualTo(2);
  }
}
