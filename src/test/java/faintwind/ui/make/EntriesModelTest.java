package faintwind.ui.make;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Step;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.Waived;
import faintwind.ui.Cellar;
import faintwind.ui.Quiet;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.make.EntriesModel.TypedPart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EntriesModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private record Bench(Quiet quiet, OpenInstrument instrument, StepModel model) {}

  private Bench at(String step) throws IOException {
    Quiet quiet = new Quiet(folder);
    OpenInstrument instrument =
        quiet.open(
            Cellar.begin("Rind 1")
                .design()
                .before(step)
                .open(step)
                .cautions(step)
                .into(folder, "r"));
    return new Bench(quiet, instrument, new StepModel(quiet.desk(), instrument, () -> {}));
  }

  @Test
  void thePurposeIsKeptWithItsStep() throws Exception {
    Bench bench = at("choose-use");
    EntriesModel entries = bench.model().entries();
    entries.note(bench.model().step(), "  ");
    entries.note(bench.model().step(), " Air at the floor of the barn ");
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(NoteWritten.class, "choose-use"))
        .singleElement()
        .satisfies(n -> assertThat(n.event().text()).isEqualTo("Air at the floor of the barn"));
    assertThat(entries.kept(bench.model().step())).containsExactly("Air at the floor of the barn");
  }

  @Test
  void aPartIsKeptWithLotAndPrice() throws Exception {
    Bench bench = at("get-parts");
    EntriesModel entries = bench.model().entries();
    assertThat(entries.part(bench.model().step(), new TypedPart(" ", "", "", ""))).isPresent();
    assertThat(entries.part(bench.model().step(), new TypedPart("ball", "L7", "two", "EUR")))
        .isPresent();
    assertThat(entries.part(bench.model().step(), new TypedPart("ball", "L7", "2", "")))
        .isPresent();
    assertThat(entries.part(bench.model().step(), new TypedPart("ball", "L7", "2,50", "EUR")))
        .isEmpty();
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(PartRecorded.class, "get-parts"))
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.event())
                    .isEqualTo(new PartRecorded("ball", "L7", OptionalDouble.of(2.5), "EUR")));
  }

  @Test
  void aPriceWithoutItsCurrencyStaysTypedWhenTheStepIsLeft() throws Exception {
    Bench bench = at("get-parts");
    EntriesModel entries = bench.model().entries();
    Step step = bench.model().step();
    TypedPart typed = new TypedPart("ball", "L7", "2.50", "");
    assertThat(entries.leavePart(step, typed)).contains("In which currency is the price?");
    bench.model().move(1);
    bench.quiet().answer();
    bench.model().open(step.id());
    bench.quiet().answer();
    assertThat(entries.draft(step)).isEqualTo(typed);
    assertThat(entries.unsaved())
        .get()
        .satisfies(u -> assertThat(u.question()).startsWith(step.title() + ": the part"));
    assertThat(entries.leavePart(step, new TypedPart("ball", "L7", "2.50", "EUR"))).isEmpty();
    assertThat(entries.unsaved()).isEmpty();
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(PartRecorded.class, step.id())).hasSize(1);
    entries.leavePart(step, typed);
    entries.leavePart(step, TypedPart.NONE);
    assertThat(entries.unsaved()).as("what was deleted again is not asked about").isEmpty();
  }

  @Test
  void theTimeOfTheTinCountsWithinTheLimitsOfItsStep() throws Exception {
    Bench bench = at("coat-parts");
    EntriesModel entries = bench.model().entries();
    entries.hours().set("a day");
    bench.model().startClock();
    assertThat(entries.remark().get()).isEqualTo("\"a day\" is not a number of hours.");
    for (String refused : new String[] {"2", "1000"}) {
      entries.hours().set(refused);
      bench.model().startClock();
      bench.quiet().answer();
      assertThat(entries.remark().get())
          .as(refused)
          .contains("A time from 4 to 168 h is expected.");
    }
    assertThat(bench.instrument().state().standing(ClockStarted.class, "coat-parts")).isEmpty();
    entries.hours().set("36");
    bench.model().startClock();
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(ClockStarted.class, "coat-parts"))
        .singleElement()
        .satisfies(c -> assertThat(c.event().duration_s()).isEqualTo(36 * 3600));
    assertThat(entries.hours().get()).isEmpty();
  }

  @Test
  void paintTakesTheTimeOfItsTinAndBareBallsWaitForNothing() throws Exception {
    Bench bare = at("polish-and-degrease");
    assertThat(bare.model().isMissing("gate.clock-not-started")).isFalse();
    String painted = resource().replace("bare-polished-copper", "black-paint");
    bare.instrument()
        .enter(enter -> enter.plain(Optional.empty(), new DesignChosen(painted, "paint")));
    bare.quiet().answer();
    StepModel model = bare.model();
    assertThat(model.isMissing("gate.clock-not-started")).isTrue();
    model.entries().hours().set("6");
    model.startClock();
    bare.quiet().answer();
    assertThat(bare.instrument().state().standing(ClockStarted.class, "polish-and-degrease"))
        .singleElement()
        .satisfies(c -> assertThat(c.event().duration_s()).isEqualTo(6 * 3600));
  }

  private static String resource() throws IOException {
    return Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
  }

  @Test
  void aPhotoIsPutOffWithAReason() throws Exception {
    Bench bench = at("drill-heated");
    assertThat(bench.model().isMissing("gate.photo")).isTrue();
    assertThat(bench.model().putOffPhoto("no")).isNotEmpty();
    assertThat(bench.model().putOffPhoto("the camera is being repaired")).isEmpty();
    bench.quiet().answer();
    assertThat(bench.instrument().state().standing(Waived.class, "drill-heated")).hasSize(1);
    assertThat(bench.model().isMissing("gate.photo")).isFalse();
  }

  @Test
  void goodIsSaidOnlyWhereSomethingWasJudged() throws Exception {
    Bench bench = at("mark-and-flat");
    assertThat(bench.model().next().get().sentence())
        .isEqualTo("Close the step when its work is done.");
  }
}
