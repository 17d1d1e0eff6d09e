package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.physics.sheet.DesignVerdict;
import java.util.List;
import java.util.Optional;

/**
 * What there is to show of a design.
 *
 * @param worked the design and what follows; empty until it is worked out
 * @param problems what is wrong with the last choice; the design before it still shows
 */
public record DesignAnswer(Optional<Sized> worked, List<String> problems) {
  static final DesignAnswer NOTHING = new DesignAnswer(Optional.empty(), List.of());

  public DesignAnswer {
    problems = List.copyOf(problems);
  }

  DesignAnswer refused(List<String> why) {
    return new DesignAnswer(worked, why);
  }

  /** How many outcomes have a verdict. */
  long count(DesignVerdict verdict) {
    return worked.stream()
        .flatMap(w -> w.sheet().quantities().stream())
        .filter(q -> q.verdict() == verdict)
        .count();
  }
}
