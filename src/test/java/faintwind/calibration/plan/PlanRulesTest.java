package faintwind.calibration.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.setup.CarriedKnown;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a plan that can be, and how hard an arm may pull at balls and wires. */
class PlanRulesTest {
  private static final Uncertain R600 = Uncertain.of(0.6, 0.001);

  /** v²/r = 15 m/s² by hand: a turn of 600 mm at 3 m/s, of 150 mm at 1.5 m/s. */
  @ParameterizedTest(name = "at {0} m no faster than {1} m/s")
  @CsvSource({"0.6, 3", "0.15, 1.5", "0.41666667, 2.5"})
  void ballsAndWiresAreNotPulledAtHarderThanFifteen(double radius_m, double fastest_m_s) {
    assertThat(Candidates.fastest_m_s(radius_m)).isCloseTo(fastest_m_s, within(1e-6));
  }

  /** 1800 s of film: a person types 900 readings, one more is said. */
  @Test
  void moreThanNineHundredReadingsFromAFilmAreSaid() {
    assertThat(said(DataWay.Kind.FILMED_METER, 1800.0 / 900, 0.1, 2.5)).isEmpty();
    assertThat(said(DataWay.Kind.FILMED_METER, 1800.0 / 901, 0.1, 2.5))
        .containsExactly("plan.many-readings 901");
    assertThat(said(DataWay.Kind.WIRELESS, 1, 0.1, 2.5)).as("not filmed").isEmpty();
  }

  /** A wish is 0.1 to 2.5 m/s; 24 marks at 40 a minute are 0.105 m/s, the pull ends at 3 m/s. */
  @Test
  void aRangeThatIsThirtyPerCentShortIsSaid() {
    assertThat(said(DataWay.Kind.WIRELESS, 1, 0.129, 1.93)).isEmpty();
    assertThat(said(DataWay.Kind.WIRELESS, 1, 0.131, 2.5))
        .containsExactly("plan.slow-cut.time 0.13");
    assertThat(said(DataWay.Kind.WIRELESS, 1, 0.1, 1.91))
        .containsExactly("plan.fast-cut.time 1.91");
  }

  private static List<String> said(
      DataWay.Kind way, double step_s, double slowest_m_s, double fastest_m_s) {
    ArmSetup arm = new ArmSetup(List.of(R600), DataWay.of(way));
    PlanWish wish =
        new PlanWish(
            0.1, 2.5, PlanWish.Beats.usual(), PlanWish.Directions.BOTH_WAYS, PlanWish.Time.free());
    Response response =
        new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, step_s);
    PlanRequest request = PlanRequest.of(arm, wish, response);
    Candidates candidates =
        new Candidates(request, StudySession.fit(0.003, CarriedKnown.byRecordings()));
    Plan plan = plan(slowest_m_s, fastest_m_s);
    List<String> said = new ArrayList<>();
    for (Problem note :
        PlanRules.notes(request, candidates, new PlanChoice(plan, Optional.of(plan)))) {
      said.add(note.id() + " " + note.found());
    }
    return said;
  }

  /** Half an hour: two spins of a quarter of an hour. A thousand beats a turn give any speed. */
  private static Plan plan(double slowest_m_s, double fastest_m_s) {
    List<PlannedStep> steps = new ArrayList<>();
    for (double speed_m_s : new double[] {slowest_m_s, fastest_m_s}) {
      int perMinute = (int) Math.round(speed_m_s / (2 * Math.PI * R600.value()) * 60_000);
      PlannedSpin spin =
          new PlannedSpin(1, R600, new Beat(perMinute, 1000), 10, Direction.CW, 0.01);
      steps.add(
          new PlannedStep(
              PlannedStep.Kind.SPIN, 900.0 * steps.size(), 900, 1, 1, Optional.of(spin)));
    }
    return new Plan(Plan.Form.STAIRCASE, steps, new Promise(0.01, List.of(), List.of()));
  }
}
