package faintwind.ui.air;

import faintwind.calibration.Calibration;
import faintwind.job.air.Reading;
import faintwind.job.air.SurveyPlaces;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.record.JournalEntry;
import faintwind.ui.frame.DataModel;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A list of places ranked by their speed; the first one comes once more at the end. */
public final class SurveyModel extends DataModel<SurveyModel.View> implements PlaceList {
  private static final int FEWEST = 2;

  private final Readings readings;
  private final LiveAir live;
  private AirWays ways;
  private String kept = "";

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
    super(words, View.NOTHING);
    this.ways = ways;
    readings = new Readings(words, background, this::work);
    live = new LiveAir(words, mean -> readings.next().ifPresent(row -> row.take(mean)), this::say);
    for (int i = 0; i < FEWEST; i++) {
      readings.add("");
    }
    PlaceRow again = readings.add("");
    again.name().bind(first().name());
    say();
  }

  /** Goes on with the instrument as it is open now. */
  public void at(AirWays instrument, Optional<Calibration> calibration) {
    ways = instrument;
    calibration.ifPresent(live::by);
    say();
  }

  @Override
  public Readings readings() {
    return readings;
  }

  public LiveAir live() {
    return live;
  }

  @Override
  public AirWays ways() {
    return ways;
  }

  private PlaceRow first() {
    return readings.rows().get(0);
  }

  /** The row in which the first place comes again. */
  PlaceRow again() {
    return readings.rows().get(readings.rows().size() - 1);
  }

  /** One more place, before the first one again. */
  public PlaceRow addPlace() {
    PlaceRow row = readings.add("");
    readings.rows().remove(row);
    readings.rows().add(readings.rows().size() - 1, row);
    work();
    return row;
  }

  /** Takes a place out of the list; the first one is the check, and stays. */
  public void remove(PlaceRow row) {
    if (isRemovable(row)) {
      readings.rows().remove(row);
      work();
    }
  }

  boolean isRemovable(PlaceRow row) {
    return row != first() && row != again() && readings.rows().size() > FEWEST + 1;
  }

  @Override
  public void use(Path speeds) {
    readings.use(
        ways.log(speeds),
        problems -> tell(lines(problems), problems.stream().anyMatch(Problem::isError)),
        broke -> tell(List.of(failed(speeds, broke)), true));
  }

  private void tell(List<String> problems, boolean refused) {
    if (!problems.isEmpty()) {
      put(new View(view().get().ranked(), readings.missing(), problems, refused));
    }
    say();
  }

  /** Ranks what is filled in. */
  private void work() {
    kept = "";
    Checked<List<Reading>> filled = readings.filled();
    int missing = readings.missing();
    boolean enough = filled.fold((all, notes) -> all.size() >= FEWEST, problems -> true);
    put(
        enough
            ? filled
                .then(all -> SurveyPlaces.of(all, readings.source(), Optional.empty()))
                .fold(
                    (done, notes) -> new View(Optional.of(done), missing, lines(notes), false),
                    problems -> new View(Optional.empty(), missing, lines(problems), true))
            : new View(Optional.empty(), missing, List.of(), false));
    say();
  }

  /** Keeps table and result with the instrument. */
  public void keep() {
    if (view().get().ranked().isPresent()
        && readings.filled() instanceof Checked.Ok<List<Reading>> ok) {
      ways.keepSurvey(ok.value(), readings.inputs(), this::kept);
    }
  }

  /** What is typed and not kept, of an instrument. */
  Optional<Unsaved> unsaved(String instrument) {
    Act keep = new Act("survey-keep", text("air.keep"), this::keep);
    return readings.isUnsaved()
        ? Optional.of(
            new Unsaved(
                text("air.unsaved-survey", instrument),
                view().get().ranked().map(done -> keep),
                text("window.unsaved.drop")))
        : Optional.empty();
  }

  private void kept(Checked<JournalEntry> entry) {
    kept = entry.isOk() ? text("air.kept", PlaceList.file(entry)) : "";
    if (entry.isOk()) {
      readings.markKept();
    }
    tell(entry.isOk() ? List.of() : lines(entry.problems()), !entry.isOk());
  }

  private void say() {
    Act keep = new Act("survey-keep", text("air.keep"), this::keep);
    Optional<SurveyPlaces> ranked = view().get().ranked();
    Optional<PlaceRow> next = readings.next();
    if (!kept.isEmpty()) {
      Act anew = new Act("survey-anew", text("air.survey.anew"), readings::clear);
      say(Next.say(Mark.DONE, text("air.survey.kept"), anew).withDetail(kept));
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
    return live.next(go, place)
        .orElseGet(() -> Next.say(Mark.DOING, go).withDetail(text("air.survey.go-detail")));
  }
}
