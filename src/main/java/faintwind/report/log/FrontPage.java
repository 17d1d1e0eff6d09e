package faintwind.report.log;

import faintwind.calibration.Calibration;
import faintwind.calibration.Measured;
import faintwind.guide.Due;
import faintwind.guide.InForceGate;
import faintwind.guide.Progress;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.design.Use;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.PhotoAdded;
import faintwind.record.Event.StepFinished;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.report.calibration.BuildMeetingTable;
import faintwind.report.figure.BandPlots;
import faintwind.report.page.Chapter;
import faintwind.report.page.Html;
import faintwind.report.page.Html.Fact;
import faintwind.report.page.LogWords;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a stranger must know of an instrument, on one page: what it is and for what, who built it
 * and when, what it can be trusted with and until when, what is open, and the hash that seals its
 * journal. Alone it is the certificate.
 */
final class FrontPage {
  static final String STYLE =
      """
      .front { page-break-after: always; } .front h1 { margin: 0 0 2px 0; }
      .front .lead { font-size: 11pt; margin: 0 0 10px 0; }
      .front-left { float: left; width: 60%; } .front-right { float: right; width: 37%; }
      .front-right img { max-width: 100%; max-height: 62mm; display: block; }
      .front-below { clear: both; } .front table.facts { width: 100%; margin: 0; table-layout: fixed; }
      .front table.facts th { width: 27%; white-space: nowrap; }
      .front table.seals th { width: 22%; } .front table.seals { margin-top: 10px; }
      .front h3 { margin: 10px 0 2px 0; } .front ul { margin: 2px 0 6px 0; padding-left: 18px; }
      .front table.brief { width: 100%; font-size: 8.5pt; margin: 0; }
      .front table.brief td, .front table.brief th, .front table.facts td, .front table.facts th { padding-top: 1px; padding-bottom: 1px; }
      .front .made-up { margin: 0 0 6px 0; }
      .front .standing { font-size: 12pt; font-weight: bold; border-left: 4px solid #036480;
        padding-left: 8px; margin: 0 0 10px 0; }
      .front .standing-care { border-color: #7e541b; }
      @media screen and (max-width: 640px) { .front-left, .front-right { float: none; width: 100%; }
        .front table.seals th { width: auto; white-space: normal; } }
      """;

  /** So many open items have room on a page. */
  static final int MOST_OPEN = 7;

  /** Beside a place to sign there is room for fewer. */
  static final int FEW_OPEN = 4;

  private final Chapter to;
  private final Html html;
  private final LogWords words;
  private final BuildLogContent content;
  private final Progress progress;
  private final InstrumentState state;
  private final OffsetDateTime now;
  private final int mostOpen;

  /**
   * A page.
   *
   * @param mostOpen how many of the open items are named; the rest is counted
   */
  FrontPage(Chapter to, BuildLogContent content, Progress progress, int mostOpen) {
    this.mostOpen = mostOpen;
    this.progress = progress;
    this.to = to;
    this.html = to.html();
    this.words = to.words();
    this.content = content;
    this.state = content.situation().state();
    this.now = content.situation().now();
  }

  /** The page. */
  void write() {
    html.block("front", this::inside);
  }

  private void inside() {
    html.element("h1", content.name());
    html.element("p", "lead", purpose());
    if (state.rehearsal()) {
      html.element("p", "made-up", words.text("build-log.rehearsal.sentence"));
    } else if (state.madeUp()) {
      html.element("p", "made-up", words.text("build-log.made-up.sentence"));
    }
    boolean care = inForce().isEmpty() || due().filter(d -> d.isPast(now)).isPresent();
    html.element("p", care ? "standing standing-care" : "standing", standing());
    html.block("front-left", () -> html.facts("facts", facts()));
    html.block("front-right", this::pictures);
    html.block("front-below", this::below);
  }

  private String purpose() {
    return content
        .use()
        .map(
            use ->
                words.text(
                    "front.purpose",
                    words.text("design.place." + place(use)),
                    Numerals.compact(use.slowest_m_s(), 2),
                    Numerals.compact(use.fastest_m_s(), 2)))
        .orElseGet(() -> words.text("front.purpose.none"));
  }

  private static String place(Use use) {
    return use.place().name().toLowerCase(Locale.ROOT);
  }

  private Optional<Standing<CalibrationPutInForce>> inForce() {
    return state.standing(CalibrationPutInForce.class).stream()
        .filter(
            line -> content.formula().filter(f -> f.file().equals(line.event().file())).isPresent())
        .reduce((earlier, later) -> later);
  }

  private Optional<Due> due() {
    return inForce()
        .map(
            line ->
                Due.of(content.checklist(), content.situation(), InstrumentState.countsFrom(line)));
  }

  /** What it may be used for now, in a sentence. */
  private String standing() {
    Optional<Due> due = due();
    if (content.formula().isEmpty() || inForce().isEmpty()) {
      return words.text("front.not-in-force");
    }
    Calibration c = content.formula().get().calibration();
    String lowest = Numerals.compact(lowest_m_s(c), 2);
    String highest = Numerals.compact(c.coverage().highest_m_s(), 2);
    String worst = Numerals.compact(worst_pct(c), 2);
    return due.filter(d -> d.isPast(now)).isPresent()
        ? words.text("front.due", lowest, highest, worst, words.text(due.get().cause().key()))
        : words.text("front.in-force", lowest, highest, worst);
  }

  private static double lowest_m_s(Calibration c) {
    return Math.max(c.coverage().lowest_m_s(), c.performance().floor_m_s());
  }

  private static double worst_pct(Calibration c) {
    return c.performance().speeds().stream()
        .filter(s -> s.speed_m_s() >= 0.99 * lowest_m_s(c))
        .filter(s -> s.speed_m_s() <= 1.01 * c.coverage().highest_m_s())
        .mapToDouble(s -> 100 * s.u95_m_s() / s.speed_m_s())
        .max()
        .orElse(0);
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    if (!state.lines().isEmpty()) {
      facts.add(new Fact(words.text("front.id"), mono(state.lines().get(0).entry())));
    }
    facts.add(fact("front.built", built()));
    inForce()
        .ifPresent(
            line ->
                facts.add(
                    fact(
                        "front.since",
                        words.time(InstrumentState.countsFrom(line)) + ", " + line.who())));
    content.formula().ifPresent(formula -> ofCalibration(formula.calibration(), facts));
    due()
        .ifPresent(
            due ->
                facts.add(
                    fact(
                        "front.due-date",
                        words.time(due.at()) + " (" + words.text(due.cause().key()) + ")")));
    facts.add(fact("front.meets", meets()));
    return facts;
  }

  /** What seals it, too wide for the left half. */
  private List<Fact> seals() {
    List<Fact> facts = new ArrayList<>();
    content
        .formula()
        .ifPresent(formula -> facts.add(new Fact(words.text("front.file"), mono(formula.file()))));
    if (!state.head().isEmpty()) {
      facts.add(new Fact(words.text("front.head"), mono(state.head())));
    }
    facts.add(fact("build-log.printed", words.time(now) + ", Faintwind " + content.software()));
    return facts;
  }

  private void ofCalibration(Calibration c, List<Fact> facts) {
    c.origin()
        .measured()
        .ifPresent(measured -> facts.add(fact("front.measured", measured(measured))));
    facts.add(
        fact(
            "front.range",
            words.text(
                "front.range.value",
                Numerals.compact(c.coverage().lowest_m_s(), 2),
                Numerals.compact(c.coverage().highest_m_s(), 2))));
    facts.add(fact("front.u95", words.text("front.u95.value", Numerals.compact(worst_pct(c), 2))));
    facts.add(
        fact(
            "front.smallest",
            words.text("front.smallest.value", Numerals.compact(c.performance().floor_m_s(), 2))));
  }

  private String measured(Measured measured) {
    List<String> parts = new ArrayList<>();
    parts.add(words.time(measured.last()));
    for (Measured.By by : Measured.By.values()) {
      measured.by(by).ifPresent(text -> parts.add(words.text("front.by." + by.word(), text)));
    }
    return String.join("; ", parts);
  }

  private String built() {
    String people =
        state.standing(StepFinished.class).stream()
            .map(Standing::who)
            .distinct()
            .collect(Collectors.joining(", "));
    if (state.lines().isEmpty() || people.isEmpty()) {
      return words.text("front.built.not");
    }
    OffsetDateTime last =
        state.standing(StepFinished.class).stream()
            .map(Standing::at)
            .max(OffsetDateTime::compareTo)
            .orElseThrow();
    long settled = progress.steps().stream().filter(s -> s.state().settled()).count();
    return words.text(
        "front.built.value",
        words.time(state.lines().get(0).at()),
        words.time(last),
        people,
        settled,
        progress.steps().size());
  }

  private String meets() {
    if (content.formula().isEmpty()) {
      return words.text("front.meets.no-calibration");
    }
    BuildLogContent.Formula formula = content.formula().get();
    if (formula.calibration().evidence().build().isEmpty()) {
      return words.text("front.meets.not-compared");
    }
    if (!formula.calibration().evidence().build().get().disagrees()) {
      return words.text("front.meets.yes");
    }
    Optional<Standing<Waived>> why = InForceGate.explanation(state, formula.file());
    return why.map(
            line ->
                words.text(
                    "front.meets.explained",
                    words.whoWhen(line.who(), line.at()),
                    line.event().reason()))
        .orElseGet(() -> words.text("front.meets.no"));
  }

  private void pictures() {
    state.standing(PhotoAdded.class).stream()
        .filter(line -> content.photos().containsKey(line.event().file()))
        .reduce((earlier, later) -> later)
        .ifPresent(
            line ->
                html.raw(
                    "<img src=\""
                        + content.photos().get(line.event().file())
                        + "\" alt=\""
                        + Html.escaped(words.text("front.photo", content.name()))
                        + "\"/>"));
    content
        .formula()
        .ifPresent(
            formula -> to.smallPlot(new BandPlots(words.messages()).u95(formula.calibration())));
  }

  private void below() {
    html.facts("facts seals", seals());
    List<Problem> open = InForceGate.open(content.checklist(), state, progress);
    List<String> lines = new ArrayList<>();
    content.notes().stream().limit(2).forEach(lines::add);
    open.stream().limit(mostOpen - lines.size()).forEach(p -> lines.add(words.messages().note(p)));
    int more = open.size() + content.notes().size() - lines.size();
    if (more > 0) {
      lines.add(words.text("front.open.more", more));
    }
    meeting();
    html.element("h3", words.text("front.open"));
    if (lines.isEmpty()) {
      to.say("front.open.none");
    }
    html.list(lines);
  }

  /** The numbers by fit and build, where they were compared. */
  private void meeting() {
    content
        .formula()
        .map(BuildLogContent.Formula::calibration)
        .filter(calibration -> calibration.evidence().build().isPresent())
        .ifPresent(
            calibration -> {
              html.element("h3", words.text("front.meeting"));
              new BuildMeetingTable(to).brief(calibration);
            });
  }

  private Fact fact(String key, String text) {
    return Fact.text(words.text(key), text);
  }

  private static String mono(String text) {
    return Html.span("mono", text);
  }
}
