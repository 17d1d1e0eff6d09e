package faintwind.calibration.fit.health;

import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Constants;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What runs must have before any fit is tried. */
public final class DataCheck {
  private DataCheck() {}

  /** Every reason against it, all at once. */
  public static List<Problem> refusals(RunSet all) {
    RunSet set = all.sound();
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
    sameRecording(set, found);
    fahrenheit(set, found);
    List<Problem> clocks = SignalCheck.clocks(set);
    found.addAll(clocks);
    for (Run run : set.runs()) {
      int rows = run.recording().signal().size();
      if (rows == 0 || (rows < OwnChoices.LEAST_ROWS && run.kind() != RunKind.ZERO)) {
        found.add(Problem.error("fit.too-short", Where.run(run.name()), String.valueOf(rows)));
      }
      run.arm()
          .filter(arm -> clocks.isEmpty())
          .filter(arm -> arm.spinStop_s() - arm.spinStart_s() < OwnChoices.LEAST_SPIN_S)
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

  /** Room air that no room has in degrees Celsius, but many have in degrees Fahrenheit. */
  private static void fahrenheit(RunSet set, List<Problem> found) {
    for (Run run : set.runs()) {
      double air_C =
          run.recording()
                  .air_K()
                  .filter(air -> !air.isEmpty())
                  .map(Series::mean)
                  .orElse(run.conditions().air_K().orElse(Constants.ZERO_C_K))
              - Constants.ZERO_C_K;
      if (air_C > OwnChoices.HOTTEST_C && air_C < OwnChoices.HOTTEST_F) {
        found.add(
            Problem.error(
                "fit.air-in-fahrenheit",
                Where.run(run.name()),
                SignalCheck.text(air_C),
                SignalCheck.text((air_C - 32) / 1.8)));
        return;
      }
    }
  }

  /** Two rows that carry the very same numbers, under another name or clock. */
  private static void sameRecording(RunSet set, List<Problem> found) {
    for (Run run : set.runs()) {
      for (Run other : set.runs()) {
        double[] own = run.recording().signal().values();
        boolean same =
            !run.name().equals(other.name())
                && own.length >= OwnChoices.LEAST_ROWS
                && Arrays.stream(own).distinct().count() > 3
                && Arrays.equals(own, other.recording().signal().values());
        if (same) {
          found.add(Problem.error("fit.same-recording", Where.run(run.name()), other.name()));
        }
      }
    }
  }

  /** Whether air moves past the ball in a run that counts. */
  public static boolean moves(Run run) {
    return !run.isLeftOut() && (run.kind() == RunKind.SPIN || run.kind() == RunKind.REFERENCE);
  }
}
