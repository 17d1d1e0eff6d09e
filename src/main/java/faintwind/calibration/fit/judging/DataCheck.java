package faintwind.calibration.fit.judging;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;

/** What runs must have before any fit is tried. */
final class DataCheck {
  private static final int LEAST_ROWS = 12;
  private static final double LEAST_SPIN_S = 60;

  private DataCheck() {}

  static List<Problem> refusals(RunSet set) {
    List<Problem> found = new ArrayList<>();
    List<Run> moved = set.runs().stream().filter(DataCheck::moves).toList();
    if (moved.isEmpty()) {
      found.add(Problem.error("fit.no-moved-run", Where.NOWHERE, ""));
    }
    long heated = set.runs().stream().filter(r -> r.kind() != RunKind.ZERO).count();
    if (heated < 2 || (moved.size() == 1 && heated < 3)) {
      found.add(Problem.error("fit.too-few-runs", Where.NOWHERE, String.valueOf(heated)));
    }
    long units = set.runs().stream().map(r -> r.recording().unit()).distinct().count();
    if (units > 1) {
      found.add(Problem.error("fit.mixed-units", Where.NOWHERE, String.valueOf(units)));
    }
    List<Problem> clocks = SignalCheck.clocks(set);
    found.addAll(clocks);
    for (Run run : set.runs()) {
      int rows = run.recording().signal().size();
      if (rows == 0 || (rows < LEAST_ROWS && run.kind() != RunKind.ZERO)) {
        found.add(Problem.error("fit.too-short", Where.run(run.name()), String.valueOf(rows)));
      }
      run.arm()
          .filter(arm -> clocks.isEmpty())
          .filter(arm -> arm.spinStop_s() - arm.spinStart_s() < LEAST_SPIN_S)
          .ifPresent(
              arm ->
                  found.add(
                      Problem.error(
                          "fit.spin-too-short",
                          Where.run(run.name()),
                          String.valueOf(Math.round(arm.spinStop_s() - arm.spinStart_s())))));
    }
    return found;
  }

  static boolean moves(Run run) {
    return run.kind() == RunKind.SPIN || run.kind() == RunKind.REFERENCE;
  }
}
