package faintwind.job.air;

import faintwind.calibration.survey.Settling;
import faintwind.calibration.survey.Survey;
import faintwind.calibration.survey.Visit;
import faintwind.files.air.PlacesTable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Severity;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A survey from its table.
 *
 * @param visits in the order in which they were made
 * @param survey the places in their ranks
 * @param settling how long the instrument waits at a place; empty where nothing says it
 */
public record SurveyPlaces(List<Visit> visits, Survey survey, Optional<Settling> settling) {
  public SurveyPlaces {
    visits = List.copyOf(visits);
  }

  /**
   * Reads the table and ranks its places.
   *
   * @param settle_s how long to wait at each place, where a person says it
   * @throws IOException where the disk or a permission fails
   */
  public static Checked<SurveyPlaces> of(Path table, AirSource source, Optional<Double> settle_s)
      throws IOException {
    Where where = Where.file(table.toString());
    return PlacesTable.read(table)
        .then(rows -> new Measured(source, settle_s, where).visits(rows))
        .then(visits -> ranked(visits, source.settling(settle_s), where));
  }

  /**
   * The same from what was read at each place, in the order of the visits.
   *
   * @param settle_s how long to wait at each place, where a person says it
   */
  public static Checked<SurveyPlaces> of(
      List<Reading> readings, AirSource source, Optional<Double> settle_s) {
    return new Measured(source, settle_s, Where.NOWHERE)
        .visits(Reading.rows(readings))
        .then(visits -> ranked(visits, source.settling(settle_s), Where.NOWHERE));
  }

  private static Checked<SurveyPlaces> ranked(
      List<Visit> visits, Optional<Settling> settling, Where where) {
    Survey survey = Survey.of(visits);
    List<Problem> notes = new ArrayList<>();
    for (Visit visit : survey.unsettled()) {
      notes.add(MeasureFlow.tooShort(visit, where).as(Severity.WARNING));
    }
    if (survey.ranked().isEmpty()) {
      return Checked.refused(notes.stream().map(n -> n.as(Severity.ERROR)).toList());
    }
    if (survey.drift().isEmpty()) {
      notes.add(Problem.warning("survey.no-repeat", where, visits.get(0).place()));
    }
    return Checked.ok(new SurveyPlaces(visits, survey, settling), notes);
  }

  /** Whether the first place read otherwise when it was visited again. */
  public boolean drifted() {
    return survey.drift().filter(Survey.Drift::isTooLarge).isPresent();
  }
}
