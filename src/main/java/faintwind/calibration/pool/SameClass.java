package faintwind.calibration.pool;

import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Whether instruments are of one design and were turned on one arm, as far as is on record. */
public final class SameClass {
  private final List<String> names;
  private final List<RunSet> sets;

  private SameClass(Map<String, RunSet> instruments) {
    names = List.copyOf(instruments.keySet());
    sets = List.copyOf(instruments.values());
  }

  /** Every reason why these cannot share; empty where they can. The order is that of the map. */
  public static List<Problem> trouble(Map<String, RunSet> instruments) {
    SameClass same = new SameClass(instruments);
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < same.sets.size(); i++) {
      problems.addAll(same.trouble(i));
    }
    return problems;
  }

  private List<Problem> trouble(int i) {
    List<Problem> problems = new ArrayList<>();
    Where where = Where.file(names.get(i));
    if (radii_m(sets.get(i)).length == 0) {
      problems.add(Problem.error("pool.no-arm", where, ""));
      return problems;
    }
    for (double radius_m : radii_m(sets.get(i))) {
      if (others(i).noneMatch(s -> turnsAt(s, radius_m))) {
        String found = Numerals.digits(1000 * radius_m, 3);
        problems.add(Problem.error("pool.other-arm", where, found));
      }
    }
    differs(i, "diameter", b -> b.diameter_m().map(Uncertain::value))
        .or(() -> differs(i, "metal", b -> b.specificHeat_J_kgK().map(Uncertain::value)))
        .or(() -> differs(i, "coat", b -> b.emissivity().map(Uncertain::value)))
        .or(() -> differs(i, "sense", b -> b.wires().signal_V_K().map(Uncertain::value)))
        .ifPresent(
            what -> problems.add(Problem.error("pool.other-design", where, names.get(0), what)));
    return problems;
  }

  /** In what the design of one differs from that of the first, where both are on record. */
  private Optional<String> differs(
      int i, String what, Function<BuildFacts, Optional<Double>> number) {
    Optional<Double> own = sets.get(i).build().flatMap(number);
    Optional<Double> first = sets.get(0).build().flatMap(number);
    return own.filter(n -> first.isPresent())
        .filter(n -> Math.abs(n / first.orElseThrow() - 1) > OwnChoices.SAME_PART)
        .map(n -> "field.pool.design." + what);
  }

  private Stream<RunSet> others(int i) {
    return IntStream.range(0, sets.size()).filter(k -> k != i).mapToObj(sets::get);
  }

  private static boolean turnsAt(RunSet set, double radius_m) {
    return Arrays.stream(radii_m(set))
        .anyMatch(r -> Math.abs(r / radius_m - 1) < OwnChoices.SAME_RADIUS);
  }

  private static double[] radii_m(RunSet set) {
    return set.runs().stream()
        .flatMap(run -> run.arm().stream())
        .mapToDouble(arm -> arm.radius_m().value())
        .distinct()
        .toArray();
  }
}
