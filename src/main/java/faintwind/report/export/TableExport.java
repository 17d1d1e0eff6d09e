package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.AirState;
import faintwind.physics.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A table of the speed against the signal at rest, for several air temperatures, as CSV; with the
 * largest error that straight lines between its rows and columns make.
 */
public final class TableExport {
  private static final int ROWS = 300;
  private static final double OVER = 1.1;
  private static final int[] WARMER_K = {-15, -10, -5, 0, 5, 10, 15};

  private final ExportedFormula exported;
  private final Messages messages;
  private final Formula formula;
  private final AirPoint air;
  private final double floor_m_s;
  private final double top_m_s;

  public TableExport(ExportedFormula exported, Messages messages) {
    this.exported = exported;
    this.messages = messages;
    Calibration calibration = exported.calibration();
    formula = Formula.of(calibration);
    AirState reference = calibration.formula().referenceAir();
    air = AirPoint.of(reference);
    floor_m_s = calibration.performance().floor_m_s();
    top_m_s = OVER * calibration.coverage().highest_m_s();
  }

  /** The whole file. */
  public String text() {
    List<Double> signals = signals();
    StringBuilder text = new StringBuilder();
    for (String line : ExportHead.lines(exported, messages)) {
      text.append("# ").append(line).append('\n');
    }
    text.append("# ").append(messages.text("export.table")).append('\n');
    text.append("# ")
        .append(
            messages.text(
                "export.table-error",
                CodeExport.percent(rowError(signals)),
                CodeExport.percent(columnError(signals))))
        .append('\n');
    text.append(exported.calibration().signal().unit().column());
    for (int warmer_K : WARMER_K) {
      text.append(",speed_m_s_at_").append(celsius(warmer_K)).append("C");
    }
    text.append('\n');
    for (double signal : signals) {
      text.append(Numerals.compact(signal, 7));
      for (int warmer_K : WARMER_K) {
        text.append(',').append(cell(speed_m_s(signal, warmer_K)));
      }
      text.append('\n');
    }
    return text.toString();
  }

  private String celsius(int warmer_K) {
    return Numerals.places(air.air_K() - Constants.ZERO_C_K + warmer_K, 2);
  }

  private String cell(double speed_m_s) {
    return within(speed_m_s) ? Numerals.places(speed_m_s, 5) : "";
  }

  private boolean within(double speed_m_s) {
    return speed_m_s >= floor_m_s && speed_m_s <= top_m_s;
  }

  /** Signals at rest of speeds that rise by equal shares, over all the temperatures. */
  private List<Double> signals() {
    double low = signal(top_m_s, WARMER_K[WARMER_K.length - 1]);
    double high = signal(floor_m_s, WARMER_K[0]);
    List<Double> signals = new ArrayList<>();
    for (int i = 0; i < ROWS; i++) {
      double share = (double) i / (ROWS - 1);
      signals.add(low + (high - low) * share);
    }
    return signals;
  }

  private double signal(double speed_m_s, double warmer_K) {
    AirPoint point = air.withTemperature(air.air_K() + warmer_K);
    double delta_K = formula.steadyDelta_K(speed_m_s, OptionalDouble.empty(), point);
    return formula.signal(delta_K, point.air_K());
  }

  private double speed_m_s(double signal, double warmer_K) {
    AirPoint point = air.withTemperature(air.air_K() + warmer_K);
    return formula.steadySpeed_m_s(signal, OptionalDouble.empty(), point);
  }

  private double rowError(List<Double> signals) {
    double worst = 0;
    for (int warmer_K : WARMER_K) {
      for (int i = 1; i < signals.size(); i++) {
        double before = speed_m_s(signals.get(i - 1), warmer_K);
        double after = speed_m_s(signals.get(i), warmer_K);
        double between = speed_m_s((signals.get(i - 1) + signals.get(i)) / 2, warmer_K);
        if (within(before) && within(after)) {
          worst = Math.max(worst, Math.abs((before + after) / 2 / between - 1));
        }
      }
    }
    return worst;
  }

  private double columnError(List<Double> signals) {
    double worst = 0;
    for (double signal : signals) {
      for (int i = 1; i < WARMER_K.length; i++) {
        double before = speed_m_s(signal, WARMER_K[i - 1]);
        double after = speed_m_s(signal, WARMER_K[i]);
        double between = speed_m_s(signal, (WARMER_K[i - 1] + WARMER_K[i]) / 2.0);
        if (within(before) && within(after)) {
          worst = Math.max(worst, Math.abs((before + after) / 2 / between - 1));
        }
      }
    }
    return worst;
  }
}
