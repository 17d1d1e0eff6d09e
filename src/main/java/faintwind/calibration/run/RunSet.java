package faintwind.calibration.run;

import java.util.List;
import java.util.Optional;

/**
 * Everything a calibration starts from.
 *
 * @param runs in the table's order, at least one
 * @param chain signal chain, or {@link SignalChain#AS_IS}
 * @param build what is on record of the build, to sharpen the priors
 */
public record RunSet(List<Run> runs, SignalChain chain, Optional<BuildFacts> build) {
  public RunSet {
    runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("no runs");
    }
  }
}
