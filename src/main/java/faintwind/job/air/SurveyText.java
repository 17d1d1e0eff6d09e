package faintwind.job.air;

import faintwind.calibration.field.StretchMean;
import faintwind.calibration.survey.Settling;
import faintwind.calibration.survey.Survey;
import faintwind.calibration.survey.Visit;
import faintwind.files.JsonForm;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A survey in words, and for another program. */
public final class SurveyText {
  private static final int MM_S = 3;

  private final Messages words;

  public SurveyText(Messages words) {
    this.words = words;
  }

  /** How long to wait at each place. */
  private String settle(Settling settling) {
    return words.text(
        "survey.settle",
        whole(settling.moving_s()),
        whole(settling.atMost_s()),
        whole(settling.stillTime_s()));
  }

  /** The wait, when each place had settled, then the ranks, then the first place again. */
  public List<String> lines(SurveyPlaces done) {
    List<String> lines = new ArrayList<>();
    done.settling().ifPresent(settling -> lines.add(settle(settling)));
    for (Visit visit : done.visits()) {
      if (visit.settled_s().isPresent() && visit.speed().isPresent()) {
        double settled_s = visit.settled_s().getAsDouble();
        lines.add(words.text("survey.settled", visit.place(), whole(settled_s)));
      }
    }
    for (Survey.Ranked ranked : done.survey().ranked()) {
      StretchMean speed = ranked.speed();
      lines.add(
          words.text(
              speed.faintShare() > 0.5 ? "survey.faint" : "survey.ranked",
              String.valueOf(ranked.rank()),
              ranked.visit().place(),
              places(speed.speed_m_s()),
              places(speed.u95_m_s())));
    }
    lines.add(words.text("survey.ranks"));
    done.survey().drift().ifPresent(drift -> lines.add(drift(drift)));
    return lines;
  }

  private String drift(Survey.Drift drift) {
    return words.text(
        drift.isTooLarge() ? "survey.drifted" : "survey.no-drift",
        drift.place(),
        Numerals.signed(drift.change_m_s(), MM_S),
        places(drift.allowed_m_s()));
  }

  /**
   * The survey as JSON.
   *
   * @param inputs hashes of the files it was made from, by name
   */
  public static String json(SurveyPlaces done, Map<String, String> inputs) {
    return JsonForm.text(
        new Told(
            "faintwind-survey/1",
            done.survey().ranked().stream().map(SurveyText::place).toList(),
            done.survey().unsettled().stream().map(Visit::place).toList(),
            done.survey().drift().map(SurveyText::again),
            inputs));
  }

  private static Place place(Survey.Ranked ranked) {
    Visit visit = ranked.visit();
    return new Place(
        ranked.rank(),
        visit.place(),
        ranked.speed().speed_m_s(),
        ranked.speed().u95_m_s(),
        visit.settled_s().isPresent()
            ? Optional.of(visit.settled_s().getAsDouble())
            : Optional.empty(),
        visit.steady(),
        ranked.speed().faintShare() > 0.5);
  }

  private static Again again(Survey.Drift drift) {
    return new Again(drift.place(), drift.change_m_s(), drift.allowed_m_s(), drift.isTooLarge());
  }

  private record Told(
      String format,
      List<Place> places,
      List<String> tooShort,
      Optional<Again> again,
      Map<String, String> inputs) {}

  private record Place(
      int rank,
      String place,
      double speed_m_s,
      double u95_m_s,
      Optional<Double> settled_s,
      boolean steady,
      boolean faint) {}

  private record Again(String place, double change_m_s, double allowed_m_s, boolean drifted) {}

  private static String whole(double time_s) {
    return Numerals.shortest(time_s, 0);
  }

  private static String places(double speed_m_s) {
    return Numerals.places(speed_m_s, MM_S);
  }
}
