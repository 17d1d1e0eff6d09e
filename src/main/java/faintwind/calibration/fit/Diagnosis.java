package faintwind.calibration.fit;

import faintwind.calibration.Run;
import faintwind.calibration.RunKind;
import faintwind.calibration.RunSet;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a fit shows of a bad data set, in plain words. */
public final class Diagnosis {
  private static final double REST_AFTER_S = 120;

  private Diagnosis() {}

  /** Every warning a person should know. */
  public static List<Problem> warnings(FitResult fit, RunSet set) {
    return new ArrayList<>();
  }

  /** Runs that were not used or got less weight: bundle key of the reason by run. */
  static Map<String, String> whyNot(FitResult fit, RunSet set) {
    return new HashMap<>();
  }

  /** Whether the recordings after the stops, or a statement, show the carried air. */
  static boolean carriedAirShown(FitResult fit, RunSet set) {
    if (fit.setup().statedShare()) {
      return true;
    }
    return set.runs().stream()
        .filter(r -> r.kind() == RunKind.SPIN)
        .anyMatch(r -> restAfter_s(r) >= REST_AFTER_S);
  }

  static double restAfter_s(Run run) {
    return run.recording().signal().last_s() - run.arm().orElseThrow().spinStop_s();
  }
}
