package faintwind.report.calibration;

import faintwind.calibration.Calibration;
import faintwind.calibration.fit.judging.FitLook;
import faintwind.calibration.response.StraightLineLook;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunConditions;
import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.Constants;
import faintwind.report.figure.RecordingPlots;
import faintwind.report.figure.RecordingTrace;
import faintwind.report.figure.StraightLinePlots;
import faintwind.report.page.Chapter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a calibration was drawn from: the runs as recorded, and the straight line through them. */
final class CalibrationRecordings {
  private final Chapter to;

  CalibrationRecordings(Chapter to) {
    this.to = to;
  }

  void write(Calibration c, Checked<FitLook> look) {
    look.fold(
        (value, notes) -> {
          runs(value.runs());
          recordings(c, value);
          return true;
        },
        problems -> {
          notAtHand("calibration-page.recordings.not-at-hand", problems);
          return false;
        });
  }

  private void notAtHand(String key, List<Problem> problems) {
    to.say(key);
    to.html().list(problems.stream().map(to.words().messages()::sentence).toList());
  }

  private void runs(List<Run> runs) {
    to.say("calibration-page.recordings.text");
    to.table(
        List.of(
            "calibration-page.run",
            "calibration-page.kind",
            "calibration-page.radius",
            "calibration-page.turns",
            "calibration-page.turns-time",
            "calibration-page.arm",
            "calibration-page.air",
            "calibration-page.direction"),
        runs.stream().map(this::row).toList());
  }

  private List<String> row(Run run) {
    RunConditions room = run.conditions();
    List<String> cells = new ArrayList<>(List.of(run.name(), run.kind().word()));
    run.arm()
        .ifPresentOrElse(
            arm -> {
              cells.add(both(arm.radius_m(), 1000));
              cells.add(Numerals.compact(arm.turns(), 5));
              cells.add(both(arm.turnsTime_s(), 1));
              cells.add(Numerals.compact(arm.speed_m_s(), 4));
            },
            () -> {
              cells.addAll(List.of("", "", ""));
              cells.add(run.reference_m_s().map(speed -> both(speed, 1)).orElse(""));
            });
    OptionalDouble air_K = room.air_K();
    cells.add(
        air_K.isPresent() ? Numerals.compact(air_K.getAsDouble() - Constants.ZERO_C_K, 3) : "");
    cells.add(room.direction().map(d -> d.name().toLowerCase(Locale.ROOT)).orElse(""));
    return cells;
  }

  private static String both(Uncertain value, double scale) {
    String number = Numerals.compact(scale * value.value(), 5);
    return value.u().isPresent()
        ? number + " \u00b1 " + Numerals.compact(scale * value.u().getAsDouble(), 2)
        : number;
  }

  private void recordings(Calibration c, FitLook look) {
    if (look.recordings().isEmpty()) {
      to.say("calibration-page.recordings.other-formula", c.origin().softwareVersion());
    } else {
      to.say("calibration-page.recordings.fitted");
    }
    RecordingPlots plots = new RecordingPlots(to.words().messages());
    List<RecordingTrace> traces = RecordingPlots.traces(look.runs());
    RecordingPlots.fitted(traces, look.recordings(), look.runs())
        .forEach(trace -> to.recording(plots.recording(trace)));
  }

  /** The straight line beside the formula, with its error. */
  void straightLine(Calibration c, Checked<FitLook> look) {
    to.say("calibration-page.straight.text");
    look.fold(
        (value, notes) -> {
          straightLine(c, value.straightLine());
          return true;
        },
        problems -> {
          notAtHand("calibration-page.straight.not-at-hand", problems);
          return false;
        });
  }

  private void straightLine(Calibration c, StraightLineLook look) {
    new StraightLinePlots(to.words().messages())
        .figure(look, c.signal().unit().symbol())
        .ifPresentOrElse(
            figure -> {
              to.plot(figure);
              to.table(
                  List.of(
                      "calibration-page.speed",
                      "calibration-page.straight.reads",
                      "calibration-page.straight.error"),
                  look.errors().stream().map(CalibrationRecordings::misreading).toList());
              to.say("calibration-page.straight.origin");
            },
            () -> to.say("calibration-page.straight.none"));
  }

  private static List<String> misreading(StraightLineLook.Misreading error) {
    double reads = error.speed_m_s() * (1 + error.relative());
    return List.of(
        Numerals.compact(error.speed_m_s(), 2),
        Numerals.compact(reads, 3),
        Numerals.signed(100 * error.relative(), 0));
  }
}
