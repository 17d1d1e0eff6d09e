package faintwind.ui.formula;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.Calibration;
import faintwind.calibration.Evidence;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance.AtSpeed;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.response.EstimateRise;
import faintwind.calibration.response.TypedFormula;
import faintwind.job.formula.FittedFormula;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.report.figure.BandPlots;
import faintwind.report.figure.CalibrationPlots;
import faintwind.report.figure.RecordingPlots;
import faintwind.report.figure.RecordingTrace;
import faintwind.report.figure.StraightLinePlots;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Note;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says and draws what a fit found. */
final class FormulaWords {
  private static final double K95 = 1.96;
  private static final double GOOD_PCT = 6;
  private static final double WAYS_AGREE = 0.3;
  private static final double FORETOLD = 0.10;
  private static final List<Double> TABLE_M_S = List.of(0.1, 0.3, 1.0, 3.0);

  private final Messages words;
  private final FittedFormula formula;
  private final Calibration calibration;

  FormulaWords(Messages words, FittedFormula formula) {
    this.words = words;
    this.formula = formula;
    this.calibration = formula.calibration();
  }

  private double lowest_m_s() {
    return Math.max(calibration.coverage().lowest_m_s(), calibration.performance().floor_m_s());
  }

  private double within_pct() {
    double highest = calibration.coverage().highest_m_s();
    return 100
        * calibration.performance().speeds().stream()
            .filter(s -> s.speed_m_s() >= 0.99 * lowest_m_s() && s.speed_m_s() <= 1.01 * highest)
            .mapToDouble(s -> s.u95_m_s() / s.speed_m_s())
            .max()
            .orElse(0);
  }

  /** The verdict in a sentence. */
  String title() {
    return words.text(
        mark() == Mark.DONE ? "formula.title.good" : "formula.title.care",
        Numerals.digits(lowest_m_s(), 2),
        Numerals.digits(calibration.coverage().highest_m_s(), 2),
        Numerals.digits(Math.ceil(10 * within_pct()) / 10, 2));
  }

  Mark mark() {
    boolean meets = calibration.evidence().build().filter(BuildAgreement::disagrees).isEmpty();
    return within_pct() <= GOOD_PCT && formula.shortfalls().isEmpty() && meets
        ? Mark.DONE
        : Mark.ATTENTION;
  }

  /** What was fitted, and the smallest speed. */
  String how() {
    List<RunOutcome> runs = calibration.evidence().runs();
    long left = runs.stream().filter(r -> !r.used()).count();
    return words.text(
        "formula.how",
        runs.size(),
        left,
        Numerals.digits(calibration.performance().floor_m_s(), 2));
  }

  /** One parameter: name, value, 95 % range with its unit. */
  record ParameterLine(String name, String value, String range) {}

  List<ParameterLine> parameters() {
    return calibration.formula().parameters().stream()
        .map(
            p ->
                new ParameterLine(
                    p.name().replace('_', ' '),
                    Numerals.digits(p.value(), 4),
                    ("\u00b1 " + Numerals.digits(K95 * p.u(), 2) + " " + unit(p)).strip()))
        .toList();
  }

  private static String unit(Parameter p) {
    return p.unit().equals("1") ? "" : p.unit();
  }

  /** What the parameters are, with the full equation. */
  Note why() {
    return new Note(
        words.text("formula.parameters.why"),
        words.text("formula.parameters.text"),
        List.of(words.text("formula.equation"), typed()),
        words.text("formula.equation.of", words.text(calibration.formula().equation())),
        words.text("formula.parameters.source"));
  }

  /** The formula in this instrument's numbers. */
  String typed() {
    TypedFormula typed =
        TypedFormula.of(calibration.formula(), calibration.signal(), calibration.coverage());
    return words.text(typed.key(), typed.numbers().toArray());
  }

  /** Where that holds. */
  String valid() {
    return words.text("typed.valid", calibration.validRange().toArray());
  }

  /** One line of the table of speeds. */
  record SureLine(String speed, String u95, String metal, String estimate) {}

  List<SureLine> howSure() {
    List<SureLine> lines = new ArrayList<>();
    for (double speed : TABLE_M_S) {
      atSpeed(speed)
          .ifPresent(
              s ->
                  lines.add(
                      new SureLine(
                          Numerals.digits(speed, 2) + mark(speed),
                          "\u00b1 " + Numerals.digits(s.u95_m_s(), 2),
                          Numerals.digits(s.rise_s() / 60, 2) + " min",
                          Numerals.digits(EstimateRise.s(calibration, s.speed_m_s()), 2) + " s")));
    }
    return lines;
  }

  private Optional<AtSpeed> atSpeed(double speed_m_s) {
    return calibration.performance().speeds().stream()
        .min(Comparator.comparingDouble(s -> Math.abs(s.speed_m_s() - speed_m_s)))
        .filter(s -> Math.abs(s.speed_m_s() - speed_m_s) < 0.05 * speed_m_s);
  }

  private String mark(double speed_m_s) {
    return calibration.coverage().isBeyond(speed_m_s) ? "*" : "";
  }

  /** What the mark behind a speed says; empty where no speed carries one. */
  Optional<String> beyond() {
    boolean any =
        TABLE_M_S.stream()
            .anyMatch(
                speed -> atSpeed(speed).isPresent() && calibration.coverage().isBeyond(speed));
    return any ? Optional.of(words.text("calibration-page.beyond")) : Optional.empty();
  }

  /** One check: a mark, a strong line, a fine line. */
  record CheckLine(Mark mark, String name, String detail) {}

  List<CheckLine> checks() {
    List<CheckLine> lines = new ArrayList<>();
    Evidence evidence = calibration.evidence();
    evidence.monteCarlo().ifPresent(m -> lines.add(twoWays(m)));
    evidence.build().ifPresent(build -> lines.add(build(build)));
    foretold(evidence).ifPresent(lines::add);
    boolean shown = calibration.coverage().carriedAirShown();
    lines.add(
        check(
            shown,
            shown ? "formula.check.carried" : "formula.check.carried.not",
            shown ? carried() : words.text("formula.check.carried.not.detail")));
    lines.add(
        check(
            true,
            "formula.check.residuals",
            words.text(
                "formula.check.residuals.detail",
                Numerals.digits(evidence.residuals().rms(), 2),
                calibration.signal().unit().symbol(),
                Numerals.grouped(evidence.residuals().rows()))));
    if (evidence.candidates().size() > 1) {
      lines.add(
          check(
              true,
              "formula.check.model",
              words.text(
                  "formula.check.model.detail",
                  calibration.formula().model(),
                  evidence.candidates().size())));
    }
    return lines;
  }

  private String carried() {
    return calibration
        .coverage()
        .arm()
        .map(arm -> words.text("formula.check.carried.shown", arm.carriedAir().toArray()))
        .orElseGet(() -> words.text("formula.check.carried.detail"));
  }

  private CheckLine build(BuildAgreement build) {
    List<String> numbers =
        build.rows().stream()
            .filter(BuildAgreement.Row::judged)
            .sorted(Comparator.comparingDouble(row -> -Math.abs(row.en().value())))
            .limit(2)
            .map(this::build)
            .toList();
    return check(
        !build.disagrees(),
        build.disagrees() ? "formula.check.build.not" : "formula.check.build",
        String.join("; ", numbers));
  }

  private String build(BuildAgreement.Row row) {
    return words.text(
        "formula.check.build.detail",
        words.text("build-quantity." + row.quantity().word()),
        withUnit(row.found(), row.quantity().unit()),
        withUnit(row.says(), row.quantity().unit()),
        Numerals.digits(row.en().value(), 2));
  }

  private static String withUnit(double number, String unit) {
    String digits = Numerals.digits(number, 3);
    return unit.equals("1") ? digits : digits + "\u00a0" + unit;
  }

  private CheckLine twoWays(Evidence.MonteCarloSummary study) {
    boolean agree = Math.abs(study.ratio() - 1) < WAYS_AGREE;
    return check(
        agree,
        agree ? "formula.check.two-ways" : "formula.check.two-ways.not",
        words.text(
            "formula.check.two-ways.detail", study.refits(), Numerals.digits(study.ratio(), 2)));
  }

  private Optional<CheckLine> foretold(Evidence evidence) {
    return evidence.leaveOneOut().stream()
        .max(Comparator.comparingDouble(l -> Math.abs(relative(l))))
        .map(this::foretold);
  }

  private CheckLine foretold(Evidence.LeftOut worst) {
    boolean good = Math.abs(relative(worst)) < FORETOLD;
    return check(
        good,
        good ? "formula.check.left-out" : "formula.check.left-out.not",
        words.text(
            "formula.check.left-out.detail",
            worst.run(),
            Numerals.signed(100 * relative(worst), 1)));
  }

  private static double relative(Evidence.LeftOut run) {
    return run.foretold_m_s() / run.speed_m_s() - 1;
  }

  private CheckLine check(boolean good, String key, String detail) {
    return new CheckLine(good ? Mark.DONE : Mark.ATTENTION, words.text(key), detail);
  }

  /** Warnings in words. */
  List<String> warnings() {
    return calibration.warnings().stream().map(words::line).toList();
  }

  PlotFigure loss() {
    return new CalibrationPlots(words).loss(calibration, formula.runs());
  }

  PlotFigure errors() {
    return new CalibrationPlots(words)
        .errors(
            calibration,
            formula
                .look()
                .fold(
                    (look, notes) -> StraightLinePlots.errors(look.straightLine()),
                    problems -> List.of()));
  }

  PlotFigure u95() {
    return new BandPlots(words).u95(calibration);
  }

  PlotFigure response() {
    return new BandPlots(words).response(calibration);
  }

  /** The straight-line look; empty where {@link #noStraightLine} says why. */
  Optional<PlotFigure> straightLine() {
    return formula
        .look()
        .fold(
            (look, notes) ->
                new StraightLinePlots(words)
                    .figure(look.straightLine(), calibration.signal().unit().symbol()),
            problems -> Optional.empty());
  }

  /** Why the recordings are not drawn with what was fitted, where they are not. */
  Optional<String> recordingsNote(boolean drawing) {
    if (!formula.recordings().isEmpty()) {
      return Optional.empty();
    }
    if (drawing) {
      return Optional.of(words.text("formula.recordings.drawing"));
    }
    return Optional.of(
        words.text(
            formula.look().isOk()
                ? "formula.recordings.other-formula"
                : "formula.recordings.not-at-hand"));
  }

  /** Why there is no straight-line look. */
  String noStraightLine() {
    return formula
        .look()
        .fold(
            (look, notes) -> words.text("formula.straight.none"),
            problems ->
                words.text("formula.straight.not-at-hand")
                    + " "
                    + problems.stream().map(words::sentence).collect(Collectors.joining(" ")));
  }

  /** Measured and fitted, one figure a run file. */
  List<PlotFigure> recordings() {
    List<RecordingTrace> traces =
        RecordingPlots.fitted(
            RecordingPlots.traces(formula.runs()), formula.recordings(), formula.runs());
    RecordingPlots plots = new RecordingPlots(words);
    return traces.stream().map(plots::recording).toList();
  }
}
