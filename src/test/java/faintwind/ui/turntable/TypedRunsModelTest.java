package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.job.turntable.ReadRuns;
import faintwind.job.turntable.TypedRuns;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.Quiet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TypedRunsModelTest {
  private static final Path SESSION =
      Path.of("src/test/resources/sample-runs/bench-f/in/session.csv");

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final TypedRunsModel model = new TypedRunsModel(Messages.of(Locale.ENGLISH));

  private void type(int row, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      model.rows().get(row).fields().get(i).set(texts[i]);
    }
  }

  @Test
  void everyFieldThatIsMissingIsToldAtOnce() {
    type(0, "600", "4o2", "", "10 min", "OL");
    Checked<TypedRuns.Noted> read = model.read();
    assertThat(read.isOk()).isFalse();
    assertThat(read.problems())
        .extracting(p -> p.id() + " " + p.where().column().orElse(""))
        .containsExactly(
            "turntable.typed.no-recording ",
            "turntable.typed.not-a-number turns",
            "turntable.typed.not-a-number turns_time_s",
            "turntable.typed.not-a-number spin_stop_s");
  }

  @Test
  void whatIsTypedStaysWithItsInstrumentAndIsAskedAboutUntilItIsInATable() {
    LiveTables tables = new LiveTables(new Quiet(SESSION).desk());
    Path rind = Path.of("rind-2");
    TypedRunsModel typed = tables.typed(rind);
    assertThat(tables.typed(rind)).isSameAs(typed);
    typed.rows().get(0).radius().set("600");
    assertThat(tables.unsaved()).as("a radius alone is no run").isEmpty();
    typed.rows().get(0).turns().set("10");
    assertThat(tables.unsaved())
        .singleElement()
        .satisfies(asked -> assertThat(asked.question()).startsWith("rind-2: runs are typed"));
    tables.forgetTyped(rind);
    assertThat(tables.typed(rind)).isSameAs(typed);
    typed.markWritten();
    assertThat(tables.unsaved()).isEmpty();
    tables.forgetTyped(rind);
    assertThat(tables.typed(rind)).isNotSameAs(typed);
  }

  @Test
  void nextRowKeepsTheRadius() {
    type(0, "600", "10", "60", "100", "160");
    model.addRow();
    assertThat(model.rows().get(1).radius().typed().get()).isEqualTo("600");
    assertThat(model.rows().get(1).turns().typed().get()).isEmpty();
  }

  @Test
  void typedStaircaseIsReadBackAsRunsOfOneRecording() throws IOException {
    Path recording = Files.copy(SESSION, folder.resolve("session.csv"));
    model.recording().set(Optional.of(recording));
    type(0, "60 cm", "30", "282,7", "3000", "3600");
    model.addRow();
    type(1, "600", "20", "300", "4000", "4700");
    TypedRuns.Noted noted = value(model.read());
    Path table = TypedRuns.write(noted);
    RunSet runs = value(ReadRuns.read(table));
    assertThat(runs.runs())
        .extracting(r -> r.kind())
        .isEqualTo(List.of(RunKind.STILL, RunKind.SPIN, RunKind.SPIN));
    assertThat(runs.runs().get(1).arm().orElseThrow().speed_m_s())
        .isCloseTo(0.40006132129, Offset.offset(1e-10));
    assertThat(runs.runs().get(1).recording().signal().last_s()).isLessThanOrEqualTo(4000);
  }

  @Test
  void referenceFlowsAndCarriedAirStandInTheTable() throws IOException {
    Path recording = Files.copy(SESSION, folder.resolve("session.csv"));
    model.recording().set(Optional.of(recording));
    type(0, "600", "30", "282,7", "3000", "3600");
    model.flows().swirl().set("3");
    model.flows().uSwirl().set("1");
    model.flows().addRow();
    TypedFlowsModel.Row flow = model.flows().rows().get(0);
    flow.speed().set("0,50");
    flow.from().set("4000");
    flow.to().set("4400");
    RunSet runs = value(ReadRuns.read(TypedRuns.write(value(model.read()))));
    assertThat(runs.runs())
        .extracting(r -> r.kind())
        .isEqualTo(List.of(RunKind.STILL, RunKind.SPIN, RunKind.REFERENCE));
    assertThat(runs.runs().get(1).arm().orElseThrow().swirlShare().orElseThrow())
        .isEqualTo(Uncertain.of(0.03, 0.01));
    assertThat(runs.runs().get(2).reference_m_s().orElseThrow()).isEqualTo(Uncertain.of(0.5));
    assertThat(runs.runs().get(2).recording().signal().last_s()).isLessThanOrEqualTo(4400);
    flow.to().set("3900");
    assertThat(model.read().problems())
        .extracting(Problem::id)
        .containsExactly("turntable.typed.stop-first");
  }

  @Test
  void anEarlierTableIsNeverOverwritten() throws IOException {
    Path recording = Files.copy(SESSION, folder.resolve("session.csv"));
    TypedRuns.Spin spin = new TypedRuns.Spin(600, 10, 60, 3000, 3600, Optional.empty());
    TypedRuns.Noted noted =
        new TypedRuns.Noted(recording, List.of(spin), List.of(), TypedRuns.Arm.UNKNOWN);
    Path first = TypedRuns.write(noted);
    Path second = TypedRuns.write(noted);
    assertThat(second).isNotEqualTo(first);
    assertThat(first).exists();
  }

  private static PlannedSpin spin(int number, double radius_m, int perMinute) {
    return new PlannedSpin(
        number,
        Uncertain.of(radius_m, 0.001),
        new Beat(perMinute, 4),
        20,
        number % 2 == 0 ? Direction.CCW : Direction.CW,
        0.001);
  }

  @Test
  void planGivesRadiusAndDirectionAndLeavesTheRestBlank() {
    model.follow(List.of(spin(1, 0.3, 60), spin(2, 0.6, 60)));
    assertThat(model.rows()).hasSize(2);
    assertThat(model.rows().get(1).radius().typed().get()).isEqualTo("600");
    assertThat(model.rows().get(1).direction().get()).contains(Direction.CCW);
    assertThat(model.rows().get(1).turns().typed().get()).isEmpty();
    assertThat(model.rows().get(1).turns().remark().get()).isEqualTo("planned 20");
    model.recording().set(Optional.of(SESSION));
    assertThat(model.read().problems())
        .extracting(Problem::id)
        .containsExactly("turntable.typed.no-spin");
  }

  @Test
  void exchangedRadiiAreAskedAboutNotRefused() {
    model.follow(List.of(spin(1, 0.3, 60), spin(2, 0.6, 60), spin(3, 0.6, 100)));
    model.recording().set(Optional.of(SESSION));
    type(0, "600", "20", "80", "3000", "3100");
    type(1, "300", "20", "80", "3300", "3400");
    type(2, "600", "20", "48", "3600", "3700");
    assertThat(model.read().isOk()).isTrue();
    assertThat(model.read().problems())
        .extracting(Problem::id)
        .containsExactly("plan.noted-exchanged");
  }

  @Test
  void speedFarFromThePlannedOneIsAskedAbout() {
    model.follow(List.of(spin(1, 0.3, 60)));
    model.recording().set(Optional.of(SESSION));
    type(0, "300", "10", "80", "3000", "3100");
    assertThat(model.read().problems()).extracting(Problem::id).containsExactly("plan.noted-speed");
  }

  @Test
  void negativeCountsAndTimesTurnedRoundAreRefused() {
    model.recording().set(Optional.of(SESSION));
    type(0, "600", "-10", "60", "3000", "3600");
    model.addRow();
    type(1, "600", "10", "60", "3600", "3000");
    model.addRow();
    type(2, "600", "10", "900", "3000", "3600");
    assertThat(model.read().isOk()).isFalse();
    assertThat(model.read().problems())
        .extracting(p -> p.id() + " " + p.where().column().orElse(""))
        .containsExactly(
            "turntable.typed.not-positive turns",
            "turntable.typed.stop-first spin_stop_s",
            "turntable.typed.count-longer turns_time_s");
  }

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }
}
