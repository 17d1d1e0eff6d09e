package faintwind.job.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance;
import faintwind.calibration.response.EstimateRise;
import faintwind.files.JsonForm;
import faintwind.job.ToldProblem;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;

/** What a fit came to, for another program; the calibration file says the rest. */
public final class CalibrationText {
  private CalibrationText() {}

  private record Told(
      String format,
      String file,
      String instrumentId,
      String model,
      Speeds speeds_m_s,
      List<At> at,
      List<ToldProblem> problems) {}

  private record Speeds(double lowest, double highest, double floor) {}

  private record At(
      double speed_m_s, double u95_m_s, double rise_s, double estimateRise_s, boolean beyond) {}

  /** As JSON. */
  public static String json(
      Calibration calibration, String file, List<Problem> shortfalls, Messages messages) {
    List<Problem> problems = new ArrayList<>(calibration.warnings());
    problems.addAll(shortfalls);
    return JsonForm.text(
        new Told(
            "faintwind-calibrated/1",
            file,
            calibration.origin().instrumentId(),
            calibration.formula().model(),
            new Speeds(
                calibration.coverage().lowest_m_s(),
                calibration.coverage().highest_m_s(),
                calibration.performance().floor_m_s()),
            calibration.performance().speeds().stream().map(s -> at(calibration, s)).toList(),
            ToldProblem.of(problems, messages)));
  }

  private static At at(Calibration calibration, Performance.AtSpeed at) {
    return new At(
        at.speed_m_s(),
        at.u95_m_s(),
        at.rise_s(),
        EstimateRise.s(calibration, at.speed_m_s()),
        calibration.coverage().isBeyond(at.speed_m_s()));
  }
}
