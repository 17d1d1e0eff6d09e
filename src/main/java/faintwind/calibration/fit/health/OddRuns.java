package faintwind.calibration.fit.health;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Which runs took another heat than the rest of them: single ones, or all from one run on. The
 * majority counts as healthy, so that a faulty run does not accuse the others.
 */
public final class OddRuns {
  private final List<RunHealth> runs;
  private final Map<String, Double> rests = new LinkedHashMap<>();
  private final double median;
  private final double scatter;

  /**
   * A look at these runs.
   *
   * @param runs in the order in which they were made
   */
  public OddRuns(List<RunHealth> runs) {
    this.runs = List.copyOf(runs);
    for (RunHealth run : runs) {
      run.rest().ifPresent(rest -> rests.put(run.run(), rest.ratio()));
    }
    double[] ratios = rests.values().stream().mapToDouble(Double::doubleValue).toArray();
    median = ratios.length == 0 ? 1 : new Median().evaluate(ratios);
    scatter = Math.max(OwnChoices.LEAST_SCATTER, spread(ratios, median));
  }

  private static double spread(double[] ratios, double centre) {
    double[] away = new double[ratios.length];
    for (int i = 0; i < away.length; i++) {
      away[i] = Math.abs(ratios[i] - centre);
    }
    return away.length == 0 ? 0 : 1.4826 * new Median().evaluate(away);
  }

  /** What ails a run of these, or another one beside them, the likeliest first. */
  public List<Ailment> ailments(RunHealth run) {
    return Ailments.of(run, median, scatter);
  }

  /** Whether a run took another heat in any block at rest. */
  public boolean restsOff(RunHealth run) {
    return run.blocks().stream()
        .filter(b -> b.phase() != HeatBlock.Phase.TURNING)
        .anyMatch(
            b -> {
              double off = Math.abs(b.ratio() / median - 1);
              return off > OwnChoices.BLOCK_OFF && off > OwnChoices.BLOCK_SURE * b.u();
            });
  }

  /** The run whose recording is spoilt most surely, where one is. */
  public Optional<String> worst() {
    if (rests.size() < OwnChoices.LEAST_RUNS) {
      return Optional.empty();
    }
    String worst = "";
    double most = 0;
    for (RunHealth run : runs) {
      List<Ailment> ailments = ailments(run);
      if (!ailments.isEmpty()
          && ailments.get(0).spoilsRecording()
          && ailments.get(0).gain() > most) {
        most = ailments.get(0).gain();
        worst = run.run();
      }
    }
    return worst.isEmpty() ? Optional.empty() : Optional.of(worst);
  }

  /**
   * A lasting change of the ball or its heat, which shows at rest and does not spare the turning;
   * its index counts the runs that rest.
   */
  public Optional<LastingChange> change() {
    double[] ratios = rests.values().stream().mapToDouble(ratio -> ratio / median).toArray();
    List<Optional<MeanHeat>> turnings =
        runs.stream().filter(run -> rests.containsKey(run.run())).map(RunHealth::turning).toList();
    return LastingChange.in(ratios, turnings, OwnChoices.REST_OFF);
  }

  /** Names of the runs that rest, in order. */
  public List<String> resting() {
    return List.copyOf(rests.keySet());
  }
}
