package faintwind.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.plan.ArmSetup;
import faintwind.calibration.plan.DataWay;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlanWish;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Planner;
import faintwind.calibration.plan.Response;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.physics.Interval;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlanFileTest {

  private static PlannedSession planned() {
    PlanRequest request =
        new PlanRequest(
            new ArmSetup(
                List.of(Uncertain.of(0.6, 0.001)),
                new DataWay(DataWay.Kind.CABLE, OptionalDouble.of(120), OptionalDouble.of(20_000))),
            new PlanWish(
                0.1,
                2.0,
                PlanWish.Beats.usual(),
                PlanWish.Directions.BOTH_WAYS,
                new PlanWish.Time(
                    OptionalDouble.of(20_000), Optional.of(new PlanWish.Lesson(2700, 3)))),
            new Response(Interval.share(500, 0.1), Interval.share(160, 0.1), 32, 0.01, 1),
            OptionalDouble.of(0.005),
            0.003);
    return Planner.plan(request, () -> false)
        .map(choice -> new PlannedSession(request, choice))
        .fold(
            (value, notes) -> value,
            problems -> {
              throw new AssertionError(problems.toString());
            });
  }

  @Test
  void whatIsWrittenIsReadBackTheSame() throws IOException {
    String text = PlanFile.text(planned());
    Checked<PlannedSession> read = PlanFile.parse(text, "plan.json");
    assertThat(read.problems()).isEmpty();
    String again = read.fold((value, notes) -> PlanFile.text(value), problems -> "");
    assertThat(again).isEqualTo(text);
  }
}
