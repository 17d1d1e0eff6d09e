package faintwind.calibration.run;

import java.util.List;
import java.util.Optional;

/**
 * Everything a calibration starts from.
 *
 * @param runs in the table's order, at least one
 * @param chain signal chain, or {@link SignalChain#AS_IS}
 * @param known what is known of build and arm, to sharpen the priors
 */
public record RunSet(List<Run> runs, SignalChain chain, KnownBefore known) {
  public RunSet {
    runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new IllegalArgumentException("no runs");
    }
  }

  /** Of an arm that no earlier calibration has shown. */
  public RunSet(List<Run> runs, SignalChain chain, Optional<BuildFacts> build) {
    this(runs, chain, new KnownBefore(build, Optional.empty()));
  }

  public Optional<BuildFacts> build() {
    return known.build();
  }

  /** Other runs with the same chain and knowledge. */
  public RunSet with(List<Run> other) {
    return new RunSet(other, chain, known);
  }
}
