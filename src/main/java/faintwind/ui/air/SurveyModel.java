package faintwind.ui.air;

import faintwind.calibration.Calibration;
import faintwind.job.air.Reading;
import faintwind.job.air.SurveyPlaces;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.util.List;
import java.util.Optional;

/** A list of places ranked by their speed; the first one comes once more at the end. */
public final class SurveyModel extends PlacesModel<SurveyModel.View> {
  private static final int FEWEST = 2;

  /**
   * What there is to show.
   *
   * @param ranked what comes of the places that are filled in; empty where fewer than two are
   * @param missing places that are not filled in
   * @param problems sentences with their place
   * @param refused whether they keep it from going on
   */
  public record View(
      Optional<SurveyPlaces> ranked, int missing, List<String> problems, boolean refused) {
    static final View NOTHING = new View(Optional.empty(), 0, List.of(), false);

    public View {
      problems = List.copyOf(problems);
    }
  }

  /** A list of two places without names, and the first one again. */
  public SurveyModel(Messages words, Background background, AirWays ways) {
    super(words, background, ways, View.NOTHING);
    for (int i = 0; i < FEWEST; i++) {
      readings().add("");
    }
    PlaceRow again = readings().add("");
    again.name().bind(first().name());
    say();
  }

  /** Goes on with the instrument as it is open now. */
  public void at(AirWays instrument, Optional<Calibration> calibration) {
    goOn(instrument);
    calibration.ifPresent(live()::by);
    say();
  }

  private PlaceRow first() {
    return readings().rows().get(0);
  }

  /** The row in which the first place comes again. */
  PlaceRow again() {
    return readings().rows().get(readings().rows().size() - 1);
  }

  /** One more place, before the first one again. */
  public PlaceRow addPlace() {
    PlaceRow row = readings().add("");
    readings().rows().remove(row);
    readings().rows().add(readings().rows().size() - 1, row);
    work();
    return row;
  }

  /** Takes a place out of the list; the first one is the check, and stays. */
  public void remove(PlaceRow row) {
    if (isRemovable(row)) {
      readings().rows().remove(row);
      work();
    }
  }

  boolean isRemovable(PlaceRow row) {
    return row != first() && row != again() && readings().rows().size() > FEWEST + 1;
  }

  @Override
  void tell(List<String> problems, boolean refused) {
    if (!problems.isEmpty()) {
      put(new View(view().get().ranked(), readings().missing(), problems, refused));
    }
    say();
  }

  @Override
  void work() {
    changed();
    Checked<List<Reading>> filled = readings().filled();
    int missing = readings().missing();
    boolean enough = filled.fold((all, notes) -> all.size() >= FEWEST, problems -> true);
    put(
        enough
            ? filled
                .then(all -> SurveyPlaces.of(all, readings().source(), Optional.empty()))
                .fold(
                    (done, notes) -> new View(Optional.of(done), missing, lines(notes), false),
                    problems -> new View(Optional.empty(), missing, lines(problems), true))
            : new View(Optional.empty(), missing, List.of(), false));
    say();
  }

  /** Keeps table and result with the instrument. */
  public void keep() {
    if (view().get().ranked().isPresent()
        && readings().filled() instanceof Checked.Ok<List<Reading>> ok) {
      ways().keepSurvey(ok.value(), readings().inputs(), this::kept);
    }
  }

  /** What is typed and not kept, of an instrument. */
  Optional<Unsaved> unsaved(String instrument) {
    Act keep = new Act("survey-keep", text("air.keep"), this::keep);
    return unsaved(text("air.unsaved-survey", instrument), view().get().ranked().map(done -> keep));
  }

  @Override
  void say() {
    Act keep = new Act("survey-keep", text("air.keep"), this::keep);
    Optional<SurveyPlaces> ranked = view().get().ranked();
    Optional<PlaceRow> next = readings().next();
    if (!kept().isEmpty()) {
      Act anew = new Act("survey-anew", text("air.survey.anew"), readings()::clear);
      say(Next.say(Mark.DONE, text("air.survey.kept"), anew).withDetail(kept()));
    } else if (next.isPresent()) {
      Next go = sayPlace(next.get());
      say(ranked.isPresent() ? go.withOther(keep) : go);
    } else if (ranked.isPresent()) {
      boolean drifted = ranked.get().drifted();
      say(
          Next.say(
                  drifted ? Mark.ATTENTION : Mark.DONE,
                  text(drifted ? "air.survey.drifted" : "air.survey.done"),
                  keep)
              .withDetail(text("air.flow.keep-detail")));
    } else {
      say(Next.say(Mark.BLOCKED, text("air.flow.refused")));
    }
  }

  private Next sayPlace(PlaceRow row) {
    String place = row.name().get().strip();
    if (place.isEmpty()) {
      return Next.say(Mark.READY, text("air.survey.name"))
          .withDetail(text("air.survey.name-detail"));
    }
    String go = text(row == again() ? "air.survey.again" : "air.survey.go", place);
    return live()
        .next(go, place)
        .orElseGet(() -> Next.say(Mark.DOING, go).withDetail(text("air.survey.go-detail")));
  }
}
