package faintwind.calibration.fit.pooling;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualClass;
import faintwind.calibration.virtual.VirtualClass.Fault;
import faintwind.calibration.virtual.VirtualPlan;
import faintwind.calibration.virtual.VirtualRehearsal;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** One made-up class, with a lesson on the arm each. */
@Tag("long")
class ClassFitTest {
  private static final long SEED = 81_005;

  private static List<FitResult> alone(int count, Fault ofTheFourth) {
    return alone(count, ofTheFourth, 150);
  }

  private static List<FitResult> alone(int count, Fault ofTheFourth, double rest_s) {
    List<VirtualBuild> pairs = VirtualClass.pairs(SEED, count);
    List<FitResult> fits = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      Fault fault = i == 3 ? ofTheFourth : Fault.NONE;
      RunSet set =
          VirtualRehearsal.calibration(fault.in(pairs.get(i)), lesson(i, rest_s), SEED * 10 + i)
              .runSet();
      fits.add(
          FitToRuns.fit(fault.in(set), () -> false)
              .fold(
                  (fit, notes) -> fit,
                  problems -> {
                    throw new AssertionError(problems.toString());
                  }));
    }
    return fits;
  }

  private static VirtualPlan lesson(int pair, double rest_s) {
    VirtualPlan usual = VirtualClass.lesson(pair);
    return new VirtualPlan(usual.spins(), usual.way(), usual.zero_s(), usual.warmUp_s(), rest_s);
  }

  private static double u(FitResult fit, String name) {
    SessionShown shown = fit.shown();
    int at = shown.names().indexOf(name);
    return Math.sqrt(shown.covariance().at(at, at));
  }

  private static double value(FitResult fit, String name) {
    return fit.shown().estimates().get(fit.shown().names().indexOf(name));
  }

  @Test
  void togetherEachKnowsMoreAndKeepsItsOwn() {
    List<FitResult> alone = alone(4, Fault.NONE);
    List<ClassMember<FitResult>> together = ClassFit.of(alone, () -> false).members();
    // a share that comes out near nothing is stated narrower alone than it is known
    assertThat(together.stream().mapToDouble(each -> u(each.fit(), "carried_share")).sum())
        .isLessThan(alone.stream().mapToDouble(fit -> u(fit, "carried_share")).sum());
    for (int i = 0; i < alone.size(); i++) {
      FitResult fit = together.get(i).fit();
      assertThat(together.get(i).standsOut()).isEmpty();
      assertThat(u(fit, "tilt")).isLessThan(0.9 * u(alone.get(i), "tilt"));
      assertThat(value(fit, "heating")).isCloseTo(value(alone.get(i), "heating"), within(fit));
    }
  }

  private static Offset<Double> within(FitResult fit) {
    return Offset.offset(5 * u(fit, "heating"));
  }

  /** What nobody's recordings show is not known better because several assume it. */
  @Test
  void lessonsThatStopTheLoggerEarlyDoNotAgreeOnTheCarriedAirForNothing() {
    List<FitResult> alone = alone(3, Fault.NONE, 20);
    double truth = VirtualClass.pairs(SEED, 1).get(0).arm().carried().share();
    ClassFit.of(alone, () -> false)
        .members()
        .forEach(
            each -> {
              double u = u(each.fit(), "carried_share");
              assertThat(u).isGreaterThan(0.003);
              assertThat(value(each.fit(), "carried_share"))
                  .isCloseTo(truth, Offset.offset(2.5 * u));
            });
  }

  @Test
  void whoHasOtherRadiiOnPaperIsNamedAndKeepsItsOwnFit() {
    List<FitResult> alone = alone(6, Fault.RADIUS);
    List<ClassMember<FitResult>> together = ClassFit.of(alone, () -> false).members();
    assertThat(together.get(3).standsOut()).isPresent();
    assertThat(together.get(3).fit()).isSameAs(alone.get(3));
    assertThat(List.of(0, 1, 2, 4, 5)).allMatch(i -> together.get(i).standsOut().isEmpty());
  }
}
