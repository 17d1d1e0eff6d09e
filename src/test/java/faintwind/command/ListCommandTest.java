package faintwind.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many instruments at once: {@code list}, and the commands that take a folder of them. */
class ListCommandTest {
  @TempDir Path folder;
  private final Shell shell = new Shell();

  @BeforeEach
  void threeInstrumentsAndABrokenOne() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("demo-projects"))) {
      for (Path file : all.sorted().filter(f -> f.getNameCount() > 1).toList()) {
        Files.copy(file, folder.resolve(file.subpath(1, file.getNameCount()).toString()));
      }
    }
    Path broken = Files.createDirectories(folder.resolve("broken"));
    Files.writeString(broken.resolve("journal.jsonl"), "{\"id\":\"e1\"} and more\n");
  }

  @Test
  void whoNeedsSomebodyComesFirst() throws IOException {
    Path csv = folder.resolve("bench.csv");
    Path html = folder.resolve("bench.html");
    assertThat(shell.run("list", folder, "--csv", csv, "--html", html)).as(shell.said()).isZero();
    List<String> heads = shell.said().lines().filter(l -> !l.startsWith(" ")).toList();
    assertThat(heads.get(0)).startsWith("broken: Cannot be read");
    assertThat(heads.get(1)).startsWith("Rind 2, by the door: Stopped.");
    assertThat(heads.get(3)).startsWith("Rind 1, north shelf: ");
    assertThat(shell.said())
        .contains(
            "27 Ω says stop. Go down the ladder", "Calibrated from 0.097 to 2.9 m/s, good: ± 2.3 %")
        .contains("Last jar check: 31.7\u00a0K on 19 September 2026");
    assertThat(Files.readString(csv))
        .startsWith("folder,name,need,stage,")
        .contains("\ncellar-door,\"Rind 2, by the door\",stop,");
    assertThat(Files.readString(html)).contains("Rind 3, ripening room", "<svg");
    assertThat(shell.run("list", folder, "--csv", csv)).isEqualTo(2);
  }

  @Test
  void archivedInstrumentIsListedApartAndBringingBackStrikesTheEntry() throws IOException {
    assertThat(shell.run("note", folder.resolve("cellar"), "sold", "--retire")).isZero();
    String entry = shell.said().replaceAll("(?s).*Entered: (\\S+).*", "$1");
    shell.run("list", folder);
    assertThat(shell.said()).doesNotContain("Rind 1, north").contains("One more instrument is");
    shell.run("list", folder, "--archived");
    assertThat(shell.said()).startsWith("Rind 1, north shelf: Archived").contains("sold");
    assertThat(shell.run("correct", folder.resolve("cellar"), entry, "--because", "not sold"))
        .as(shell.said())
        .isZero();
    shell.run("list", folder);
    assertThat(shell.said()).contains("Rind 1, north");
  }

  @Test
  void instrumentsStandSideBySideWithCurvesAndLogs() throws IOException {
    Path html = folder.resolve("compared.html");
    Path one = folder.resolve("cellar");
    int code = shell.run("compare", one, folder.resolve("cellar-door"), one, "--report", html);
    assertThat(code).as(shell.said()).isZero();
    assertThat(shell.said()).contains("Rind 1, north shelf (cellar): ", "Rind 2, by the door: ");
    assertThat(Files.readString(html))
        .contains("Compared: Rind 1, north shelf", "<svg")
        .contains("Hours from the beginning");
    assertThat(shell.run("compare", one, folder, folder)).isEqualTo(2);
  }

  @Test
  void whatIsMissingIsSaidAndTheOthersAreCompared() throws IOException {
    Path html = folder.resolve("compared.html");
    Files.delete(folder.resolve("cellar/calibrations/2026-09-13.json"));
    Files.write(folder.resolve("cellar/logs/speeds-north-shelf-day.csv"), new byte[0]);
    int code =
        shell.run(
            "compare",
            folder.resolve("cellar"),
            folder.resolve("cellar-door"),
            folder.resolve("ripening-room"),
            folder.resolve("broken"),
            "--report",
            html);
    assertThat(code).as(shell.said()).isZero();
    String all = "Rind 1, north shelf; Rind 2, by the door; Rind 3, ripening room";
    assertThat(shell.said())
        .contains("broken cannot be read: journal.jsonl, line 1:")
        .contains("Without a calibration in force that can be read: " + all)
        .contains("Without a converted log that can be read: " + all)
        .contains("Quantity  Rind 1, north shelf  Rind 2, by the door  Rind 3, ripening room");
    assertThat(Files.readString(html))
        .contains("Rind 3, ripening room</th>")
        .doesNotContain("Hours from the beginning");
    assertThat(shell.run("compare", folder.resolve("broken"), folder.resolve("broken")))
        .as("none can be read")
        .isEqualTo(3);
  }

  @Test
  void forAnotherProgram() throws IOException {
    assertThat(shell.run("list", folder, "--json")).isZero();
    JsonNode told = new ObjectMapper().readTree(shell.said());
    assertThat(told.path("format").asText()).isEqualTo("faintwind-list/1");
    assertThat(told.path("instruments")).hasSize(4);
    JsonNode stopped = told.path("instruments").get(1);
    assertThat(stopped.path("need").path("kind").asText()).isEqualTo("stop");
  }

  @Test
  void aFolderIsQuotedOnceInATable() throws IOException {
    Path bench = folder.resolve("odd");
    Path odd = Files.createDirectories(bench.resolve("q\"uote,comma"));
    Files.copy(folder.resolve("cellar/journal.jsonl"), odd.resolve("journal.jsonl"));
    Path csv = folder.resolve("odd.csv");
    assertThat(shell.run("list", bench, "--csv", csv)).as(shell.said()).isZero();
    assertThat(Files.readAllLines(csv).get(1)).startsWith("\"q\"\"uote,comma\",");
  }

  @Test
  void whatProgramsReadIsTheSameInEveryLanguage() throws IOException {
    for (String command : List.of("list", "steps", "check")) {
      shell.run(command, folder, "--json");
      String english = shell.out();
      shell.run(command, folder, "--json", "--language", "en-XA");
      assertThat(shell.out()).as(command).isEqualTo(english).doesNotContain("ţĥ");
    }
    Path english = folder.resolve("en.csv");
    Path other = folder.resolve("xa.csv");
    shell.run("list", folder, "--csv", english);
    shell.run("list", folder, "--csv", other, "--language", "en-XA");
    assertThat(shell.out()).as("what people read").contains("ţĥ");
    assertThat(Files.readString(other)).isEqualTo(Files.readString(english));
  }

  @Test
  void numbersInNamesCountByValueAndTwoOfOneNameAreToldApart() throws IOException {
    Path bench = folder.resolve("class");
    for (String name : List.of("Pair 10", "Pair 2", "pair 1")) {
      shell.run("new", bench.resolve(name.replace(' ', '-')), "--name", name, "--who", "Ida");
    }
    shell.run("new", bench.resolve("other"), "--name", "Pair 2", "--who", "Ida");
    assertThat(shell.run("list", bench)).as(shell.said()).isZero();
    assertThat(
            shell.out().lines().filter(l -> !l.startsWith(" ")).map(l -> l.replaceFirst(":.*", "")))
        .containsExactly("pair 1", "Pair 2 (other)", "Pair 2 (Pair-2)", "Pair 10");
  }

  private String brokenRow(byte[] journal) throws IOException {
    Path bench = folder.resolve("one");
    Path odd = Files.createDirectories(bench.resolve("odd"));
    Files.write(odd.resolve("journal.jsonl"), journal);
    shell.run("list", bench);
    return shell.out();
  }

  @Test
  void aBrokenRowSaysTheFirstReasonsAndSendsTheTerminalNothingThatItObeys() throws IOException {
    String lines = "\u001b[2J\u001b]0;x\u0007 no entry \u0085\n".repeat(400);
    String row = brokenRow(lines.getBytes(StandardCharsets.UTF_8));
    assertThat(row).contains("journal.jsonl, line 3", "more problems").doesNotContain("line 4");
    assertThat(row).hasSizeLessThan(2000).doesNotContainPattern("[\\p{Cntrl}\u0085&&[^\n]]");
  }

  @Test
  void aJournalThatAnotherProgramSavedIsCalledThat() throws IOException {
    String journal = Files.readString(folder.resolve("cellar/journal.jsonl"));
    assertThat(brokenRow(("\ufeff" + journal).getBytes(StandardCharsets.UTF_8)))
        .contains("byte order mark");
    assertThat(brokenRow(journal.getBytes(StandardCharsets.UTF_16)))
        .contains("UTF-16")
        .hasSizeLessThan(500);
  }

  @Test
  void anInstrumentItselfIsCalledOne() {
    assertThat(shell.run("list", folder.resolve("cellar"))).isEqualTo(2);
    assertThat(shell.said()).contains("This is an instrument itself", "faintwind steps ");
  }

  @Test
  void whatCannotBeAPriceACurrencyOrANameIsNotEntered() throws IOException {
    Path cellar = folder.resolve("cellar");
    byte[] before = Files.readAllBytes(cellar.resolve("journal.jsonl"));
    assertThat(shell.run("note", cellar, "--part", "balls", "--price", "-3")).isEqualTo(2);
    assertThat(shell.said()).contains("-3.0 is not a price");
    assertThat(shell.run("note", cellar, "--part", "balls", "--currency", "EURO")).isEqualTo(2);
    assertThat(shell.said()).contains("\"EURO\" is not a currency", "EUR");
    assertThat(shell.run("note", cellar, "text", "--who", "Ida\nBo")).isEqualTo(2);
    assertThat(shell.said()).contains("does not fit --who");
    assertThat(Files.readAllBytes(cellar.resolve("journal.jsonl"))).isEqualTo(before);
    assertThat(shell.run("note", cellar, "--part", "balls", "--price", "3.2", "--currency", "EUR"))
        .as(shell.said())
        .isZero();
  }

  @Test
  void checkStepsAndReportTakeAllOfThem() throws IOException {
    Files.move(folder.resolve("cellar"), folder.resolve(".cellar"));
    assertThat(shell.run("check", folder)).isEqualTo(3);
    assertThat(shell.said()).contains("cellar-door: instrument folder, no errors");
    assertThat(shell.run("steps", folder)).isEqualTo(3);
    assertThat(shell.said()).contains("Can be done now:", folder.resolve("cellar-door").toString());
    Path pages = folder.resolve("pages");
    shell.run("report", folder, "--out", pages);
    assertThat(pages.resolve("cellar-door.html")).exists();
    assertThat(pages.resolve("ripening-room.html")).exists();
    assertThat(shell.run("report", folder, "--out", pages)).isEqualTo(2);
  }

  @Test
  void folderWithoutInstrumentsIsRefused() throws IOException {
    Path empty = Files.createDirectories(folder.resolve("empty"));
    assertThat(shell.run("list", empty)).isEqualTo(3);
    assertThat(shell.said()).contains("There is no instrument in this folder.", "faintwind new");
  }
}
