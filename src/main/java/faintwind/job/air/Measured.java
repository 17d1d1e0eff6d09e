package faintwind.job.air;

import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.survey.Settling;
import faintwind.calibration.survey.Stay;
import faintwind.calibration.survey.Visit;
import faintwind.files.air.MeasuredRow;
import faintwind.files.air.SpeedsFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The speeds of a table's rows: as typed, or from the stretches of a converted log that it names.
 */
final class Measured {
  private final AirSource source;
  private final Optional<Double> settle_s;
  private final Where where;

  /**
   * Prepares.
   *
   * @param settle_s how long to wait at each place, where a person says it
   * @param where the table
   */
  Measured(AirSource source, Optional<Double> settle_s, Where where) {
    this.source = source;
    this.settle_s = settle_s;
    this.where = where;
  }

  /** One visit a row. */
  Checked<List<Visit>> visits(List<MeasuredRow> rows) {
    List<Problem> problems = new ArrayList<>();
    boolean stays = rows.stream().anyMatch(row -> row.stay().isPresent());
    if (stays && source.speeds().isEmpty()) {
      problems.add(Problem.error("air.no-log", where, ""));
    }
    Optional<Settling> settling = source.settling(settle_s);
    if (stays && settling.isEmpty()) {
      problems.add(Problem.error("air.no-settling", where, ""));
    }
    if (!problems.isEmpty()) {
      return Checked.refused(problems);
    }
    List<Visit> visits = new ArrayList<>();
    for (MeasuredRow row : rows) {
      row.typed().ifPresent(t -> visits.add(Visit.typed(row.name(), t.speed_m_s(), t.u95_m_s())));
      row.stay().ifPresent(stay -> visits.add(visit(row, stay, settling.orElseThrow())));
      Visit last = visits.get(visits.size() - 1);
      if (last.speed().isPresent() && !last.steady()) {
        problems.add(Problem.warning("air.unsteady", where.atLine(row.line()), row.name()));
      }
    }
    return Checked.ok(visits, problems);
  }

  private Visit visit(MeasuredRow row, MeasuredRow.Stay stay, Settling settling) {
    SpeedSeries rows = source.speeds().map(SpeedsFile::rows).orElseThrow();
    StretchMean.How how = source.how(StretchMean.Of.THE_PLACE);
    return new Stay(rows, settling, how).at(row.name(), stay.from_s(), stay.to_s());
  }
}
