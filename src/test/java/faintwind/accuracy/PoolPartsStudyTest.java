package faintwind.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.accuracy.ClassDraw.Score;
import faintwind.calibration.fit.pooling.ClassFit;
import faintwind.calibration.fit.pooling.ClassMember;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FitToRuns;
import faintwind.calibration.run.ClassKnown;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualArm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Of what the error that is left after pooling is made: the same classes with a part of what they
 * share told to each pair as it truly is. On the classes on which the method was chosen, so this
 * says nothing of how good it is. {@code -Dparts.classes=N} sets their number.
 */
@Tag("slow")
class PoolPartsStudyTest {
  private static final long FIRST_SEED = 82_000;
  private static final double SINGULAR = 1e-300;

  /** How surely a true value is told: far better than any fit knows it. */
  private static final double TOLD = 3e-4;

  private static final Map<String, List<String>> PARTS =
      new TreeMap<>(
          Map.of(
              "share of the carried air", List.of("carried_share"),
              "its rise", List.of("carried_rise", "carried_by_turn"),
              "its decay", List.of("carried_decay", "carried_slowing"),
              "slowing of its decay", List.of("carried_slowing"),
              "asymmetry", List.of("asymmetry")));

  @Test
  void theShareOfTheCarriedAirIsMostOfWhatIsLeft() {
    Map<String, List<Double>> ratios = new TreeMap<>();
    for (long seed = FIRST_SEED;
        seed < FIRST_SEED + Integer.getInteger("parts.classes", 12);
        seed++) {
      ClassDraw drawn = ClassDraw.of(seed);
      double alone = Score.rms(drawn.scores(drawn.alone()));
      List<ClassMember<FitResult>> members = ClassFit.of(drawn.alone(), () -> false).members();
      add(ratios, "nothing", drawn, members.stream().map(ClassMember::fit).toList(), alone);
      PARTS.forEach((part, names) -> add(ratios, part, drawn, told(members, drawn, names), alone));
    }
    assertThat(median(ratios, "share of the carried air"))
        .as(ratios.toString())
        .isLessThan(median(ratios, "nothing"));
  }

  private static void add(
      Map<String, List<Double>> ratios,
      String part,
      ClassDraw drawn,
      List<FitResult> fits,
      double alone) {
    ratios.computeIfAbsent(part, p -> new ArrayList<>()).add(Score.rms(drawn.scores(fits)) / alone);
  }

  /** The fits of the pairs that were told these unknowns as they are; who stands out stays. */
  private static List<FitResult> told(
      List<ClassMember<FitResult>> members, ClassDraw drawn, List<String> names) {
    VirtualArm arm = drawn.pairs().get(0).arm();
    return members.stream()
        .map(
            m ->
                m.standsOut().isPresent()
                    ? m.fit()
                    : FitToRuns.among(m.fit(), given(m.heard(), arm, names), () -> false))
        .toList();
  }

  private static double truth(VirtualArm arm, String name) {
    return switch (name) {
      case "carried_share" -> arm.carried().share();
      case "carried_rise" -> Math.log(arm.carried().rise_s());
      case "carried_decay" -> Math.log(arm.carried().decay_s());
      case "carried_slowing" -> arm.carried().slowing();
      case "asymmetry" -> arm.asymmetry();
      default -> 0;
    };
  }

  /** What the others say, on condition that these are what they are. */
  private static ClassKnown given(ClassKnown heard, VirtualArm arm, List<String> told) {
    List<String> names = heard.ties().stream().map(ClassKnown.Tie::one).distinct().toList();
    RealMatrix information = new Array2DRowRealMatrix(names.size(), names.size());
    double[] means = new double[names.size()];
    for (int i = 0; i < means.length; i++) {
      Uncertain expected = heard.expected().get(names.get(i));
      means[i] = expected.value();
      information.addToEntry(i, i, Math.pow(expected.u().orElseThrow(), -2));
    }
    for (ClassKnown.Tie tie : heard.ties()) {
      int i = names.indexOf(tie.one());
      int j = names.indexOf(tie.other());
      information.addToEntry(i, j, tie.information());
      if (i != j) {
        information.addToEntry(j, i, tie.information());
      }
    }
    double[] right = information.operate(means);
    for (String name : told) {
      int i = names.indexOf(name);
      information.addToEntry(i, i, 1 / (TOLD * TOLD));
      right[i] += truth(arm, name) / (TOLD * TOLD);
    }
    return known(names, information, right);
  }

  private static ClassKnown known(List<String> names, RealMatrix information, double[] right) {
    RealMatrix covariance = new LUDecomposition(information, SINGULAR).getSolver().getInverse();
    double[] means = covariance.operate(right);
    Map<String, Uncertain> expected = new HashMap<>();
    List<ClassKnown.Tie> ties = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      double variance = covariance.getEntry(i, i);
      expected.put(names.get(i), Uncertain.of(means[i], Math.sqrt(variance)));
      for (int j = 0; j <= i; j++) {
        double more = information.getEntry(i, j) - (i == j ? 1 / variance : 0);
        ties.add(new ClassKnown.Tie(names.get(i), names.get(j), more));
      }
    }
    return new ClassKnown(expected, ties);
  }

  private static double median(Map<String, List<Double>> ratios, String part) {
    return new Median()
        .evaluate(ratios.get(part).stream().mapToDouble(Double::doubleValue).toArray());
  }
}
