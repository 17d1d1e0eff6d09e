package faintwind.calibration.fit.solving;

import faintwind.calibration.RunOutcome;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What became of every row of the runs table. */
public final class RunOutcomes {
  private RunOutcomes() {}

  public static List<RunOutcome> of(FitResult fit, RunSet set, Map<String, String> whyNot) {
    List<RunOutcome> outcomes = new ArrayList<>();
    for (Run run : set.runs()) {
      String why = whyNot.getOrDefault(run.name(), "");
      boolean used = why.isEmpty() || why.endsWith(".weighted");
      Integer column = fit.setup().speedColumns().get(run.name());
      if (column == null) {
        outcomes.add(
            new RunOutcome(
                run.name(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                rms(fit, run),
                used,
                why));
      } else {
        double speed = airSpeed_m_s(fit, run);
        double u = u_relative(fit, run);
        outcomes.add(
            new RunOutcome(
                run.name(),
                OptionalDouble.of(speed),
                OptionalDouble.of(speed * u),
                fit.values()[column],
                used,
                why));
      }
    }
    return outcomes;
  }

  /** Settled air speed past the ball in a moved run, as stated, less the air carried round. */
  public static double airSpeed_m_s(FitResult fit, Run run) {
    if (run.kind() == RunKind.REFERENCE) {
      return run.reference_m_s().orElseThrow().value();
    }
    double share = fit.values()[fit.setup().layout().carriedShare()];
    double gain = fit.setup().gain(run.name(), fit.values());
    return run.arm().orElseThrow().speed_m_s() * gain * (1 - share);
  }

  /** Its relative standard uncertainty: clicks, radius, scatter between runs, carried air. */
  public static double u_relative(FitResult fit, Run run) {
    double own = Math.hypot(fit.setup().statedSpread(run.name()), fit.runScatter());
    if (run.kind() == RunKind.REFERENCE) {
      return own;
    }
    double radius = ArmSpeed.uRadius(run.arm().orElseThrow());
    int column = fit.setup().layout().carriedShare();
    double carried = Math.sqrt(fit.covariance()[column][column]);
    return Math.sqrt(own * own + radius * radius + carried * carried);
  }

  private static double rms(FitResult fit, Run run) {
    if (run.kind() == RunKind.ZERO) {
      double offset = fit.values()[fit.setup().layout().path(ThermalPath.OFFSET)];
      return fit.problem().zeros().stream()
          .filter(z -> z.run().equals(run.name()))
          .mapToDouble(z -> Math.abs(z.signal() - offset))
          .findFirst()
          .orElse(0);
    }
    double sum = 0;
    int count = 0;
    for (int k = 0; k < fit.problem().tracks().size(); k++) {
      Track track = fit.problem().tracks().get(k);
      if (!track.file.equals(run.file())) {
        continue;
      }
      double[] residuals = fit.problem().residuals(k);
      for (int i = 0; i < residuals.length; i++) {
        if (track.runs.get(track.rows.run[i]).equals(run.name())) {
          sum += residuals[i] * residuals[i];
          count++;
        }
      }
    }
    return count == 0 ? 0 : Math.sqrt(sum / count);
  }
}
