package faintwind.calibration.speed.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UsualStepTest {

  @Test
  void isTheMedianOfTheLastStepsWhetherAlikeOrNot() {
    Random random = new Random(5);
    UsualStep usual = new UsualStep();
    List<Double> steps = new ArrayList<>();
    for (int i = 1; i <= 4000; i++) {
      boolean alike = i / 97 % 2 == 0 && i > 1;
      double step_s = alike ? steps.get(i - 2) : 1 + random.nextInt(3);
      steps.add(step_s);
      usual.add(step_s);
      if (i <= UsualStep.LOOK_BACK || i % UsualStep.LOOK_BACK == 0) {
        List<Double> last = steps.subList(Math.max(0, i - UsualStep.LOOK_BACK), i);
        assertThat(usual.median_s()).as("after step " + i).isEqualTo(median(last));
      }
    }
  }

  private static double median(List<Double> steps) {
    List<Double> sorted = steps.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }
}
