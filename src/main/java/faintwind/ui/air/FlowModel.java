package faintwind.ui.air;

import faintwind.calibration.Calibration;
import faintwind.calibration.flow.FlowPoint;
import faintwind.calibration.flow.Opening;
import faintwind.job.air.FlowText;
import faintwind.job.air.MeasureFlow;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.Reading;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.Background;
import java.util.List;
import java.util.Optional;

/** The flow through an opening: what it is, its points one after another, what comes of them. */
public final class FlowModel extends PlacesModel<FlowModel.View> {
  /** Cautions that stand before the points. */
  static final String CAUTION = "opening";

  static final String HIVE_CAUTION = "opening-hive";

  private final OpeningForm form;
  private Optional<OpeningGuide> laid = Optional.empty();

  /**
   * What there is to show.
   *
   * @param guide the opening with its points; empty while it is asked for
   * @param measured what comes of the speeds; empty while one is missing
   * @param unread cautions that nobody has read; the points are covered until then
   * @param missing points that are not filled in
   * @param problems sentences with their place
   * @param refused whether they keep it from going on
   */
  public record View(
      Optional<OpeningGuide> guide,
      Optional<MeasureFlow> measured,
      long unread,
      int missing,
      List<String> problems,
      boolean refused) {
    static final View ASKING = asking(List.of());

    public View {
      problems = List.copyOf(problems);
    }

    private static View asking(List<String> refusals) {
      return new View(Optional.empty(), Optional.empty(), 0, 0, refusals, !refusals.isEmpty());
    }
  }

  /** A model that knows no opening yet. */
  public FlowModel(Messages words, Background background, AirWays ways) {
    super(words, background, ways, View.ASKING);
    form = new OpeningForm(words);
    say();
  }

  /** Goes on with the instrument as it is open now. */
  public void at(AirWays instrument, Optional<Calibration> calibration) {
    goOn(instrument);
    calibration.ifPresent(live()::by);
    calibration.ifPresent(by -> form.ball_mm(1000 * by.formula().diameter_m()));
    View now = view().get();
    put(shown(now.guide(), now.measured(), now.problems(), now.refused()));
    say();
  }

  public OpeningForm form() {
    return form;
  }

  /** Lays the points of the opening that was said; what was read stays where it is the same. */
  public void lay() {
    changed();
    Checked<OpeningGuide> guide = form.guide();
    if (guide instanceof Checked.Ok<OpeningGuide> ok) {
      if (!laid.equals(Optional.of(ok.value()))) {
        laid = Optional.of(ok.value());
        readings().rows().clear();
        points(ok.value()).forEach(point -> readings().add(point.name()));
      }
      put(shown(laid, Optional.empty(), lines(ok.notes()), false));
      if (readings().missing() == 0) {
        work();
      }
    } else {
      put(View.asking(lines(guide.problems())));
    }
    say();
  }

  private View shown(
      Optional<OpeningGuide> guide,
      Optional<MeasureFlow> measured,
      List<String> problems,
      boolean refused) {
    long unread = guide.stream().flatMap(g -> cautions(g).stream()).filter(this::isOpen).count();
    return new View(guide, measured, unread, readings().missing(), problems, refused);
  }

  private static List<FlowPoint> points(OpeningGuide guide) {
    return guide.traverse().points();
  }

  /** Asks for the opening again; nothing that was read is given up yet. */
  public void again() {
    changed();
    put(View.ASKING);
    say();
  }

  /** The cautions of an opening, in their order. */
  List<String> cautions(OpeningGuide guide) {
    boolean hive = guide.traverse().opening().shape() == Opening.Shape.HIVE;
    return hive ? List.of(CAUTION, HIVE_CAUTION) : List.of(CAUTION);
  }

  private boolean isOpen(String caution) {
    return readBy(caution).isEmpty();
  }

  /** Who read a caution, in words; empty where nobody has. */
  Optional<String> readBy(String caution) {
    return ways().cautionReadBy(caution);
  }

  /** A caution was read. */
  public void read(String caution) {
    ways().cautionRead(caution);
    View now = view().get();
    put(shown(now.guide(), now.measured(), now.problems(), now.refused()));
    say();
  }

  @Override
  void tell(List<String> problems, boolean refused) {
    if (!problems.isEmpty()) {
      View now = view().get();
      put(shown(now.guide(), now.measured(), problems, refused));
    }
    say();
  }

  @Override
  void work() {
    View now = view().get();
    changed();
    if (now.guide().isPresent()) {
      OpeningGuide guide = now.guide().get();
      Checked<List<Reading>> filled = readings().filled();
      boolean waits = filled.isOk() && readings().missing() > 0;
      put(
          waits
              ? shown(now.guide(), Optional.empty(), List.of(), false)
              : filled
                  .then(all -> guide.flow(all, readings().source()))
                  .fold(
                      (value, notes) -> shown(now.guide(), Optional.of(value), lines(notes), false),
                      problems -> shown(now.guide(), Optional.empty(), lines(problems), true)));
    }
    say();
  }

  /** Keeps table and result with the instrument. */
  public void keep() {
    View now = view().get();
    if (now.guide().isPresent()
        && now.measured().isPresent()
        && readings().filled() instanceof Checked.Ok<List<Reading>> ok) {
      ways().keepFlow(now.guide().get(), ok.value(), readings().inputs(), this::kept);
    }
  }

  /** What is typed and not kept, of an instrument. */
  Optional<Unsaved> unsaved(String instrument) {
    Act keep = new Act("flow-keep", text("air.keep"), this::keep);
    return unsaved(text("air.unsaved-flow", instrument), view().get().measured().map(done -> keep));
  }

  private String nextPlace() {
    Optional<OpeningGuide> guide = view().get().guide();
    int at = readings().next().map(readings().rows()::indexOf).orElse(-1);
    return guide.isEmpty() || at < 0
        ? ""
        : new FlowText(words())
            .point(guide.get().traverse().opening(), points(guide.get()).get(at));
  }

  @Override
  void say() {
    View now = view().get();
    if (now.guide().isEmpty()) {
      Act lay = new Act("opening-lay", text("air.opening.lay"), this::lay);
      say(
          Next.say(
                  now.refused() ? Mark.BLOCKED : Mark.READY,
                  text(now.refused() ? "air.opening.refused" : "air.opening.ask"),
                  lay)
              .withDetail(
                  text(laid.isEmpty() ? "air.opening.ask-detail" : "air.opening.laid-detail")));
      return;
    }
    Act again = new Act("opening-again", text("air.opening.again"), this::again);
    if (now.unread() > 0) {
      say(Next.say(Mark.BLOCKED, text("window.next.caution", now.unread())).withOther(again));
    } else if (now.measured().isPresent()) {
      say(sayFlow(now.measured().get()).withOther(again));
    } else {
      say(sayPoint().withOther(again));
    }
  }

  private Next sayPoint() {
    if (readings().next().isEmpty()) {
      return Next.say(Mark.BLOCKED, text("air.flow.refused"));
    }
    String place = nextPlace();
    String go = text("air.flow.go", place);
    return live()
        .next(go, place)
        .orElseGet(
            () ->
                Next.say(Mark.DOING, go)
                    .withDetail(text("air.flow.go-detail", readings().missing())));
  }

  private Next sayFlow(MeasureFlow measured) {
    String flow = new FlowText(words()).sentence(measured.flow());
    if (!kept().isEmpty()) {
      Act anew = new Act("flow-anew", text("air.flow.anew"), readings()::clear);
      return Next.say(Mark.DONE, flow, anew).withDetail(kept());
    }
    Act keep = new Act("flow-keep", text("air.keep"), this::keep);
    boolean faint = measured.flow().tooFaint();
    return Next.say(faint ? Mark.ATTENTION : Mark.DONE, flow, keep)
        .withDetail(text("air.flow.keep-detail"));
  }
}
