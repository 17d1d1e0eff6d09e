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

  /**
   * What a fit is made from: without the readings that a person left out, and without left out runs
   * of the heater off. A heated run that is left out stays, since the arm turned all the same.
   */
  public RunSet counted() {
    return with(
        runs.stream()
            .filter(run -> !(run.isLeftOut() && run.kind() == RunKind.ZERO))
            .map(Run::counted)
            .toList());
  }

  /** Without the runs that a person left out; as it is where none would be left. */
  public RunSet sound() {
    List<Run> sound = runs.stream().filter(run -> !run.isLeftOut()).toList();
    return sound.isEmpty() ? this : with(sound);
  }

  /** Other runs with the same chain and knowledge. */
  public RunSet with(List<Run> other) {
    return new RunSet(other, chain, known);
  }
}
