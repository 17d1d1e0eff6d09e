package faintwind.calibration.fit.pooling;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.FaultyRuns;
import faintwind.calibration.fit.judging.SampleRuns;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.KnownBefore;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Problem;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bench-b carries 3.6 % round (its truth); its recordings show it to some 0.6 %. */
class CarriedBeliefTest {
  private static final RunSet RUNS = SampleRuns.of("bench-b");

  private static Optional<String> contradicted(RunSet set) {
    FitResult fit = SampleRuns.value(FitToRuns.fit(set, () -> false));
    return CarriedBelief.contradicted(fit, set, () -> false).map(Problem::id);
  }

  private static RunSet stated(double share, double u) {
    return FaultyRuns.each(RUNS, r -> r.kind() == RunKind.SPIN ? FaultyRuns.swirl(r, share, u) : r);
  }

  private static RunSet known(double share) {
    ArmKnown arm =
        new ArmKnown(
            Uncertain.of(share, 0.003),
            Uncertain.of(25, 5),
            Uncertain.of(25, 5),
            Uncertain.of(2, 0.5),
            Optional.empty());
    return new RunSet(
        RUNS.runs(), RUNS.chain(), new KnownBefore(Optional.empty(), Optional.of(arm)));
  }

  @Test
  void aShareThatTheRecordingsShowTooIsLeftStanding() {
    assertThat(contradicted(stated(0.036, 0.0005))).isEmpty();
    assertThat(contradicted(known(0.036))).isEmpty();
    assertThat(contradicted(RUNS)).isEmpty();
  }

  @Test
  void aShareFromBesideTheArmIsContradicted() {
    assertThat(contradicted(stated(0.1, 0.005))).contains("fit.carried-said.stated");
  }

  /** 3.6 written as a share where per cent are expected. */
  @Test
  void aShareForPerCentIsContradicted() {
    assertThat(contradicted(stated(0.00036, 0.0001))).contains("fit.carried-said.stated");
  }

  @Test
  void theRecordOfAnotherArmIsContradicted() {
    assertThat(contradicted(known(0.1))).contains("fit.carried-said.arm");
  }
}
