package faintwind.job.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.files.instrument.InstrumentFolder;
import faintwind.guide.Doubts;
import faintwind.guide.Gate;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Card;
import faintwind.guide.checklist.Step;
import faintwind.job.JobWatch;
import faintwind.job.design.KeptDesigns;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.InstrumentCreated;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.JournalEntry;
import faintwind.report.card.StepCard;
import faintwind.report.card.StepCards;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an instrument's sheet says once its arm was measured and planned, and a clock set back. */
class SheetsOnRecordTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00+01:00");
  private static final Clock CLOCK = Clock.fixed(NOW.toInstant(), NOW.getOffset());
  private static final Path CALIBRATION =
      Path.of("demo-projects/cellar/calibrations/2026-09-13.json");

  private final AtomicInteger next = new AtomicInteger();
  private final Enter.Person ada = new Enter.Person("Ada Test", () -> "e" + next.incrementAndGet());
  private final String design =
      Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
  @TempDir Path temp;
  private Path folder;

  SheetsOnRecordTest() throws IOException {}

  @BeforeEach
  void begin() throws IOException {
    folder = temp.resolve("rind");
    Enter.begin(folder, new InstrumentCreated("Rind", true), CLOCK, ada);
    enter(Optional.empty(), new DesignChosen(design, "first"), NOW);
  }

  private void enter(Optional<String> step, Event event, OffsetDateTime at) throws IOException {
    String id = "e" + next.incrementAndGet();
    new InstrumentFolder(folder).append(List.of(new JournalEntry(id, at, "Ada Test", step, event)));
  }

  private static <T> T value(Checked<T> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private InstrumentView view() throws IOException {
    return value(InstrumentView.open(folder, KeptDesigns.withShippedParts()::sheet));
  }

  private Situation situation() throws IOException {
    return view().situation(NOW.plusDays(1));
  }

  private double size(OutcomeId id) throws IOException {
    return situation().sheet().orElseThrow().quantity(id).orElseThrow().value().nominal();
  }

  private List<String> doubts(String step) throws IOException {
    InstrumentView view = view();
    Step of = view.checklist().step(step).orElseThrow();
    return Doubts.of(view.checklist(), of, situation()).stream().map(Problem::id).toList();
  }

  private PlannedSession keepPlan(double radius_m, double fastest_m_s) throws IOException {
    PlanRequest request =
        PlanRequest.of(
            new ArmSetup(List.of(Uncertain.of(radius_m, 0.001)), DataWay.of(DataWay.Kind.WIRELESS)),
            new PlanWish(
                0.1,
                fastest_m_s,
                PlanWish.Beats.usual(),
                PlanWish.Directions.BOTH_WAYS,
                PlanWish.Time.free()),
            new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1));
    PlannedSession planned = value(PlanTurntable.plan(request, JobWatch.NOBODY));
    value(PlanTurntable.keep(folder, planned, new Enter(view(), CLOCK, ada)));
    return planned;
  }

  @Test
  void theArmFollowsTheDesignThenTheMeasuredRadiusThenThePlan() throws IOException {
    assertThat(size(OutcomeId.ARM_RADIUS)).isCloseTo(500, within(1e-9));
    assertThat(size(OutcomeId.ARM_FASTEST)).isEqualTo(3);

    Amount radius = Amount.exact(612, "mm");
    enter(
        Optional.of("set-up-arm"),
        new ReadingEntered("radius", "612", radius, Optional.empty()),
        NOW.plusHours(1));
    assertThat(size(OutcomeId.ARM_RADIUS)).isCloseTo(612, within(1e-9));
    assertThat(size(OutcomeId.ARM_CLEAR)).isCloseTo(1112, within(1e-9));
    assertThat(size(OutcomeId.ARM_FASTEST)).isEqualTo(3);

    PlannedSession planned = keepPlan(0.8, 2);
    double fastest =
        planned.choice().staircase().spins().stream()
            .mapToDouble(PlannedSpin::speed_m_s)
            .max()
            .orElseThrow();
    assertThat(fastest).isLessThan(2.5);
    assertThat(size(OutcomeId.ARM_RADIUS)).isCloseTo(800, within(1e-9));
    assertThat(size(OutcomeId.ARM_FASTEST)).isCloseTo(fastest, within(1e-9));
    assertThat(size(OutcomeId.ARM_PULL)).isCloseTo(0.1 * fastest * fastest / 0.8, within(0.03));
    StepCard card =
        new StepCards(Messages.of(Locale.ENGLISH)).of(Card.ARM, situation()).orElseThrow();
    assertThat(card.rows().get(0).what()).isEqualTo("Radius as planned");
    assertThat(card.rows().get(0).value()).startsWith("800");
  }

  @Test
  void anArmChosenLongerThanNeededSetsTheSizesAndIsNotDoubtedOnceMeasured() throws IOException {
    Optional<String> choice = Optional.of("choose-arm");
    Amount chosen = Amount.exact(90, "cm");
    enter(
        choice, new ReadingEntered("arm-radius", "90", chosen, Optional.empty()), NOW.plusHours(1));
    assertThat(size(OutcomeId.ARM_RADIUS)).isCloseTo(900, within(1e-9));
    assertThat(size(OutcomeId.ARM_TURNS)).as("60·3/(2π·0.9), rounded").isEqualTo(32);
    enter(choice, new StepFinished(), NOW.plusHours(2));

    Amount measured = Amount.exact(897, "mm");
    enter(
        Optional.of("set-up-arm"),
        new ReadingEntered("radius", "897", measured, Optional.empty()),
        NOW.plusHours(3));
    assertThat(size(OutcomeId.ARM_RADIUS)).isCloseTo(897, within(1e-9));
    assertThat(doubts("choose-arm")).isEmpty();
  }

  @Test
  void anArmThatWasBuiltForLessIsDoubtedAndOneForMoreIsNot() throws IOException {
    enter(Optional.of("build-hub"), new StepFinished(), NOW.plusMinutes(1));
    keepPlan(0.5, 2);
    assertThat(doubts("build-hub")).isEmpty();
    keepPlan(1.5, 4);
    assertThat(size(OutcomeId.ARM_FOOT)).isGreaterThan(1.2);
    assertThat(doubts("build-hub")).containsExactly("doubt.design-changed");
  }

  @Test
  void aClockSetBackHidesNoChangeOfDesignEvenUnderACalibration() throws IOException {
    Files.createDirectories(folder.resolve("calibrations"));
    Files.copy(CALIBRATION, folder.resolve("calibrations/first.json"));
    enter(Optional.of("first-power"), new StepFinished(), NOW.plusHours(1));
    enter(Optional.empty(), new CalibrationPutInForce("calibrations/first.json"), NOW.plusHours(2));
    assertThat(doubts("first-power")).isEmpty();
    String hotter = design.replace("\"resistance_ohm\": 100", "\"resistance_ohm\": 22");
    enter(Optional.empty(), new DesignChosen(hotter, "later"), NOW.minusDays(3));
    assertThat(doubts("first-power")).containsExactly("doubt.design-changed");
    double jar = size(OutcomeId.JAR_DELTA);
    assertThat(jar).as("by the new design, not by the old calibration").isGreaterThan(60);
  }

  @Test
  void aClockSetBackHidesNoCorrectionBelowAFinishedStep() throws IOException {
    Optional<String> use = Optional.of("choose-use");
    enter(use, new QuestionAnswered("place", "indoors"), NOW.plusMinutes(1));
    String answered = "e" + next.get();
    enter(Optional.of("choose-design"), new StepFinished(), NOW.plusHours(1));
    assertThat(doubts("choose-design")).isEmpty();
    Event other = new QuestionAnswered("place", "sun");
    enter(use, new Event.Corrected(answered, "misread", Optional.of(other)), NOW.minusDays(3));
    assertThat(doubts("choose-design")).containsExactly("doubt.corrected-before");
  }

  @Test
  void aDesignThatCannotBeWorkedOutKeepsTheGateShutWhateverElseIsOnRecord() throws IOException {
    Amount radius = Amount.exact(612, "mm");
    enter(
        Optional.of("set-up-arm"),
        new ReadingEntered("radius", "612", radius, Optional.empty()),
        NOW.plusHours(1));
    assertThat(reasons()).doesNotContain("power.design-unreadable");
    String unknown = design.replace("9v-alkaline", "a-pack-of-nobody");
    enter(Optional.empty(), new DesignChosen(unknown, "another pack"), NOW.plusHours(2));
    assertThat(reasons()).contains("power.design-unreadable");
    enter(
        Optional.of("set-up-arm"),
        new ReadingEntered("radius", "600", Amount.exact(600, "mm"), Optional.empty()),
        NOW.plusHours(3));
    assertThat(reasons()).contains("power.design-unreadable");
  }

  private List<String> reasons() throws IOException {
    return Gate.check(view().checklist(), Gate.HEATER_POWER, situation()).reasons().stream()
        .map(Problem::id)
        .toList();
  }
}
