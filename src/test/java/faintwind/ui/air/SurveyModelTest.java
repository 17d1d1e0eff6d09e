package faintwind.ui.air;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.survey.Survey;
import faintwind.job.air.AirSource;
import faintwind.job.air.ResultFile;
import faintwind.job.air.SurveyPlaces;
import faintwind.job.air.SurveyText;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Standing;
import faintwind.report.plot.MadeUpCalibration;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init")
  private Quiet quiet;

  @SuppressWarnings("NullAway.Init")
  private SurveyModel model;

  @BeforeEach
  void open() {
    quiet = new Quiet(folder);
    model = model(new AirOnPaper(Optional.empty()));
  }

  private SurveyModel model(AirWays ways) {
    return new SurveyModel(quiet.desk().words(), quiet.desk().background(), ways);
  }

  private PlaceRow row(int number) {
    return model.readings().rows().get(number);
  }

  private void read(int number, String speed, String u95) {
    row(number).speed().set(speed);
    row(number).u95().set(u95);
  }

  @Test
  void placesAreGoneToInTheirOrderAndTheFirstOnceMore() {
    assertThat(model.next().get().sentence()).isEqualTo("Name the places.");
    row(0).name().set("sill");
    row(1).name().set("door");
    assertThat(model.again().name().get()).isEqualTo("sill");
    assertThat(model.next().get().sentence()).isEqualTo("Go to sill.");
    read(0, "0.10", "0.01");
    assertThat(model.next().get().sentence()).isEqualTo("Go to door.");
    read(1, "0.30", "0.02");
    assertThat(model.view().get().ranked().orElseThrow().survey().ranked())
        .extracting(r -> r.rank() + " " + r.visit().place())
        .containsExactly("1 door", "2 sill");
    assertThat(model.next().get().sentence()).isEqualTo("Go back to sill, as a check.");
    read(2, "0.15", "0.01");
    assertThat(model.next().get().mark()).isEqualTo(Mark.ATTENTION);
    read(2, "0.105", "0.01");
    assertThat(model.next().get().mark()).isEqualTo(Mark.DONE);
    assertThat(model.next().get().act()).map(Act::id).contains("survey-keep");
  }

  @Test
  void theListCanBeChangedButForTheCheck() {
    PlaceRow hatch = model.addPlace();
    hatch.name().set("hatch");
    assertThat(row(2)).isSameAs(hatch);
    assertThat(row(3)).isSameAs(model.again());
    model.remove(row(0));
    model.remove(model.again());
    assertThat(model.readings().rows()).hasSize(4);
    model.remove(hatch);
    assertThat(model.readings().rows()).hasSize(3).doesNotContain(hatch);
    model.remove(row(1));
    assertThat(model.readings().rows()).hasSize(3);
  }

  @Test
  void whatASheetWouldTakeForAFormulaIsKeptAsText() throws IOException, InterruptedException {
    OpenInstrument instrument = quiet.open(Cellar.begin("Rind 2").into(folder, "r2"));
    model = model(new InstrumentAir(quiet.desk(), instrument));
    row(0).name().set("=1+1");
    row(1).name().set("@door, \"left\"");
    read(0, "0.10", "0.01");
    read(1, "0.30", "0.02");
    read(2, "0.10", "0.01");
    model.keep();
    quiet.answer();
    List<FileAdded> kept =
        instrument.state().standing(FileAdded.class).stream()
            .map(Standing::event)
            .filter(added -> added.kind() == FileRole.SURVEY)
            .toList();
    assertThat(kept)
        .extracting(FileAdded::file)
        .containsExactly("logs/survey-2026-11-21-places.csv", "logs/survey-2026-11-21.json");
    Path table = instrument.folder().resolve(kept.get(0).file());
    assertThat(Files.readAllLines(table))
        .containsExactly(
            "place,from_s,to_s,speed_m_s,u95_m_s,note",
            "'=1+1,,,0.1,0.01,",
            "\"'@door, \"\"left\"\"\",,,0.3,0.02,",
            "'=1+1,,,0.1,0.01,");
    SurveyPlaces again =
        SurveyPlaces.of(table, AirSource.TYPED, Optional.empty())
            .fold((value, notes) -> value, problems -> null);
    assertThat(again.survey().drift().map(Survey.Drift::place)).contains("'=1+1");
    assertThat(Files.readString(instrument.folder().resolve(kept.get(1).file())))
        .isEqualTo(SurveyText.json(again, ResultFile.hashes(List.of(table))));
    model.keep();
    quiet.answer();
    assertThat(instrument.folder().resolve("logs/survey-2026-11-21-2.json")).exists();
    assertThat(model.unsaved("r2")).isEmpty();
    model.next().get().act().orElseThrow().run().run();
    assertThat(row(1).name().get()).as("the same places").isEqualTo("@door, \"left\"");
    assertThat(model.readings().missing()).isEqualTo(3);
  }

  @Test
  void theInstrumentThatIsListenedToSaysWhenAPlaceHasSettled() {
    model.at(
        new AirOnPaper(Optional.empty()),
        Optional.of(MadeUpCalibration.of("2026-10-14T10:00:00+02:00")));
    row(0).name().set("sill");
    row(1).name().set("door");
    LiveAir live = model.live();
    hear(live, 0, 0);
    assertThat(model.next().get().act()).map(Act::id).contains("live-here");
    live.arrive();
    assertThat(model.next().get().mark()).isEqualTo(Mark.WAITING);
    assertThat(live.standing()).startsWith("Not settled yet");
    hear(live, 1, 2000);
    live.look();
    assertThat(live.standing()).startsWith("Settled. Mean of the stay: 0.300 ± ");
    assertThat(model.next().get().act()).map(Act::id).contains("live-take");
    live.take();
    assertThat(row(0).speed().typed().get()).isEqualTo("0.3000");
    assertThat(model.next().get().sentence()).isEqualTo("Go to door.");
    assertThat(model.next().get().act()).map(Act::id).contains("live-here");
    live.lost();
    assertThat(live.now()).isEqualTo("No speed");
    assertThat(model.next().get().act()).isEmpty();
  }

  private static void hear(LiveAir live, int from_s, int to_s) {
    SpeedRow row = new SpeedRow(OptionalDouble.of(0.3), OptionalDouble.of(0.02), Set.of());
    for (int t = from_s; t <= to_s; t++) {
      live.speed(t, row);
    }
  }
}
