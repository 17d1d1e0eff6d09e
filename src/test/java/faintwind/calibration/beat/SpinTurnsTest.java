package faintwind.calibration.beat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: 60 beats a minute, four a turn: a turn every four seconds. */
class SpinTurnsTest {
  private static final PlannedSpin PLANNED =
      new PlannedSpin(3, Uncertain.of(0.5, 0.001), new Beat(60, 4), 20, Direction.CW, 0.01);

  private static SpinTurns value(Checked<SpinTurns> checked) {
    return ((Checked.Ok<SpinTurns>) checked).value();
  }

  private static List<String> problems(double turns, double time_s) {
    return SpinTurns.typed(turns, time_s, PLANNED, 100).problems().stream()
        .map(Problem::id)
        .toList();
  }

  /** 101 s hold 25 whole turns, 100 s of them; known to 3 %. */
  @Test
  void theBeatStandsForTheCount() {
    SpinTurns turns = SpinTurns.byBeat(PLANNED, 101);
    assertThat(turns.turns()).isEqualTo(25);
    assertThat(turns.time_s().value()).isEqualTo(100);
    assertThat(turns.time_s().u()).hasValue(3);
    assertThat(turns.first_s()).isEmpty();
    assertThat(turns.how()).isEqualTo(SpinTurns.How.BY_BEAT);
    assertThat(turns.relative_u()).isCloseTo(0.03, within(1e-12));
    assertThat(SpinTurns.byBeat(PLANNED, 2).turns()).isEqualTo(1);
  }

  /** 2π · 0.5 · 25 / 100 = 0.7854. */
  @Test
  void speedIsTheWayOverTheTime() {
    assertThat(SpinTurns.byBeat(PLANNED, 101).speed_m_s(0.5)).isCloseTo(0.7854, within(1e-4));
  }

  @Test
  void typedTurnsAreKnownToHalfASecond() {
    SpinTurns turns = value(SpinTurns.typed(24, 96, PLANNED, 100));
    assertThat(turns.turns()).isEqualTo(24);
    assertThat(turns.time_s()).isEqualTo(Uncertain.of(96, 0.5));
    assertThat(turns.how()).isEqualTo(SpinTurns.How.TYPED);
    assertThat(turns.relative_u()).isCloseTo(0.5 / 96, within(1e-12));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThat(problems(0, 96)).containsExactly("beat.turns-too-few");
    assertThat(problems(23.5, 96)).containsExactly("beat.turns-not-whole");
    assertThat(problems(24, 0)).containsExactly("beat.time-not-positive");
    assertThat(problems(24, 102.1)).containsExactly("beat.time-too-long");
    assertThat(problems(0, 0)).hasSize(2);
    assertThat(problems(25, 102)).isEmpty();
  }

  /** 24 turns in 96 s are the plan; 12 % more or less is asked about. */
  @Test
  void aCountFarFromThePlanIsNoted() {
    assertThat(notes(24, 96)).isEmpty();
    assertThat(notes(24, 96 / 1.11)).isEmpty();
    assertThat(notes(24, 96 / 1.13)).containsExactly("beat.off-the-plan 16.95 [15]");
    assertThat(notes(20, 96)).containsExactly("beat.off-the-plan 12.5 [15]");
  }

  private static List<String> notes(double turns, double time_s) {
    return SpinTurns.typed(turns, time_s, PLANNED, 100)
        .fold((value, notes) -> notes, found -> found)
        .stream()
        .map(p -> p.id() + " " + p.found() + " " + p.details())
        .toList();
  }
}
