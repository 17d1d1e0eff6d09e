package faintwind.ui.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.Sha256;
import faintwind.job.air.AirSource;
import faintwind.job.air.FlowText;
import faintwind.job.air.MeasureFlow;
import faintwind.job.air.ResultFile;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Standing;
import faintwind.report.plot.MadeUpCalibration;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FlowModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init")
  private Quiet quiet;

  @SuppressWarnings("NullAway.Init")
  private FlowModel model;

  @BeforeEach
  void open() {
    quiet = new Quiet(folder);
    model = model(new AirOnPaper(Optional.empty()));
  }

  private FlowModel model(AirWays ways) {
    return new FlowModel(quiet.desk().words(), quiet.desk().background(), ways);
  }

  private void lay(String shape, int width_mm, int height_mm, int ball_mm) {
    model.form().choice("shape").set(shape);
    model.form().number("width_mm").set(String.valueOf(width_mm));
    model.form().number("height_mm").set(String.valueOf(height_mm));
    model.form().number("ball_mm").set(String.valueOf(ball_mm));
    model.lay();
  }

  private void fill(String speed, String u95) {
    for (PlaceRow row : model.readings().rows()) {
      row.speed().set(speed);
      row.u95().set(u95);
    }
  }

  private static List<FileAdded> flows(OpenInstrument instrument) {
    return instrument.state().standing(FileAdded.class).stream()
        .map(Standing::event)
        .filter(added -> added.kind() == FileRole.FLOW)
        .toList();
  }

  @Test
  void aDuctIsGoneThroughPointByPointAndKeptAsTheCommandDoes()
      throws IOException, InterruptedException {
    OpenInstrument instrument = quiet.open(Cellar.begin("Rind 2").into(folder, "r2"));
    model = model(new InstrumentAir(quiet.desk(), instrument));
    assertThat(model.next().get().act()).map(Act::id).contains("opening-lay");
    model.form().number("count").set("3");
    lay("round", 200, 0, 6);
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(model.view().get().unread()).isEqualTo(1);
    model.read(FlowModel.CAUTION);
    quiet.answer();
    assertThat(model.next().get().sentence()).isEqualTo("Go to A1: 6.4 mm deep.");
    PlaceRow first = model.readings().rows().get(0);
    first.speed().set("0,3");
    first.u95().set("0.02");
    assertThat(model.next().get().sentence()).startsWith("Go to A2:");
    assertThat(model.view().get().measured()).isEmpty();
    fill("0.3", "0.02");
    MeasureFlow measured = model.view().get().measured().orElseThrow();
    assertThat(measured.flow().flow_m3_h()).isCloseTo(33.883396, within(1e-6));
    assertThat(model.next().get().sentence()).startsWith("Flow: 33.").contains("m³/h (95 %)");
    model.keep();
    quiet.answer();
    assertThat(model.next().get().detail()).contains("logs/flow-2026-11-21.json");
    assertThat(model.next().get().act().orElseThrow().id()).isEqualTo("flow-anew");
    assertThat(flows(instrument))
        .extracting(FileAdded::file)
        .containsExactly("logs/flow-2026-11-21-points.csv", "logs/flow-2026-11-21.json");
    assertThatTheCommandSaysTheSame(instrument.folder(), flows(instrument));
  }

  private static void assertThatTheCommandSaysTheSame(Path folder, List<FileAdded> kept)
      throws IOException {
    Path table = folder.resolve(kept.get(0).file());
    Path result = folder.resolve(kept.get(1).file());
    MeasureFlow again =
        MeasureFlow.of(table, AirSource.TYPED, Optional.empty())
            .fold((value, notes) -> value, problems -> null);
    assertThat(Files.readString(result))
        .isEqualTo(FlowText.json(again, ResultFile.hashes(List.of(table))));
    assertThat(kept.get(0).sha256()).isEqualTo(Sha256.of(table));
    assertThat(kept.get(1).sha256()).isEqualTo(Sha256.of(result));
  }

  @Test
  void whatIsTypedAndNotKeptIsAskedAbout() throws IOException, InterruptedException {
    OpenInstrument instrument = quiet.open(Cellar.begin("Rind 2").into(folder, "r2"));
    model = model(new InstrumentAir(quiet.desk(), instrument));
    lay("gap", 800, 40, 8);
    model.read(FlowModel.CAUTION);
    quiet.answer();
    assertThat(model.unsaved("r2")).isEmpty();
    model.readings().rows().get(0).speed().set("0.3");
    Unsaved half = model.unsaved("r2").orElseThrow();
    assertThat(half.question()).startsWith("r2: the readings of a flow are not kept");
    assertThat(half.keep()).as("half a flow cannot be kept").isEmpty();
    fill("0.3", "0.02");
    model.unsaved("r2").flatMap(Unsaved::keep).orElseThrow().run().run();
    quiet.answer();
    assertThat(flows(instrument)).hasSize(2);
    assertThat(model.unsaved("r2")).isEmpty();
    model.readings().rows().get(0).speed().set("0.31");
    assertThat(model.unsaved("r2")).isPresent();
  }

  @Test
  void aCautionIsAnsweredOnceByEachPerson() throws IOException, InterruptedException {
    Path r2 = Cellar.begin("Rind 2").into(folder, "r2");
    model = model(new InstrumentAir(quiet.desk(), quiet.open(r2, "Ida")));
    lay("hive", 300, 40, 8);
    model.read(FlowModel.CAUTION);
    model.read(FlowModel.HIVE_CAUTION);
    quiet.answer();
    quiet.answer();
    assertThat(model.view().get().unread()).isZero();
    model.at(new InstrumentAir(quiet.desk(), quiet.open(r2, "Ida")), Optional.empty());
    assertThat(model.view().get().unread()).as("Ida comes back on another day").isZero();
    assertThat(model.readBy(FlowModel.CAUTION))
        .hasValueSatisfying(who -> assertThat(who).contains("Ida"));
    model.at(new InstrumentAir(quiet.desk(), quiet.open(r2, "Jo")), Optional.empty());
    assertThat(model.view().get().unread()).as("Jo has not answered").isEqualTo(2);
  }

  @Test
  void anInstrumentThatFillsTheOpeningIsRefused() {
    lay("round", 40, 0, 12);
    assertThat(model.view().get().guide()).isEmpty();
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("fill 27 % of the opening"));
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    model.form().number("ball_mm").set("six");
    model.lay();
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("is not a number"));
  }

  @Test
  void whatWasReadStaysAsLongAsTheOpeningIsTheSame() {
    lay("round", 315, 0, 8);
    model.read(FlowModel.CAUTION);
    fill("0.3", "0.02");
    model.again();
    assertThat(model.view().get().guide()).isEmpty();
    model.lay();
    assertThat(model.view().get().measured()).isPresent();
    lay("round", 300, 0, 8);
    assertThat(model.view().get().measured()).isEmpty();
    assertThat(model.view().get().missing()).isEqualTo(16);
  }

  @Test
  void aHiveHasACautionOfItsOwn() {
    lay("hive", 300, 40, 8);
    assertThat(model.view().get().unread()).isEqualTo(2);
    model.read(FlowModel.CAUTION);
    assertThat(model.next().get().mark()).isEqualTo(Mark.BLOCKED);
    model.read(FlowModel.HIVE_CAUTION);
    assertThat(model.next().get().sentence()).startsWith("Go to A1: ");
  }

  @Test
  void aSpeedBeyondReasonIsRefusedAndTooFaintAFlowIsTold() {
    lay("gap", 800, 40, 8);
    model.read(FlowModel.CAUTION);
    fill("0.01", "0.02");
    assertThat(model.view().get().measured()).isPresent();
    assertThat(model.next().get().mark()).isEqualTo(Mark.ATTENTION);
    model.readings().rows().get(0).speed().set("300");
    assertThat(model.view().get().refused()).isTrue();
    assertThat(model.next().get().act()).isEmpty();
  }

  @Test
  void timesOfAConvertedLogTakeThePlaceOfSpeeds() throws IOException, InterruptedException {
    Path speeds = folder.resolve("speeds.csv");
    StringBuilder text = new StringBuilder("time_s,speed_m_s,u95_m_s,flag\n");
    for (int t = 0; t < 6000; t += 5) {
      text.append(t).append(",0.3,0.02,\n");
    }
    Files.writeString(speeds, text);
    lay("gap", 800, 40, 8);
    model.read(FlowModel.CAUTION);
    model.readings().way().set(Readings.Way.LOG);
    model.use(speeds);
    quiet.answer();
    assertThat(model.readings().log()).map(ConvertedLog::speeds).contains(speeds);
    int at_s = 0;
    for (PlaceRow row : model.readings().rows()) {
      row.from().set(String.valueOf(at_s));
      row.to().set(String.valueOf(at_s + 600));
      at_s += 600;
    }
    // nothing says how long the instrument waits: no calibration is in force here
    assertThat(model.view().get().refused()).isTrue();
    assertThat(model.view().get().problems()).anyMatch(p -> p.contains("time to wait"));
  }

  @Test
  void theCalibrationInForceSaysHowThickTheBallsAre() {
    model.at(
        new AirOnPaper(Optional.empty()),
        Optional.of(MadeUpCalibration.of("2026-10-14T10:00:00+02:00")));
    assertThat(model.form().number("ball_mm").typed().get()).isNotBlank();
    model.form().number("ball_mm").set("8");
    model.at(new AirOnPaper(Optional.empty()), Optional.empty());
    assertThat(model.form().number("ball_mm").typed().get()).isEqualTo("8");
  }
}
