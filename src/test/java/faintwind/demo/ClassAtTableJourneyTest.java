package faintwind.demo;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.virtual.VirtualBuild;
import faintwind.command.Shell;
import faintwind.demo.PairAtTable.Fault;
import faintwind.guide.InForceGate;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.job.PaperFile;
import faintwind.job.lesson.MakeClass;
import faintwind.job.record.KeepRuns;
import faintwind.message.Messages;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.Waived;
import faintwind.ui.Journey;
import faintwind.ui.MovedClock;
import faintwind.ui.Waiting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.control.TextInputControl;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * The lessons at the turntable, in rehearsal: five virtual builds of one design, two of them
 * faulty, wait in the queue of the one table, turn a session each, and get their calibrations, from
 * the teacher's window and the first pair's. The second pair's ball is dusty: it must lie outside
 * of the class, by a long time constant. The fourth weighed another ball than the one it built in:
 * its calibration must not count before the teacher has signed it.
 */
@Tag("long")
@ExtendWith(ApplicationExtension.class)
class ClassAtTableJourneyTest {
  private static final int PAIRS = 5;
  private static final int FIT_S = 100;
  private static final int LOOK_AT_IT = 4;
  private static final Map<Integer, Fault> FAULTS = Map.of(2, Fault.DUSTY, 4, Fault.OTHER_WEIGHED);

  private final MovedClock clock =
      new MovedClock(OffsetDateTime.parse("2026-11-02T08:00:00Z").toInstant());
  private final Shell shell = new Shell();

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path temp;

  @SuppressWarnings("NullAway.Init") // made first
  private Path folder;

  @Test
  void fivePairsTurnAndGetTheirCalibrations(FxRobot robot) throws IOException {
    folder = temp.resolve("year-10");
    build();
    Journey teacher = new Journey(robot, folder, clock).asked();
    teacher.open(1366, 900);
    teacher.fire("#open-class");
    Waiting.until(() -> teacher.wordsHere("#class-queue").contains("Pair 5"));
    assertThat(teacher.wordsHere("#class-queue"))
        .containsSubsequence("Pair 1", "Pair 2", "Pair 3", "Pair 4", "Pair 5");
    for (int number = 2; number <= PAIRS; number++) {
      turn(number);
    }
    Waiting.until(() -> !teacher.wordsHere("#class-queue").contains("Pair 5"));
    assertThat(teacher.wordsHere("#class-queue")).contains("Pair 1").doesNotContain("Pair 3");
    onePairFits(robot);
    pooled();
    signs(robot, teacher);
    whatTheClassLearned(teacher);
    teacher.close();
  }

  private Path pair(int number) {
    return folder.resolve("pair-0" + number);
  }

  private void build() throws IOException {
    List<Lesson> lessons =
        List.of(
            new Lesson(LocalDateTime.parse("2026-11-19T14:20"), 45),
            new Lesson(LocalDateTime.parse("2026-11-21T14:20"), 45),
            new Lesson(LocalDateTime.parse("2026-11-23T14:20"), 45));
    Path design = Files.createDirectories(temp).resolve("design.json");
    Files.writeString(design, DemoProjects.design("half an inch of copper", "80", "T"));
    MakeClass.Wish wish =
        new MakeClass.Wish(
            "Year 10",
            "How strong is the draught at our windows?",
            lessons,
            List.of("Otters", "", "", "", ""),
            List.of("builds", "checks and writes"),
            Optional.of(design),
            "4711");
    new MakeClass(clock, Messages.of(Locale.ENGLISH)).make(folder, wish);
    for (int number = 1; number <= PAIRS; number++) {
      DemoWalk walk = walk(number, OffsetDateTime.parse("2026-11-03T08:00:00Z"));
      walk.done("choose-use", DemoProjects.TYPED, Map.of("place", "indoors"));
      DemoProjects.steps(walk, "plan-runs");
    }
    clock.move(
        Duration.between(
            clock.instant(),
            Objects.requireNonNull(lessons.get(1)).at().toInstant(ZoneOffset.UTC)));
  }

  private DemoWalk walk(int number, OffsetDateTime at) throws IOException {
    DemoWalk walk = new DemoWalk(pair(number), at);
    walk.by("Pair " + number);
    return walk;
  }

  private VirtualBuild virtual(int number) {
    return PairAtTable.build(number, FAULTS.getOrDefault(number, Fault.NONE));
  }

  /** A pair's turn at the table: warm-up, a live session, its runs kept. */
  private void turn(int number) throws IOException {
    DemoWalk walk = walk(number, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC));
    walk.done("warm-up-run", DemoProjects.TYPED, Map.of());
    Path table =
        PairAtTable.session(virtual(number), 500 + number, pair(number).resolve("runs/live-1"));
    walk.done("spin-runs", DemoProjects.TYPED, Map.of("done", "yes"));
    walk.ok(KeepRuns.keep(pair(number), table, walk.enter()));
    walk.done("bring-in-runs", DemoProjects.TYPED, Map.of("checked", "yes"));
    clock.move(Duration.between(clock.instant(), walk.now().toInstant()));
  }

  /** The first pair brings its session in, and fits it in its own window. */
  private void onePairFits(FxRobot robot) throws IOException {
    DemoWalk walk = walk(1, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC));
    walk.done("warm-up-run", DemoProjects.TYPED, Map.of());
    walk.done("spin-runs", DemoProjects.TYPED, Map.of("done", "yes"));
    clock.move(Duration.between(clock.instant(), walk.now().toInstant()));
    Path table = PairAtTable.session(virtual(1), 501, temp.resolve("logger"));
    Journey pair = new Journey(robot, folder, clock);
    pair.open(1280, 800);
    pair.openInstrument("pair-01");
    pair.fire("#place-turntable");
    Waiting.until(() -> pair.there("#caution-spinning-arm-read"));
    pair.fire("#caution-spinning-arm-read");
    pair.choose(table);
    pair.fire("#turntable-way-file");
    pair.fire("#turntable-drop-choose");
    Waiting.until(() -> pair.there("#recording-1"));
    pair.fire("#turntable-fit");
    pair.fire("#formula-fit");
    Waiting.within(FIT_S, () -> pair.there("#formula-force"));
    pair.fire("#formula-force");
    Waiting.until(() -> inForce(1).isPresent());
    pair.close();
  }

  private Optional<String> inForce(int number) {
    try {
      return walk(number, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
          .view()
          .state()
          .last(CalibrationPutInForce.class)
          .map(line -> line.event().file());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** All together by the command, and put in force where nothing asks for the teacher. */
  private void pooled() {
    assertThat(shell.run("pool", folder, "--who", "Ida")).as(shell.said()).isEqualTo(LOOK_AT_IT);
    assertThat(shell.said())
        .contains("Learned from 3 instruments together")
        .contains("Pair 2 stands out by its convection", "Pair 4 stands out by its heating");
    for (int number = 1; number <= PAIRS; number++) {
      int exit = shell.run("put-in-force", pair(number), "--who", "Pair " + number);
      assertThat(exit == 0).as(shell.said()).isEqualTo(number != 4);
    }
    assertThat(shell.run("put-in-force", pair(4), "--reason", "it looks right", "--who", "Pair 4"))
        .isNotZero();
    assertThat(shell.said()).contains("Teacher");
  }

  private void signs(FxRobot robot, Journey teacher) throws IOException {
    Waiting.until(() -> teacher.there("#class-sign-4-calibration"));
    assertThat(teacher.wordsHere("#class-sign")).contains("Pair 4", "does not meet the build");
    assertThat(teacher.wordsHere("#next-sentence")).isEqualTo("Waits for your signature: Pair 4");
    write(robot, "#class-because", "another ball was weighed");
    write(robot, "#class-code", "4711");
    teacher.fire("#class-sign-4-calibration");
    Waiting.until(() -> teacher.wordsHere("#class-remark").equals("Signed."));
    Waiting.until(() -> !teacher.there("#class-sign-4-calibration"));
    assertThat(inForce(4)).isPresent();
    assertThat(
            walk(4, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .view()
                .state()
                .standing(Waived.class))
        .anyMatch(
            line ->
                line.who().equals("Teacher")
                    && line.event().what().startsWith(InForceGate.EXPLAINED)
                    && line.event().reason().contains("signed by the teacher's code"));
  }

  private void whatTheClassLearned(Journey teacher) throws IOException {
    Waiting.until(() -> teacher.wordsHere("#class-spread").contains("Pair 2 lies outside"));
    assertThat(teacher.wordsHere("#class-spread")).contains("Pair 4 lies outside");
    Path report = temp.resolve("report.html");
    teacher.choose(report);
    teacher.fire("#class-report");
    Waiting.until(() -> Files.exists(report));
    String page = Files.readString(report);
    assertThat(page).doesNotContain("not calibrated yet");
    assertThat(page).doesNotContain("its runs are not at hand");
    assertThat(page.split("% at ")).hasSizeGreaterThan(2 * PAIRS); // two speeds and more of each
    assertThat(onPaper(page))
        .contains("m/s", "12/12")
        .doesNotContainPattern("m\\R/s")
        .doesNotContainPattern("\\d\\R/\\d");
  }

  private String onPaper(String page) throws IOException {
    Path file = temp.resolve("report.pdf");
    PaperFile.write(file, page);
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static void write(FxRobot robot, String id, String text) {
    robot.interact(() -> robot.lookup(id).queryAs(TextInputControl.class).setText(text));
  }
}
