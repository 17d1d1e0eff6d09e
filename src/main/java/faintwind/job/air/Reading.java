package faintwind.job.air;

import faintwind.calibration.field.StretchMean;
import faintwind.files.air.MeasuredRow;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What was read at one place, as it will stand in a row of the table.
 *
 * @param row the row; its line is not known yet
 */
public record Reading(MeasuredRow row) {

  /** A speed with its expanded uncertainty, as a person wrote it down or took it from a display. */
  public static Checked<Reading> typed(
      String place, double speed_m_s, double u95_m_s, String note) {
    List<Problem> problems =
        DoubleStream.of(speed_m_s, u95_m_s)
            .mapToObj(v -> StretchMean.SPEED.trouble(Field.plain(v), at(place)))
            .flatMap(Optional::stream)
            .toList();
    MeasuredRow.Typed typed = new MeasuredRow.Typed(speed_m_s, u95_m_s);
    return problems.isEmpty()
        ? Checked.ok(new Reading(row(place, Optional.empty(), Optional.of(typed), note)))
        : Checked.refused(problems);
  }

  /** A stay from one time of a converted log to another. */
  public static Checked<Reading> stayed(String place, double from_s, double to_s, String note) {
    Optional<MeasuredRow.Stay> stay = Optional.of(new MeasuredRow.Stay(from_s, to_s));
    return from_s < to_s
        ? Checked.ok(new Reading(row(place, stay, Optional.empty(), note)))
        : Checked.refused(Problem.error("air.ends-before", at(place), Field.plain(to_s)));
  }

  private static Where at(String place) {
    return Where.NOWHERE.atColumn(place);
  }

  private static MeasuredRow row(
      String place,
      Optional<MeasuredRow.Stay> stay,
      Optional<MeasuredRow.Typed> typed,
      String note) {
    return new MeasuredRow(place, 1, stay, typed, note);
  }

  static List<MeasuredRow> rows(List<Reading> readings) {
    return readings.stream().map(Reading::row).toList();
  }
}
