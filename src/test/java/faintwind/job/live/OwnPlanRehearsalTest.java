package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.plan.Beat;
import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.calibration.plan.PlannedStep;
import faintwind.calibration.plan.PlannedStep.Kind;
import faintwind.calibration.plan.Promise;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualStage.Heater;
import faintwind.job.turntable.JoinedTable;
import faintwind.job.turntable.ReadRuns;
import faintwind.message.Checked;
import faintwind.physics.Interval;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A builder's own plan in two lessons, rehearsed as fast as it can. */
class OwnPlanRehearsalTest {
  private static final long SEED = 3;
  private static final Response QUICK =
      new Response(Interval.exact(240), Interval.exact(85), 20, 0.02, 1);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private static Plan twoLessons() {
    List<PlannedStep> steps = new ArrayList<>();
    for (int lesson = 1; lesson <= 2; lesson++) {
      PlannedSpin spin =
          new PlannedSpin(
              lesson, Uncertain.of(0.5, 0.001), new Beat(60, 4), 20, Direction.CW, 0.01);
      steps.add(step(Kind.STILL, lesson, Optional.empty()));
      steps.add(step(Kind.SPIN, lesson, Optional.of(spin)));
      steps.add(step(Kind.REST, lesson, Optional.empty()));
    }
    return new Plan(Plan.Form.SEPARATE, steps, new Promise(0.02, List.of(), List.of()));
  }

  private static PlannedStep step(Kind kind, int lesson, Optional<PlannedSpin> spin) {
    return new PlannedStep(kind, 0, 100, lesson, lesson, spin);
  }

  private LiveSession rehearse(int lesson) throws IOException {
    double fastest = Double.POSITIVE_INFINITY;
    RehearsalPlan.Own own = RehearsalPlan.of(twoLessons().lesson(lesson), QUICK);
    Rehearsal rehearsal = new Rehearsal(own.build(), SEED, fastest);
    rehearsal.blow(0, Heater.ON);
    rehearsal.settle();
    LiveSession session =
        new LiveSession(
            rehearsal.input(),
            Files.createDirectories(folder.resolve("live-" + lesson)),
            own.preparation(),
            Optional.of(new RehearsalHand(rehearsal, RehearsalHand.Lead.GUIDE, SEED, fastest)),
            () -> 0);
    session.note("a door, \"the back one\", stood open");
    session.run();
    return session;
  }

  private static List<Run> runs(LiveSession session) throws IOException {
    return ok(ReadRuns.read(session.table())).runs();
  }

  private static <T> T ok(Checked<T> checked) {
    return checked.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  @Test
  void lessonsAreGuidedOneByOneAndFittedTogether() throws IOException {
    LiveSession first = rehearse(1);
    LiveSession second = rehearse(2);
    assertThat(first.spins()).hasSize(1);
    assertThat(second.spins()).hasSize(1);
    JoinedTable.join(first.table(), second.table(), 2);
    List<Run> together = runs(second);
    assertThat(together)
        .extracting(Run::name)
        .containsExactly("still", "spin1", "lesson2-still", "lesson2-spin2");
    assertThat(together)
        .extracting(Run::file)
        .containsExactly("live-1-session.csv", "live-1-session.csv", "session.csv", "session.csv");
    assertThat(together.get(0).conditions().note()).contains("a door, \"the back one\"");
  }

  @Test
  void madeUpPairSettlesAsQuicklyAsTheOwnOneShould() {
    RehearsalPlan.Own own = RehearsalPlan.of(twoLessons(), QUICK);
    double usual = RehearsalPlan.build().heated().capacity_J_K();
    assertThat(own.build().heated().capacity_J_K()).isCloseTo(usual / 2, within(1e-9));
  }
}
