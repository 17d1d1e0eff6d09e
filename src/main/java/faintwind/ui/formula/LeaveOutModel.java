package faintwind.ui.formula;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.CompareCalibrations;
import faintwind.calibration.compare.Comparison;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What came of leaving something out of the fit: why not, or what it changed. */
final class LeaveOutModel {
  private static final int SHOWN_SPEEDS = 5;

  private final Messages words;
  private final ReadOnlyStringWrapper refused = new ReadOnlyStringWrapper("");
  private Optional<Kept> before = Optional.empty();

  LeaveOutModel(Messages words) {
    this.words = words;
  }

  /** Why the last choice was not taken; empty where it was. */
  ReadOnlyStringProperty refused() {
    return refused.getReadOnlyProperty();
  }

  /**
   * A choice was entered, or refused.
   *
   * @param was the fit before
   * @param fit fits the table that counts from now on
   */
  void told(Checked<Path> answer, Optional<Kept> was, Consumer<Path> fit) {
    answer.fold(
        (fresh, notes) -> {
          refused.set("");
          before = was;
          fit.accept(fresh);
          return true;
        },
        problems -> {
          refused.set(words.line(problems.get(0)));
          return false;
        });
  }

  /** What the last choice changed; empty before there is anything to compare. */
  List<String> changes(Kept now) {
    if (before.isEmpty() || before.get().file().equals(now.file())) {
      return List.of();
    }
    Calibration earlier = before.get().formula().calibration();
    Calibration later = now.formula().calibration();
    return CompareCalibrations.of(earlier, later)
        .fold(
            (comparison, notes) -> lines(comparison, earlier, later),
            problems -> List.of(words.line(problems.get(0))));
  }

  private List<String> lines(Comparison comparison, Calibration earlier, Calibration later) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text(comparison.agrees() ? "leave-out.little" : "leave-out.much"));
    List<Comparison.AtSpeed> speeds = comparison.speeds();
    for (int i = 0; i < SHOWN_SPEEDS; i++) {
      Comparison.AtSpeed at = speeds.get(i * (speeds.size() - 1) / (SHOWN_SPEEDS - 1));
      lines.add(
          words.text(
              "leave-out.speed",
              Numerals.digits(at.speed_m_s(), 2),
              Numerals.signed(100 * at.difference_m_s() / at.speed_m_s(), 1),
              u95_pct(earlier, at.speed_m_s()),
              u95_pct(later, at.speed_m_s())));
    }
    return lines;
  }

  private static String u95_pct(Calibration calibration, double speed_m_s) {
    double u95_m_s = CompareCalibrations.u95_m_s(calibration, speed_m_s);
    return Numerals.digits(100 * u95_m_s / speed_m_s, 2);
  }
}
