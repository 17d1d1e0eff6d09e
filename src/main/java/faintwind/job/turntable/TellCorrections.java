package faintwind.job.turntable;

import faintwind.calibration.Calibration;
import faintwind.calibration.correction.BesideTheArm;
import faintwind.calibration.correction.CarriedShare;
import faintwind.calibration.correction.Correction;
import faintwind.calibration.correction.Corrections;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Tells the corrections of a turntable session apart, in lines. */
public final class TellCorrections {
  /** No arm carries more of the air with it; an instrument that rides on it reads the whole. */
  private static final double MOST_CARRIED = 0.5;

  private final Messages words;

  public TellCorrections(Messages words) {
    this.words = words;
  }

  /**
   * Each correction of the runs that a calibration was made from.
   *
   * @throws IOException where the disk or a permission fails
   */
  public Checked<List<String>> ofRuns(Path calibration, Path table) throws IOException {
    Checked<RunSet> runs = ReadRuns.read(table);
    return OpenCalibration.read(calibration)
        .then(known -> runs.map(set -> lines(Corrections.of(set, known))));
  }

  private List<String> lines(List<Correction> corrections) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("corrections.head"));
    for (Correction correction : corrections) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%+8.2f  %8.2f  %s (%s)",
              100 * correction.size(),
              100 * correction.u(),
              words.text("corrections.source." + correction.source().word()),
              words.text("corrections.basis." + correction.basis().word())));
    }
    return lines;
  }

  /**
   * The carried air as the instrument itself read it, stood still beside the path of the arm.
   *
   * @param table of that session: the arm's turns, the instrument's recordings
   * @return swirl_pct and u_swirl_pct, run by run and together; refused where no run was turned or
   *     the air was always below the smallest speed
   * @throws IOException where the disk or a permission fails
   */
  public Checked<List<String>> besideTheArm(Path calibration, Path table) throws IOException {
    Checked<RunSet> runs = ReadRuns.read(table);
    return OpenCalibration.read(calibration)
        .then(known -> runs.then(set -> beside(set, known, table)));
  }

  private Checked<List<String>> beside(RunSet set, Calibration calibration, Path table) {
    SignalUnit unit = set.runs().get(0).recording().unit();
    if (unit != calibration.signal().unit()) {
      return Checked.refused(
          Problem.error(
              "corrections.other-unit",
              Where.file(table.toString()),
              unit.column(),
              calibration.signal().unit().column()));
    }
    List<BesideTheArm.Turned> turned = BesideTheArm.of(set, calibration);
    List<CarriedShare.Reading> above =
        turned.stream()
            .filter(BesideTheArm.Turned::aboveFloor)
            .map(BesideTheArm.Turned::reading)
            .toList();
    if (above.isEmpty()) {
      String floor = Numerals.places(calibration.performance().floor_m_s(), 3);
      return Checked.refused(
          Problem.error("corrections.below-floor", Where.file(table.toString()), floor));
    }
    Uncertain all = CarriedShare.of(above).orElseThrow();
    if (all.value() > MOST_CARRIED) {
      return Checked.refused(
          Problem.error(
              "corrections.on-the-arm", Where.file(table.toString()), percent(all.value())));
    }
    List<String> lines = new ArrayList<>();
    lines.add("run,arm_m_s,air_m_s,swirl_pct,u_swirl_pct");
    for (BesideTheArm.Turned each : turned) {
      if (each.aboveFloor()) {
        lines.add(row(each.run(), each.reading(), each.reading().share()));
      }
    }
    lines.add(words.text("corrections.swirl", percent(all.value()), percent(all.u().orElse(0))));
    return Checked.ok(lines);
  }

  private static String row(String run, CarriedShare.Reading reading, Uncertain share) {
    return String.format(
        Locale.ROOT,
        "%s,%.4f,%.4f,%s,%s",
        run,
        reading.arm_m_s(),
        reading.air_m_s(),
        percent(share.value()),
        percent(share.u().orElse(0)));
  }

  private static String percent(double share) {
    return Numerals.places(100 * share, 2);
  }
}
