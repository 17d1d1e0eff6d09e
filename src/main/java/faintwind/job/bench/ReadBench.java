package faintwind.job.bench;

import faintwind.files.FolderPrint;
import faintwind.files.calibration.CalibrationGlance;
import faintwind.files.calibration.CalibrationGlance.Range;
import faintwind.guide.Due;
import faintwind.guide.Pressing;
import faintwind.guide.Progress;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.Remedies;
import faintwind.guide.Situation;
import faintwind.guide.StepState;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.StepClock;
import faintwind.job.World;
import faintwind.job.bench.BenchRow.Clock;
import faintwind.job.bench.BenchRow.InForce;
import faintwind.job.bench.BenchRow.JarLevel;
import faintwind.job.bench.BenchRow.Kind;
import faintwind.job.bench.BenchRow.Need;
import faintwind.job.design.KeptDesigns;
import faintwind.job.design.Sized;
import faintwind.job.record.InstrumentView;
import faintwind.job.record.KeptGuides;
import faintwind.message.AmountText;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.physics.sheet.DesignSheet;
import faintwind.record.Event.CalibrationPutInForce;
import faintwind.record.Event.HandedOver;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.Retired;
import faintwind.record.Event.Waived;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads every instrument of a folder; a broken one is a row with its reason. */
public final class ReadBench {
  private final Messages words;
  private final KeptGuides guides;

  /** Read at the first need: rows that are known need none. */
  private Optional<KeptDesigns> designs = Optional.empty();

  /**
   * An instrument that was looked at.
   *
   * @param view its folder
   * @param progress where its steps stand
   * @param row what the bench says of it
   */
  public record Looked(InstrumentView view, Progress progress, BenchRow row) {}

  public ReadBench(Messages words) {
    this.words = words;
    guides = new KeptGuides(words.locale());
  }

  /**
   * The instruments, those that need somebody first.
   *
   * @throws IOException where the folder itself cannot be read
   */
  public List<BenchRow> rows(Path folder, OffsetDateTime now) throws IOException {
    KeptRows kept = new KeptRows(folder, words.locale(), now);
    List<BenchRow> read =
        BenchFolder.instruments(folder).parallelStream()
            .map(instrument -> row(instrument, now, kept))
            .toList();
    List<BenchRow> rows =
        CopiedRows.told(read, words).stream().sorted(BenchRow.PRESSING_FIRST).toList();
    kept.close();
    return rows;
  }

  private BenchRow row(Path folder, OffsetDateTime now, KeptRows kept) {
    try {
      String print = FolderPrint.of(folder);
      return kept.row(folder, print).orElseGet(() -> kept.worked(row(folder, now), print));
    } catch (IOException world) {
      return broken(folder, words.sentence(World.problem(world)));
    }
  }

  private BenchRow row(Path folder, OffsetDateTime now) {
    try {
      return look(folder, now)
          .fold((looked, notes) -> looked.row(), p -> broken(folder, words.lines(p)));
    } catch (IOException world) {
      return broken(folder, words.sentence(World.problem(world)));
    }
  }

  /**
   * Looks at one instrument.
   *
   * @return refused where its checklist cannot be read
   * @throws IOException where something that is there cannot be read
   */
  public Checked<Looked> look(Path folder, OffsetDateTime now) throws IOException {
    try {
      return InstrumentView.open(folder, this::sheetOf, guides).map(view -> look(view, now));
    } catch (UncheckedIOException world) {
      throw world.getCause();
    }
  }

  private Looked look(InstrumentView view, OffsetDateTime now) {
    Situation situation = view.situation(now);
    Progress progress = Progress.of(view.checklist(), situation);
    return new Looked(view, progress, row(view, situation, progress));
  }

  static BenchRow broken(Path folder, String why) {
    return BenchRow.bare(
        folder, String.valueOf(folder.getFileName()), new Need(Kind.BROKEN, "", "", why));
  }

  private synchronized Optional<DesignSheet> sheetOf(String json) {
    try {
      if (designs.isEmpty()) {
        designs = Optional.of(KeptDesigns.withShippedParts());
      }
      return designs.get().sized(json).map(Sized::sheet);
    } catch (IOException world) {
      throw new UncheckedIOException(world);
    }
  }

  private BenchRow row(InstrumentView view, Situation situation, Progress progress) {
    InstrumentState state = view.state();
    Path folder = view.path();
    String name = state.name().orElseGet(() -> String.valueOf(folder.getFileName()));
    if (state.rehearsal()) {
      return BenchRow.bare(folder, name, new Need(Kind.REHEARSAL, "", "", ""));
    }
    Optional<Standing<Retired>> retired = state.last(Retired.class);
    if (retired.isPresent()) {
      String why = retired.get().event().why();
      return BenchRow.bare(folder, name, new Need(Kind.ARCHIVED, "", "", why));
    }
    Optional<String> given = given(state, words);
    if (given.isPresent()) {
      return BenchRow.bare(folder, name, new Need(Kind.HANDED_OVER, "", "", given.get()));
    }
    Optional<InForce> inForce = inForce(view, situation, guides::range);
    return new BenchRow(
        folder,
        name,
        need(view, situation, progress, inForce),
        inForce,
        jar(view, situation, words),
        clocks(progress, situation),
        state.standing(Waived.class).size());
  }

  /** Whether it was handed over, and nothing was entered since. */
  public static boolean isHandedOver(InstrumentState state) {
    return handedOver(state).isPresent();
  }

  /** To whom it was handed over, and when; empty where something was entered since. */
  public static Optional<String> given(InstrumentState state, Messages words) {
    return handedOver(state)
        .map(
            line -> {
              String since = DateText.day(words, line.at());
              return words.text("bench-list.given", line.event().to(), since);
            });
  }

  /** The hand-over, where it is the last that happened. */
  private static Optional<Standing<HandedOver>> handedOver(InstrumentState state) {
    List<Standing<?>> standing = state.lines().stream().filter(Standing::stands).toList();
    return standing.isEmpty()
        ? Optional.empty()
        : state
            .last(HandedOver.class)
            .filter(line -> line.entry().equals(standing.get(standing.size() - 1).entry()));
  }

  private Need need(
      InstrumentView view, Situation situation, Progress progress, Optional<InForce> inForce) {
    if (!view.writable()) {
      return new Need(Kind.BROKEN, "", "", words.lines(view.problems()));
    }
    if (!view.faults().isEmpty()) {
      return new Need(Kind.ATTENTION, "", "", words.lines(view.faults()));
    }
    Optional<StepProgress> pressing = Pressing.of(progress);
    Optional<InForce> due = inForce.filter(InForce::past);
    boolean more = pressing.map(ReadBench::kind).filter(k -> k.compareTo(Kind.DUE) < 0).isPresent();
    if (due.isPresent() && !more) {
      return new Need(Kind.DUE, "", "", words.text(due.get().due().cause().key()));
    }
    if (pressing.isEmpty()) {
      return new Need(Kind.IN_USE, "", "", "");
    }
    StepProgress step = pressing.get();
    String stage = view.checklist().stageOf(step.step().id()).map(Stage::title).orElse("");
    String reason =
        step.reasons().stream()
            .filter(r -> !Pressing.stopsItself(step) || Pressing.isStop(r))
            .findFirst()
            .or(() -> step.doubts().stream().findFirst())
            .map(words::sentence)
            .orElse("");
    return new Need(
        kind(step), stage, step.step().title(), withRemedy(reason, view, situation, step));
  }

  /** The reason, and for a step that says stop the likeliest way out that speaks of it. */
  private static String withRemedy(
      String reason, InstrumentView view, Situation situation, StepProgress step) {
    if (!Pressing.stopsItself(step)) {
      return reason;
    }
    Set<String> names =
        step.step().asks().readings().stream().map(Reading::name).collect(Collectors.toSet());
    return Remedies.of(view.checklist(), situation).stream()
        .filter(remedy -> remedy.when().names().stream().anyMatch(names::contains))
        .findFirst()
        .map(remedy -> reason + ". " + Remedies.todo(view.checklist(), remedy, situation))
        .orElse(reason);
  }

  private static Kind kind(StepProgress step) {
    if (Pressing.stopsItself(step)) {
      return Kind.STOP;
    }
    return switch (step.state()) {
      case NEEDS_ATTENTION -> Kind.ATTENTION;
      case DOING -> Kind.DOING;
      case WAITING -> Kind.WAITING;
      case READY, BLOCKED -> Kind.READY;
      case DONE, CORRECTED, NOT_NEEDED -> Kind.IN_USE;
    };
  }

  /** The calibration that counts; empty where none does. */
  public static Optional<InForce> inForce(InstrumentView view, Situation situation) {
    return inForce(view, situation, CalibrationGlance::range);
  }

  private static Optional<InForce> inForce(
      InstrumentView view, Situation situation, Function<Path, Optional<Range>> rangeOf) {
    return view.state()
        .last(CalibrationPutInForce.class)
        .flatMap(
            line ->
                Due.ofInForce(view.checklist(), situation)
                    .map(
                        due -> {
                          String file = line.event().file();
                          Optional<BenchRow.Range> range =
                              rangeOf
                                  .apply(view.path().resolve(file))
                                  .map(
                                      r ->
                                          new BenchRow.Range(
                                              r.lowest_m_s(), r.highest_m_s(), r.u95Share()));
                          return new InForce(file, range, due, due.isPast(situation.now()));
                        }));
  }

  /** The last jar check; empty where none was made. */
  public static Optional<JarLevel> jar(InstrumentView view, Situation situation, Messages words) {
    List<Standing<ReadingEntered>> checks =
        view.state().history(Due.JAR_STEP, Due.JAR_READING).stream()
            .filter(Standing::stands)
            .filter(line -> Double.isFinite(line.event().amount().value()))
            .toList();
    if (checks.isEmpty()) {
      return Optional.empty();
    }
    Standing<ReadingEntered> last = checks.get(checks.size() - 1);
    Optional<OffsetDateTime> since =
        view.state().last(CalibrationPutInForce.class).map(InstrumentState::countsFrom);
    Optional<Double> drift =
        checks.stream()
            .filter(line -> since.filter(line.at()::isBefore).isEmpty())
            .findFirst()
            .filter(first -> !first.equals(last))
            .flatMap(first -> new JarDrift(situation).between(first, last));
    return Optional.of(
        new JarLevel(
            AmountText.understood(last.event().amount(), words),
            last.at(),
            view.checklist()
                .step(Due.JAR_STEP)
                .flatMap(
                    step ->
                        step.reading(Due.JAR_READING)
                            .flatMap(r -> Verdicts.of(view.checklist(), step, r, situation)))
                .map(Reading.Judgement::verdict),
            drift));
  }

  private List<Clock> clocks(Progress progress, Situation situation) {
    return progress.steps().stream()
        .filter(s -> s.state() == StepState.WAITING)
        .flatMap(
            s ->
                s
                    .clock()
                    .filter(c -> c.stand() == StepClock.Stand.RUNNING)
                    .map(
                        c -> {
                          String label =
                              s.step()
                                  .asks()
                                  .clock()
                                  .map(spec -> situation.fill(spec.label(), words))
                                  .orElse("");
                          return new Clock(label, c.end());
                        })
                    .stream())
        .toList();
  }
}
