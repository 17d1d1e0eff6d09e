package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.job.bench.Archive;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.BenchText;
import faintwind.job.bench.ReadBench;
import faintwind.job.record.HandOver;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten made-up instruments through five years. Käthe builds and calibrates all of them in September
 * 2026, so that each is to be calibrated again by 13 September 2027. On 1 September of each year
 * she puts every one that she has in the jar, does that year's work, and looks at the list on the
 * 10th. What it must say was written down before the list was looked at:
 *
 * <ul>
 *   <li><b>north</b> is calibrated again on 5 September 2027, 2029 and 2031: in use in those years,
 *       due since 5 September in those between.
 *   <li><b>south</b> never is, and nobody does its last step, the care. One waiver is on it, for a
 *       photo, in every year. Ready for that step in 2027, and from 2028 on due since 13 September
 *       2027, which presses more. Dust settles on it, so that the jar shows a little more each
 *       year, and the list says by how much since 2026. A check at the arm in 2029 agrees and
 *       changes nothing.
 *   <li><b>drift</b> has the dust of a flood in 2027: the jar says so, it needs attention, and it
 *       is due since that check, because of drift. Calibrated again on 2 September 2028 it is in
 *       use; due since 2 September 2029 in the years after.
 *   <li><b>ball</b> gets a new heated ball on 3 September 2027: the readings that rest on the old
 *       one are void, so it needs attention, and it is due since that day, because of a repair.
 *       Built up anew and calibrated on 20 December 2027 it is in use in 2028, and due since 20
 *       December 2028 from 2029 on.
 *   <li><b>wire</b> gets a new thermocouple on 4 September 2028: attention; due since 13 September
 *       2027, the earlier of the two. Built up anew and calibrated on 20 December 2028 it is in use
 *       in 2029 and due since 20 December 2029 from 2030 on.
 *   <li><b>jo</b> is due since 13 September 2027 in 2028. On 6 September 2029 it is handed over to
 *       Jo: Käthe's list says that and asks nothing more of her. Before the next look she archives
 *       her folder. Jo calibrates it on 7 September 2030: on her bench it is in use, due on 7
 *       September 2031, and due since then in the last look.
 *   <li><b>shelf</b> is archived on 2 September 2028, and brought back on 2 September 2031: then it
 *       is due since 13 September 2027.
 *   <li><b>twin</b> is due since 13 September 2027 from 2028 on. In 2029 a copy of its folder lies
 *       beside it: both rows say so. The copy is thrown away.
 *   <li><b>broken</b> the same; in 2030 a figure in its journal is another: it cannot be used, and
 *       the row names the line, beside what can still be read of it. So in 2031.
 *   <li><b>newer</b> the same; in 2031 a newer program has made an entry that this one does not
 *       know: it cannot be used, and the row names the line and a newer version.
 * </ul>
 */
@Tag("long")
class FiveYearsTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);
  private static final String FIRST_DUE = "2027-09-13";
  private static final List<String> NAMES =
      List.of("north", "south", "drift", "ball", "wire", "jo", "shelf", "twin", "broken", "newer");

  @TempDir Path temp;
  private Path bench = Path.of("");
  private final Map<String, KeptInstrument> kept = new ConcurrentHashMap<>();
  private final Map<String, List<Double>> jars = new TreeMap<>();

  @Test
  void theListTellsTheNextThingOfEachInEachYear() throws IOException {
    bench = Files.createDirectories(temp.resolve("kaethe"));
    IntStream.range(0, NAMES.size()).parallel().forEach(this::build);
    year2027();
    year2028();
    year2029();
    year2030();
    year2031();
    theJournalsVerify();
  }

  private void build(int number) {
    String name = NAMES.get(number);
    try {
      Path folder = bench.resolve(name);
      kept.put(name, KeptInstrument.built(folder, 1000L * (number + 1), !name.equals("south")));
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  private KeptInstrument it(String name) {
    return Objects.requireNonNull(kept.get(name));
  }

  private void year2027() throws IOException {
    it("drift").dusty(0.12);
    jars("2027-09-01", NAMES);
    calibrated("north", "2027-09-05");
    repaired("ball", "2027-09-03", "drill-heated", "new heated ball, the old one was dropped");
    Look look = look("2027-09-10");
    look.says("north", "in-use", "2028-09-05", "time");
    look.says("south", "ready", FIRST_DUE, "time");
    look.says("drift", "attention", "2027-09-01", "drift");
    look.says("ball", "attention", "2027-09-03", "repair");
    for (String name : List.of("wire", "jo", "shelf", "twin", "broken", "newer")) {
      look.says(name, "in-use", FIRST_DUE, "time");
    }
    assertThat(look.row("south").need().step()).isEqualTo("Care for it and calibrate again");
    assertThat(look.row("drift").need().step()).isEqualTo("Look at the instrument in a closed jar");
    assertThat(look.text("drift")).contains("since 1 September 2027", "drift");
    assertThat(look.text("ball")).contains("since 3 September 2027", "after a repair");
    rebuilt("ball", "2027-12-01", "2027-12-20");
  }

  private void year2028() throws IOException {
    calibratedWithJar("drift", "2028-09-02");
    jars("2028-09-03", without("drift"));
    repaired("wire", "2028-09-04", "make-junctions", "new thermocouple, the old one broke");
    assertThat(archive("2028-09-02").putAway(List.of(bench.resolve("shelf")))).isEmpty();
    Look look = look("2028-09-10");
    look.says("north", "due", "2028-09-05", "time");
    look.says("drift", "in-use", "2029-09-02", "time");
    look.says("ball", "in-use", "2028-12-20", "time");
    look.says("wire", "attention", FIRST_DUE, "time");
    look.says("shelf", "archived", "", "");
    for (String name : List.of("south", "jo", "twin", "broken", "newer")) {
      look.says(name, "due", FIRST_DUE, "time");
    }
    rebuilt("wire", "2028-12-01", "2028-12-20");
  }

  private void year2029() throws IOException {
    jars("2029-09-01", without("shelf"));
    calibrated("north", "2029-09-05");
    it("south").at("2029-09-04");
    assertThat(it("south").checked().agrees()).isTrue();
    copy(bench.resolve("twin"), bench.resolve("twin (conflict)"));
    it("jo").at("2029-09-06").plain(new Event.HandedOver("Jo", "with its jar"));
    Look look = look("2029-09-10");
    look.says("north", "in-use", "2030-09-05", "time");
    look.says("drift", "due", "2029-09-02", "time");
    look.says("ball", "due", "2028-12-20", "time");
    look.says("wire", "in-use", "2029-12-20", "time");
    look.says("jo", "handed-over", "", "");
    assertThat(look.text("jo")).contains("Jo").contains("6 September 2029");
    look.says("shelf", "archived", "", "");
    look.says("twin", "copied", "", "");
    look.says("twin (conflict)", "copied", "", "");
    assertThat(look.row("twin").need().reason()).contains("twin (conflict)");
    for (String name : List.of("south", "broken", "newer")) {
      look.says(name, "due", FIRST_DUE, "time");
    }
    delete(bench.resolve("twin (conflict)"));
    handOver();
  }

  private void handOver() throws IOException {
    Path archive = temp.resolve("jo.zip");
    Path theirs = temp.resolve("jo");
    String head = ok(HandOver.pack(bench.resolve("jo"), archive));
    HandOver.TakenIn taken = ok(HandOver.unpack(archive, theirs));
    assertThat(taken.head()).isEqualTo(head);
    assertThat(archive("2029-10-01").putAway(List.of(bench.resolve("jo")))).isEmpty();
    kept.put("jo", it("jo").with("Jo", taken.folder()));
  }

  private void year2030() throws IOException {
    jars("2030-09-01", without("shelf"));
    calibrated("jo", "2030-09-07");
    Path journal = bench.resolve("broken/journal.jsonl");
    String text = Files.readString(journal);
    Files.writeString(journal, text.replaceFirst("\"typed\":\"8.63\"", "\"typed\":\"8.68\""));
    Look look = look("2030-09-10");
    look.says("north", "due", "2030-09-05", "time");
    look.says("drift", "due", "2029-09-02", "time");
    look.says("ball", "due", "2028-12-20", "time");
    look.says("wire", "due", "2029-12-20", "time");
    look.says("jo", "archived", "", "");
    look.says("shelf", "archived", "", "");
    look.says("broken", "broken", FIRST_DUE, "time");
    assertThat(look.row("broken").need().reason()).contains("journal.jsonl");
    for (String name : List.of("south", "twin", "newer")) {
      look.says(name, "due", FIRST_DUE, "time");
    }
    Look theirs = new Look(temp.resolve("jo"), "2030-09-10");
    theirs.says("jo", "in-use", "2031-09-07", "time");
  }

  private void year2031() throws IOException {
    jars("2031-09-01", List.of("north", "south", "drift", "ball", "wire", "jo", "twin"));
    calibrated("north", "2031-09-05");
    assertThat(archive("2031-09-02").bringBack(List.of(bench.resolve("shelf")))).isEmpty();
    byANewerProgram(bench.resolve("newer"));
    Look look = look("2031-09-10");
    look.says("north", "in-use", "2032-09-05", "time");
    look.says("drift", "due", "2029-09-02", "time");
    look.says("ball", "due", "2028-12-20", "time");
    look.says("wire", "due", "2029-12-20", "time");
    look.says("jo", "archived", "", "");
    look.says("broken", "broken", FIRST_DUE, "time");
    look.says("newer", "broken", FIRST_DUE, "time");
    assertThat(look.row("newer").need().reason()).contains("journal.jsonl", "newer");
    for (String name : List.of("south", "shelf", "twin")) {
      look.says(name, "due", FIRST_DUE, "time");
    }
    Look theirs = new Look(temp.resolve("jo"), "2031-09-10");
    theirs.says("jo", "due", "2031-09-07", "time");
  }

  /** The jar check of a year; dust settles on the southern one. */
  private void jars(String day, List<String> names) throws IOException {
    for (String name : names) {
      if (name.equals("south")) {
        it(name).dusty(0.005);
      }
      it(name).at(day);
      jars.computeIfAbsent(name, n -> new ArrayList<>()).add(it(name).jar());
    }
  }

  private static List<String> without(String one) {
    return NAMES.stream().filter(name -> !name.equals(one)).toList();
  }

  private void calibrated(String name, String day) throws IOException {
    it(name).at(day);
    it(name).calibrated();
  }

  private void calibratedWithJar(String name, String day) throws IOException {
    calibrated(name, day);
    jars(day.replace("-02", "-03"), List.of(name));
  }

  private void repaired(String name, String day, String step, String what) throws IOException {
    DemoWalk walk = it(name).at(day);
    walk.ok(walk.enter().repair(step, what));
  }

  private void rebuilt(String name, String begun, String measured) throws IOException {
    it(name).at(begun);
    assertThat(it(name).again()).isNotEmpty();
    calibrated(name, measured);
    jars(measured.replace("-20", "-21"), List.of(name));
  }

  private Archive archive(String day) {
    OffsetDateTime now = OffsetDateTime.parse(day + "T10:00:00Z");
    return new Archive(WORDS, Clock.fixed(now.toInstant(), ZoneOffset.UTC), "Käthe");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.sorted().toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted((one, other) -> other.compareTo(one)).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Its line is chained as that program would have chained it. */
  private static void byANewerProgram(Path folder) throws IOException {
    String head = new InstrumentFolder(folder).open().state().head();
    Files.writeString(
        folder.resolve("journal.jsonl"),
        "{\"id\":\"n1\",\"at\":\"2031-09-03T09:00Z\",\"who\":\"Käthe\",\"what\":\"weathered\",\"years\":5,\"prev\":\""
            + head
            + "\"}\n",
        StandardOpenOption.APPEND);
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private void theJournalsVerify() throws IOException {
    for (String name : NAMES) {
      List<String> errors =
          new InstrumentFolder(bench.resolve(name))
              .audit().problems().stream().filter(Problem::isError).map(Problem::id).toList();
      if (name.equals("broken")) {
        assertThat(errors).contains("journal.link-broken");
      } else if (name.equals("newer")) {
        assertThat(errors).isNotEmpty();
      } else {
        assertThat(errors).as(name).isEmpty();
      }
    }
    assertThat(new InstrumentFolder(temp.resolve("jo/jo")).audit().problems()).isEmpty();
  }

  private Look look(String day) throws IOException {
    Look look = new Look(bench, day);
    if (!day.startsWith("2026")) {
      assertThat(look.row("south").waivers()).isEqualTo(1);
      List<Double> seen = Objects.requireNonNull(jars.get("south"));
      double last = seen.get(seen.size() - 1);
      double first = it("south").firstJar_K();
      assertThat(look.row("south").jar().orElseThrow().drift())
          .hasValueSatisfying(
              drift -> assertThat(drift).isNotNegative().isCloseTo(last / first - 1, within(1e-5)));
    }
    return look;
  }

  /** The list of a bench on a day, in all its forms. */
  private static final class Look {
    private final Map<String, BenchRow> rows = new TreeMap<>();
    private final Map<String, JsonNode> told = new TreeMap<>();
    private final BenchText text = new BenchText(WORDS);
    private final String day;

    Look(Path bench, String day) throws IOException {
      this.day = day;
      OffsetDateTime now = OffsetDateTime.parse(day + "T18:00:00Z");
      List<BenchRow> all = new ReadBench(WORDS).rows(bench, now);
      all.forEach(row -> rows.put(String.valueOf(row.folder().getFileName()), row));
      new ObjectMapper()
          .readTree(text.json(bench, all))
          .path("instruments")
          .forEach(row -> told.put(row.path("folder").asText(), row));
    }

    BenchRow row(String name) {
      return Objects.requireNonNull(rows.get(name), name);
    }

    String text(String name) {
      return String.join("\n", text.lines(List.of(row(name))));
    }

    /**
     * Needs this, and the calibration in force is due then and for this cause.
     *
     * @param due empty where the list tells of no calibration
     */
    void says(String name, String need, String due, String cause) {
      JsonNode json = Objects.requireNonNull(told.get(name), name);
      String as = day + " " + name + "\n" + text(name);
      assertThat(json.at("/need/kind").asText().toLowerCase(Locale.ROOT).replace('_', '-'))
          .as(as)
          .isEqualTo(need);
      assertThat(json.at("/calibration/due").asText()).as(as).startsWith(due);
      assertThat(json.at("/calibration/cause").asText()).as(as).isEqualTo(cause);
      if (!due.isEmpty()) {
        boolean past = due.compareTo(day) <= 0;
        assertThat(json.at("/calibration/past").asBoolean()).as(as).isEqualTo(past);
        assertThat(text(name)).contains(past ? "again since" : "again by");
      }
    }
  }
}
