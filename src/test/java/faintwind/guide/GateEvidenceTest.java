package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Situation.DatedSheet;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.Event.Corrected;
import faintwind.record.Event.DesignChosen;
import faintwind.record.Event.FileAdded;
import faintwind.record.Event.FileRole;
import faintwind.record.Event.PartRecorded;
import faintwind.record.Event.QuestionAnswered;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.ReadingVerdict;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every way round the gate of heater power that a journal written by hand could try. The journal is
 * a file: nothing but the computation from it keeps the power off.
 */
class GateEvidenceTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final String WORDY = "the borrowed meter had to go back";
  private static final DesignSheet GOOD = SampleBuild.sheet();
  private static final DesignSheet STOPS = stops();

  private static DesignSheet stops() {
    List<Outcome> all = new ArrayList<>(GOOD.quantities());
    all.removeIf(q -> q.id() == OutcomeId.HEATED_BALL_TEMPERATURE);
    Problem hot = Problem.error("design.ball-too-hot-made-up", Where.NOWHERE, "1122");
    all.add(
        new Outcome(
            OutcomeId.HEATED_BALL_TEMPERATURE,
            Interval.exact(1122),
            DesignVerdict.STOP,
            Optional.of(hot)));
    return new DesignSheet(all);
  }

  // ---- ways, each a change of the journal of a sound build that had passed every gate ----

  private interface Way extends UnaryOperator<List<JournalEntry>> {}

  private static JournalEntry by(String who, String step, Event event) {
    return new JournalEntry(
        "x" + event.hashCode() + step + who,
        SampleBuild.LATER.minusHours(1),
        who,
        Optional.of(step),
        event);
  }

  private static Way add(JournalEntry... more) {
    return entries -> {
      List<JournalEntry> all = new ArrayList<>(entries);
      all.addAll(List.of(more));
      return all;
    };
  }

  private static Way without(String reading) {
    return entries ->
        entries.stream()
            .filter(e -> !(e.event() instanceof ReadingEntered r && r.reading().equals(reading)))
            .toList();
  }

  /** Another reading in the place of the one that was typed. */
  private static Way typed(String reading, String text) {
    return entries ->
        entries.stream()
            .map(
                e ->
                    e.event() instanceof ReadingEntered r && r.reading().equals(reading)
                        ? new JournalEntry(e.id(), e.at(), e.who(), e.step(), reads(reading, text))
                        : e)
            .toList();
  }

  /** A waiver right before the step is called finished. */
  private static Way waived(String reading, String who, String reason) {
    String step = CHECKLIST.stepOfReading(reading).orElseThrow().id();
    return entries -> {
      List<JournalEntry> all = new ArrayList<>();
      for (JournalEntry e : entries) {
        boolean end =
            e.event() instanceof StepFinished && e.step().filter(step::equals).isPresent();
        if (end) {
          JournalEntry waiver = by(who, step, new Waived(reading, reason));
          all.add(new JournalEntry(waiver.id(), e.at(), who, Optional.of(step), waiver.event()));
        }
        all.add(e);
      }
      return all;
    };
  }

  /** With the verdict that a forger would write beside it: that is never believed. */
  private static ReadingEntered reads(String reading, String text) {
    String unit =
        CHECKLIST.stepOfReading(reading).flatMap(s -> s.reading(reading)).orElseThrow().unit();
    return new ReadingEntered(
        reading, text, SampleBuild.amount(text, unit), Optional.of(ReadingVerdict.GOOD));
  }

  private static List<JournalEntry> classroom(List<JournalEntry> entries) {
    return entries.stream()
        .map(
            e ->
                e.event() instanceof QuestionAnswered q && q.question().equals("group")
                    ? new JournalEntry(
                        e.id(), e.at(), "Mr Teach", e.step(), new QuestionAnswered("group", "yes"))
                    : e)
        .toList();
  }

  private static Way and(Way... ways) {
    return entries -> {
      List<JournalEntry> all = entries;
      for (Way way : ways) {
        all = way.apply(all);
      }
      return all;
    };
  }

  private static Way finished(String step) {
    return add(by("Ada Test", step, new StepFinished()));
  }

  private static String entryOf(String reading) {
    return SampleBuild.complete(CHECKLIST).stream()
        .filter(e -> e.event() instanceof ReadingEntered r && r.reading().equals(reading))
        .map(JournalEntry::id)
        .findFirst()
        .orElseThrow();
  }

  private static Arguments way(String name, Way way, String reason) {
    return Arguments.of(name, way, reason);
  }

  static Stream<Arguments> ways() {
    List<Arguments> all = new ArrayList<>();
    all.addAll(waysOfWaivers());
    all.addAll(waysOfTheClassroom());
    all.addAll(waysOfTheMeter());
    all.addAll(waysOfChanges());
    return all.stream();
  }

  private static List<Arguments> waysOfWaivers() {
    String leak = "lead-a-ball";
    return List.of(
        way("missing", without(leak), "gate.reading-missing"),
        way(
            "missing, waived",
            and(without(leak), waived(leak, "Ada", WORDY)),
            "gate.reading-missing"),
        way("stop", typed(leak, "420k"), "gate.reading-stop"),
        way(
            "stop, waived",
            and(typed(leak, "420k"), waived(leak, "Ada", WORDY)),
            "gate.reading-stop"),
        way(
            "stop of the loop, waived",
            and(typed("loop", "OL"), waived("loop", "Ada", WORDY)),
            "gate.reading-stop"),
        way(
            "stop of ball to ball, waived",
            and(typed("ball-ball", "0.3"), waived("ball-ball", "Ada", WORDY)),
            "gate.reading-stop"),
        way("doubtful", typed(leak, "5M"), "gate.reading-doubtful"),
        way(
            "doubtful, waived by x",
            and(typed(leak, "5M"), waived(leak, "x", WORDY)),
            "gate.reading-doubtful"),
        way(
            "doubtful, waived for x",
            and(typed(leak, "5M"), waived(leak, "Ada", "x")),
            "gate.reading-doubtful"),
        way(
            "doubtful, waived for xxxxx xxxxx xx",
            and(typed(leak, "5M"), waived(leak, "Ada", "xxxxx xxxxx xx")),
            "gate.reading-doubtful"),
        way(
            "doubtful, waived beforehand",
            and(
                waived(leak, "Ada", WORDY),
                add(by("Ada", "heater-insulation", reads(leak, "5M"))),
                finished("heater-insulation")),
            "gate.reading-doubtful"),
        way(
            "supply missing",
            and(without("supply-open"), waived("supply-open", "Ada", WORDY)),
            "gate.reading-missing"),
        way(
            "step called finished again",
            and(typed(leak, "420k"), finished("heater-insulation")),
            "gate.reading-stop"));
  }

  private static List<Arguments> waysOfTheClassroom() {
    String leak = "lead-a-ball";
    Way doubtful = and(GateEvidenceTest::classroom, typed(leak, "5M"));
    return List.of(
        way(
            "a pupil waives",
            and(doubtful, waived(leak, "Pip Pupil", WORDY)),
            "gate.reading-doubtful"),
        way(
            "a pupil says that it is no classroom, and waives",
            and(
                doubtful,
                waived(leak, "Pip Pupil", WORDY),
                add(by("Pip Pupil", "choose-use", new QuestionAnswered("group", "no")))),
            "gate.reading-doubtful"),
        way(
            "a pupil strikes the teacher's answer",
            and(
                doubtful,
                waived(leak, "Pip Pupil", WORDY),
                entries -> {
                  String answer =
                      entries.stream()
                          .filter(
                              e ->
                                  e.event() instanceof QuestionAnswered q
                                      && q.question().equals("group"))
                          .map(JournalEntry::id)
                          .findFirst()
                          .orElseThrow();
                  Event no = new QuestionAnswered("group", "no");
                  return add(by(
                          "Pip Pupil",
                          "choose-use",
                          new Corrected(answer, "no it is not", Optional.of(no))))
                      .apply(entries);
                }),
            "gate.reading-doubtful"));
  }

  private static List<Arguments> waysOfTheMeter() {
    Way late = add(by("Ada Test", "heater-insulation", reads("lead-a-ball", "OL")));
    Way other = add(by("Ada Test", "joined-check", new Event.MeterChosen("another")));
    return List.of(
        way("no proof after", without("meter-proof-after"), "gate.reading-missing"),
        way(
            "no proof before",
            and(without("meter-proof-1"), without("meter-proof-10")),
            "gate.reading-missing"),
        way("meter fails afterwards", typed("meter-proof-after", "OL"), "gate.reading-stop"),
        way(
            "proof waived",
            and(without("meter-proof-after"), waived("meter-proof-after", "Ada", WORDY)),
            "gate.reading-missing"),
        way(
            "measured after the last proof",
            and(late, finished("heater-insulation")),
            "power.meter-not-proven-after"),
        way(
            "measured with a meter that nobody proved",
            and(other, late, finished("heater-insulation")),
            "power.meter-not-proven-before"));
  }

  private static List<Arguments> waysOfChanges() {
    return List.of(
        way(
            "good, then measured as a stop",
            add(by("Ada Test", "heater-insulation", reads("lead-a-ball", "420k"))),
            "gate.reading-stop"),
        way(
            "measured again, nobody looked",
            add(by("Ada Test", "heater-insulation", reads("lead-a-ball", "OL"))),
            "doubt.reading-changed"),
        way(
            "a reading struck",
            add(
                by(
                    "Ada Test",
                    "heater-insulation",
                    new Corrected(entryOf("lead-a-ball"), "typed in error", Optional.empty()))),
            "gate.reading-missing"),
        way(
            "another resistor",
            and(
                entries -> {
                  List<JournalEntry> all = new ArrayList<>(entries);
                  all.add(1, by("Ada Test", "get-parts", part("reel 2")));
                  return all;
                },
                add(by("Ada Test", "get-parts", part("reel 3")))),
            "doubt.part-changed"));
  }

  private static PartRecorded part(String lot) {
    return new PartRecorded("resistor 100 Ω", lot, OptionalDouble.empty(), "EUR");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void everyWayRoundTheGateIsShutAndSaysWhy(String name, Way way, String reason) {
    List<JournalEntry> entries = way.apply(SampleBuild.complete(CHECKLIST));
    Situation situation = SampleBuild.after(entries);
    assertThat(power(situation)).contains(reason);
    Step first = CHECKLIST.step("first-power").orElseThrow();
    assertThat(ids(Gate.toBegin(CHECKLIST, first, situation).reasons()))
        .contains("gate.closed.heater-power");
    assertThat(ids(Contradictions.of(CHECKLIST, situation)))
        .contains("contradiction.gate.heater-power", reason);
  }

  @Test
  void theSoundBuildThatTheWaysBeginWithIsOpenAndContradictsNothing() {
    Situation situation = SampleBuild.after(SampleBuild.complete(CHECKLIST));
    assertThat(power(situation)).isEmpty();
    assertThat(Contradictions.of(CHECKLIST, situation)).isEmpty();
  }

  @Test
  void aDoubtfulReadingIsWaivedByNameAndReason() {
    List<JournalEntry> entries =
        and(typed("lead-a-ball", "5M"), waived("lead-a-ball", "Ada Test", WORDY))
            .apply(SampleBuild.complete(CHECKLIST));
    assertThat(power(SampleBuild.after(entries))).isEmpty();
  }

  @Test
  void inAClassroomTheTeacherWaives() {
    List<JournalEntry> entries =
        and(
                GateEvidenceTest::classroom,
                typed("lead-a-ball", "5M"),
                waived("lead-a-ball", "mr teach ", WORDY))
            .apply(SampleBuild.complete(CHECKLIST));
    assertThat(power(SampleBuild.after(entries))).isEmpty();
  }

  @Test
  void changesThatAreFollowedThroughOpenTheGateAgain() {
    List<JournalEntry> entries =
        and(
                add(by("Ada Test", "heater-insulation", reads("lead-a-ball", "> 20M"))),
                finished("heater-insulation"),
                add(by("Ada Test", "joined-check", reads("meter-proof-after", "1.01"))),
                finished("joined-check"))
            .apply(SampleBuild.complete(CHECKLIST));
    assertThat(power(SampleBuild.after(entries))).isEmpty();
  }

  // ---- the design ----

  private static Situation with(List<JournalEntry> entries, DesignSheet... sheets) {
    List<DatedSheet> dated = new ArrayList<>();
    for (DesignSheet sheet : sheets) {
      dated.add(new DatedSheet(SampleBuild.BEGIN.plusDays(dated.size()), sheet));
    }
    return new Situation(InstrumentState.replay(entries), dated, SampleBuild.LATER);
  }

  @Test
  void aSheetThatStopsKeepsTheGateShutWhateverWasAnswered() {
    Situation situation = with(SampleBuild.complete(CHECKLIST), STOPS);
    assertThat(power(situation))
        .contains("power.design-stops", "design.ball-too-hot-made-up", "gate.step-needed");
    assertThat(ids(Contradictions.of(CHECKLIST, situation)))
        .startsWith("contradiction.heated-over-design", "power.design-stops");
    Step design = CHECKLIST.step("choose-design").orElseThrow();
    assertThat(ids(Gate.toFinish(CHECKLIST, design, situation).reasons()))
        .contains("gate.answer-stops");
  }

  @Test
  void whatTheDesignStopsIsSaidOnceADesignWasChosen() {
    List<JournalEntry> unchosen = SampleBuild.complete(CHECKLIST);
    assertThat(Gate.designStops(with(unchosen, STOPS))).as("no design on record").isEmpty();
    List<JournalEntry> entries = chosen(1, SampleBuild.BEGIN);
    assertThat(ids(Gate.designStops(with(entries, STOPS)))).startsWith("power.design-stops");
    assertThat(Gate.designStops(with(entries, GOOD))).isEmpty();
  }

  /** A recording, a table or a calibration can only come from a heated pair. */
  @ParameterizedTest
  @EnumSource(FileRole.class)
  void aFileOfAHeatedPairContradictsADesignThatStops(FileRole role) {
    List<JournalEntry> entries = new ArrayList<>();
    entries.add(design("d1", SampleBuild.BEGIN));
    entries.add(unstepped(new FileAdded(role, "runs/one.csv", "0")));
    boolean heated =
        List.of(FileRole.RUN, FileRole.RUNS_TABLE, FileRole.CHECK_TABLE).contains(role);
    List<Problem> told = Contradictions.of(CHECKLIST, with(entries, STOPS));
    assertThat(ids(told).contains("contradiction.heated-over-design")).isEqualTo(heated);
    if (heated) {
      assertThat(told.get(0).found()).isEqualTo("runs/one.csv");
    }
  }

  @Test
  void aCalibrationContradictsADesignThatStops() {
    List<JournalEntry> entries = new ArrayList<>();
    entries.add(design("d1", SampleBuild.BEGIN));
    entries.add(unstepped(new CalibrationMade("calibrations/one.json", "0")));
    List<Problem> told = Contradictions.of(CHECKLIST, with(entries, STOPS));
    assertThat(told.get(0).id()).isEqualTo("contradiction.heated-over-design");
    assertThat(told.get(0).found()).isEqualTo("calibrations/one.json");
    assertThat(Contradictions.of(CHECKLIST, with(entries, GOOD))).isEmpty();
  }

  private static JournalEntry unstepped(Event event) {
    return new JournalEntry(
        "u", SampleBuild.BEGIN.plusDays(1), "Ada Test", Optional.empty(), event);
  }

  @Test
  void withoutADesignTheGateIsShut() {
    Situation situation = with(SampleBuild.complete(CHECKLIST));
    assertThat(power(situation)).contains("power.no-design");
    assertThat(ids(Contradictions.of(CHECKLIST, situation))).contains("power.no-design");
  }

  @Test
  void aDesignThatCannotBeWorkedOutIsNotReplacedByTheOneBefore() {
    List<JournalEntry> entries = chosen(1, SampleBuild.BEGIN);
    entries.add(design("d2", SampleBuild.LATER.minusDays(1)));
    assertThat(power(with(entries, GOOD))).contains("power.design-unreadable");
  }

  private static JournalEntry design(String id, OffsetDateTime at) {
    return new JournalEntry(id, at, "Ada Test", Optional.empty(), new DesignChosen("{}", "why"));
  }

  /** The sound build with a design chosen at a place of its journal. */
  private static List<JournalEntry> chosen(int place, OffsetDateTime at) {
    List<JournalEntry> entries = new ArrayList<>(SampleBuild.complete(CHECKLIST));
    entries.add(Math.min(place, entries.size()), design("d1", at));
    return entries;
  }

  @ParameterizedTest
  @ValueSource(longs = {59, -59})
  void aDesignChangedLaterShutsTheGateAlsoWithTheClockSetBack(long days) {
    List<JournalEntry> entries = chosen(1, SampleBuild.BEGIN);
    OffsetDateTime at = SampleBuild.BEGIN.plusDays(days);
    entries.add(design("d2", at));
    DesignSheet other = SampleBuild.sheet(Map.of(OutcomeId.SUPPLY_HIGH, Interval.exact(5.2)));
    Situation situation =
        new Situation(
            InstrumentState.replay(entries),
            List.of(new DatedSheet(SampleBuild.BEGIN, GOOD), new DatedSheet(at, other)),
            SampleBuild.LATER);
    assertThat(power(situation)).contains("doubt.design-changed");
  }

  @Test
  void stepsFinishedBeforeThereWasADesignAreDoubtful() {
    List<JournalEntry> entries = chosen(Integer.MAX_VALUE, SampleBuild.LATER.minusHours(1));
    assertThat(power(with(entries, GOOD))).contains("doubt.no-design-then");
  }

  /** The first known failure: a classroom, each reading waived with "x", a design that stops. */
  @Test
  void aClassThatWaivesEverythingWithXUnderADesignThatStopsHeatsNothing() {
    List<JournalEntry> entries = new ArrayList<>();
    for (JournalEntry e : classroom(SampleBuild.complete(CHECKLIST))) {
      entries.add(
          e.event() instanceof ReadingEntered r
              ? new JournalEntry(e.id(), e.at(), "x", e.step(), new Waived(r.reading(), "x"))
              : e);
    }
    Situation situation = with(entries, STOPS);
    assertThat(power(situation)).contains("power.design-stops", "gate.reading-missing");
    assertThat(ids(Contradictions.of(CHECKLIST, situation)))
        .contains(
            "contradiction.heated-over-design",
            "contradiction.gate.heater-power",
            "contradiction.finished",
            "waiver.no-name",
            "waiver.no-reason",
            "waiver.not-taken",
            "waiver.not-the-teacher");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"x", "Because", "aaaaa aaaaaaa", "1234567890 12", "ok ok ok ok ok ok", " "})
  void noReason(String reason) {
    assertThat(Waivers.isReason(reason)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {WORDY, "Rehearsal only, no power", "nur zur Probe, ohne Strom"})
  void aReason(String reason) {
    assertThat(Waivers.isReason(reason)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "x", "7", "J."})
  void noName(String name) {
    assertThat(Waivers.isName(name)).isFalse();
  }

  private static List<String> power(Situation situation) {
    return ids(Gate.check(CHECKLIST, Gate.HEATER_POWER, situation).reasons());
  }

  private static List<String> ids(List<Problem> problems) {
    return problems.stream().map(Problem::id).distinct().toList();
  }
}
