package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.StepClock.Stand;
import faintwind.record.Event;
import faintwind.record.Event.ClockConfirmed;
import faintwind.record.Event.ClockStarted;
import faintwind.record.Event.StepOpened;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepClockTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-28T23:00:00+01:00");

  @Test
  void itRunsOnWhileNobodyLooks() {
    StepClock clock = new StepClock(START, 3600, START.plusMinutes(40));
    assertThat(clock.stand()).isEqualTo(Stand.RUNNING);
    assertThat(clock.left_s()).isEqualTo(1200);
    assertThat(clock.share()).isCloseTo(2.0 / 3, within(1e-12));
  }

  @Test
  void itEndsOnTheSecondAndSaysHowLate() {
    assertThat(new StepClock(START, 3600, START.plusMinutes(60)).stand()).isEqualTo(Stand.ENDED);
    StepClock late = new StepClock(START, 3600, START.plusHours(3));
    assertThat(late.late_s()).isEqualTo(7200);
    assertThat(late.left_s()).isZero();
  }

  @Test
  void theChangeToSummerTimeDoesNotShortenTheCure() {
    // 24 h after 23:00 winter time is midnight by the summer clock of the next evening
    OffsetDateTime wall = OffsetDateTime.parse("2026-03-29T23:00:00+02:00");
    StepClock clock = new StepClock(START, 86_400, wall);
    assertThat(clock.stand()).isEqualTo(Stand.RUNNING);
    assertThat(clock.left_s()).isEqualTo(3600);
  }

  @Test
  void aComputerClockSetBackEndsNothing() {
    StepClock clock = new StepClock(START, 3600, START.minusDays(400));
    assertThat(clock.stand()).isEqualTo(Stand.TIME_SET_BACK);
    assertThat(clock.left_s()).isEqualTo(3600);
    assertThat(clock.late_s()).isZero();
  }

  @Test
  void aNegativeDurationIsRefused() {
    assertThatThrownBy(() -> new StepClock(START, -1, START))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A clock of a day, with whatever else the journal says, as it stands at a time. */
  private static StepClock inJournal(OffsetDateTime now, JournalEntry... others) {
    List<JournalEntry> entries = new ArrayList<>();
    entries.add(at("c", START, new ClockStarted("coat-cure", 86_400)));
    entries.addAll(List.of(others));
    Situation situation = new Situation(InstrumentState.replay(entries), List.of(), now);
    Step step = ShippedChecklist.standard().step("coat-parts").orElseThrow();
    return Verdicts.clock(step, situation).orElseThrow();
  }

  private static JournalEntry at(String id, OffsetDateTime when, Event event) {
    return new JournalEntry(id, when, "Ada Test", Optional.of("coat-parts"), event);
  }

  @Test
  void aRestartChangesNothing() {
    StepClock clock = inJournal(START.plusHours(30));
    assertThat(clock.stand()).isEqualTo(Stand.ENDED);
    assertThat(inJournal(START.plusHours(23)).stand()).isEqualTo(Stand.RUNNING);
  }

  @Test
  void aYearForwardEndsNothingUntilSomebodySaysThatTheDateIsRight() {
    OffsetDateTime wrong = START.plusYears(1);
    assertThat(inJournal(wrong).stand()).isEqualTo(Stand.TIME_LEAPT);
    JournalEntry opened = at("o", wrong.minusMinutes(1), new StepOpened());
    assertThat(inJournal(wrong, opened).stand())
        .as("looking is no proof")
        .isEqualTo(Stand.TIME_LEAPT);
    JournalEntry early = at("e", START.plusHours(1), new ClockConfirmed("coat-cure"));
    assertThat(inJournal(wrong, early).stand()).isEqualTo(Stand.TIME_LEAPT);
    JournalEntry confirmed = at("y", wrong, new ClockConfirmed("coat-cure"));
    assertThat(inJournal(wrong, confirmed).stand()).isEqualTo(Stand.ENDED);
  }

  @Test
  void aConfirmationOfAnotherClockProvesNothing() {
    OffsetDateTime wrong = START.plusYears(1);
    JournalEntry other = at("z", wrong, new ClockConfirmed("epoxy-cure"));
    assertThat(inJournal(wrong, other).stand()).isEqualTo(Stand.TIME_LEAPT);
  }

  @Test
  void whatWasEnteredAfterTheEndShowsThatTimeWentBy() {
    JournalEntry note = at("n", START.plusDays(2), new StepOpened());
    assertThat(inJournal(START.plusYears(1), note).stand()).isEqualTo(Stand.ENDED);
  }

  @Test
  void anHourBackIsNeverNegativeAndNeverDone() {
    StepClock clock = inJournal(START.minusHours(1));
    assertThat(clock.stand()).isEqualTo(Stand.TIME_SET_BACK);
    assertThat(clock.left_s()).isEqualTo(86_400);
    assertThat(clock.share()).isZero();
    assertThat(clock.late_s()).isZero();
  }

  /** Noted at 23:00, then the clock was set back an hour, started at 22:05, and set right again. */
  @Test
  void aClockStartedWhileTheTimeWasAnHourBackDoesNotEndAnHourEarly() {
    JournalEntry before = at("b", START, new StepOpened());
    JournalEntry started = at("s", START.minusMinutes(55), new ClockStarted("coat-cure", 3600));
    Situation situation =
        new Situation(
            InstrumentState.replay(List.of(before, started)), List.of(), START.plusMinutes(40));
    Step step = ShippedChecklist.standard().step("coat-parts").orElseThrow();
    StepClock clock = Verdicts.clock(step, situation).orElseThrow();
    assertThat(clock.stand()).isEqualTo(Stand.RUNNING);
    assertThat(clock.left_s()).isEqualTo(1200);
  }

  @Test
  void anyTimeWhateverGivesAShareBetweenNoneAndAll() {
    for (long hours = -10_000; hours < 10_000; hours += 7) {
      StepClock clock = inJournal(START.plusHours(hours));
      assertThat(clock.left_s()).isBetween(0.0, 86_400.0);
      assertThat(clock.share()).isBetween(0.0, 1.0);
      assertThat(clock.late_s()).isNotNegative();
      if (hours < 24) {
        assertThat(clock.stand()).isNotEqualTo(Stand.ENDED);
      }
    }
  }
}
