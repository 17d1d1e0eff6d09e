package faintwind.calibration.plan;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.fit.foretelling.ExpectedUncertainty;
import faintwind.calibration.fit.foretelling.Knowledge;
import faintwind.calibration.fit.foretelling.PlannedFit;
import faintwind.calibration.fit.setup.CarriedKnown;
import faintwind.calibration.run.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The exchange against trying every choice. */
class ExchangeTest {

  private static double least(
      int many, int some, List<Integer> begun, ToDoubleFunction<List<Integer>> cost) {
    if (begun.size() == some) {
      return cost.applyAsDouble(begun);
    }
    double least = Double.POSITIVE_INFINITY;
    int from = begun.isEmpty() ? 0 : begun.get(begun.size() - 1) + 1;
    for (int i = from; i < many; i++) {
      List<Integer> next = new ArrayList<>(begun);
      next.add(i);
      least = Math.min(least, least(many, some, next, cost));
    }
    return least;
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5})
  void choiceOfSpeedsIsAsGoodAsTryingAll(int some) {
    PlannedFit fit = StudySession.fit(0.003, CarriedKnown.byRecordings());
    List<Double> speeds = Candidates.spaced(0.1, 3, 8);
    List<Knowledge> each = new ArrayList<>();
    for (double speed : speeds) {
      each.add(aloneAt(speed, fit));
    }
    List<Double> looks = Candidates.spaced(0.1, 3, 7);
    ToDoubleFunction<List<Integer>> cost =
        choice -> {
          Knowledge sum = fit.beforehand();
          for (int i : choice) {
            sum = sum.plus(each.get(i));
          }
          ExpectedUncertainty expected = fit.uncertainty(sum);
          return looks.stream().mapToDouble(expected::u).average().orElseThrow();
        };
    double found = cost.applyAsDouble(Exchange.choose(8, some, cost));
    assertThat(found).isLessThanOrEqualTo(least(8, some, List.of(), cost) * 1.005);
  }

  private static Knowledge aloneAt(double speed_m_s, PlannedFit fit) {
    StudySession one = StudySession.usual().withSpeeds(speed_m_s, speed_m_s, 2).withRest(150);
    List<List<Run>> parts = PlannedRuns.parts(one.spinsOnly(fit).subList(0, 2), fit);
    return fit.of(parts.get(0));
  }

  @Test
  void separableCostIsFoundExactly() {
    System.out.println("seed 11");
    Random random = new Random(11);
    double[] price = random.doubles(12).toArray();
    ToDoubleFunction<List<Integer>> cost =
        choice -> choice.stream().mapToDouble(i -> price[i]).sum();
    assertThat(cost.applyAsDouble(Exchange.choose(12, 5, cost)))
        .isEqualTo(least(12, 5, List.of(), cost));
  }

  @Test
  void choosingAllLeavesNothingToExchange() {
    assertThat(Exchange.choose(4, 4, choice -> 1)).containsExactly(0, 1, 2, 3);
  }
}
