package faintwind.job.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.job.JobWatch;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FitStepsTest {
  private final List<Double> shares = new ArrayList<>();

  private final JobWatch watch =
      new JobWatch() {
        @Override
        public void progress(String stage, long done, long total) {}

        @Override
        public void share(double share) {
          shares.add(share);
        }

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  private double last() {
    return shares.get(shares.size() - 1);
  }

  private static void steps(FitSteps fit, int count) {
    for (int i = 0; i < count; i++) {
      fit.cancelled();
    }
  }

  @Test
  void shareRisesFromTheFirstStepToTheLastRefit() {
    FitSteps fit = new FitSteps(watch, 500);
    fit.progress("read", 0, 1);
    fit.cancelled();
    assertThat(shares).isEmpty();
    fit.progress("fit", 0, 1);
    steps(fit, 240);
    double half = last();
    assertThat(half).isBetween(0.13, 0.23);
    steps(fit, 240);
    // the last twentieth of the fit's share is kept for fits that take longer
    assertThat(last()).isCloseTo(0.95 * 2 * half, within(0.005));
    fit.progress("refits", 250, 500);
    assertThat(last()).isBetween(0.63, 0.73);
    fit.progress("refits", 500, 500);
    assertThat(last()).isEqualTo(1);
    assertThat(shares).isSorted();
  }

  @Test
  void fitThatTakesLongIsNotCalledOver() {
    FitSteps fit = new FitSteps(watch, 0);
    fit.progress("fit", 0, 1);
    steps(fit, 5000);
    assertThat(last()).isBetween(0.98, 0.9999);
    assertThat(shares).isSorted();
  }
}
