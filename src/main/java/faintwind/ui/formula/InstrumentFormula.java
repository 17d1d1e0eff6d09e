package faintwind.ui.formula;

import faintwind.guide.Due;
import faintwind.guide.InForceGate;
import faintwind.guide.Situation;
import faintwind.job.JobWatch;
import faintwind.job.formula.Calibrate;
import faintwind.job.formula.ExportFormula;
import faintwind.job.formula.KeepFormula;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.job.record.WriteReport;
import faintwind.message.Checked;
import faintwind.message.DateText;
import faintwind.message.Problem;
import faintwind.record.Event;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.record.Standing;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.OpenInstrument;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** The formula of the instrument that is open. */
public final class InstrumentFormula implements FormulaWays {
  private final Desk desk;
  private final OpenInstrument instrument;
  private final KeepFormula job;
  private static final int PRACTICE_REFITS = 20;

  private final Optional<String> last;
  private final InstrumentState state;

  public InstrumentFormula(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
    job = job(MeasuredWhen.NOT_SAID);
    // taken here, on the JavaFX thread: the jobs run on another
    state = instrument.state();
    last =
        state.lines().stream()
            .filter(Standing::stands)
            .flatMap(line -> file(line.event()).stream())
            .reduce((earlier, later) -> later);
  }

  private static Optional<String> file(Event event) {
    if (event instanceof Event.CalibrationMade made) {
      return Optional.of(made.file());
    }
    return event instanceof Event.CalibrationPutInForce put
        ? Optional.of(put.file())
        : Optional.empty();
  }

  private KeepFormula job(MeasuredWhen said) {
    Calibrate calibrate = new Calibrate(desk.clock(), desk.words(), settings(said));
    return new KeepFormula(instrument.folder(), calibrate);
  }

  /** Practice shows what happens; it need not be refitted as often as what is put in force. */
  private Calibrate.Settings settings(MeasuredWhen said) {
    int refits = instrument.rehearsal() ? PRACTICE_REFITS : Calibrate.USUAL_REFITS;
    return new Calibrate.Settings(
        Optional.empty(),
        refits,
        OptionalDouble.empty(),
        Optional.empty(),
        said,
        List.of(),
        Calibrate.RunFiles.WITH_THE_TABLE);
  }

  @Override
  public Checked<MeasuredKnown> known(Path runs) throws IOException {
    return MeasuredKnown.of(runs);
  }

  @Override
  public Checked<Kept> fit(Path runs, MeasuredWhen said, JobWatch watch) throws IOException {
    return job(said).fit(runs, watch);
  }

  @Override
  public void leaveOut(Path table, LeaveOut.Choice choice, Consumer<Checked<Path>> told) {
    instrument.enter(
        enter -> {
          Checked<List<Event>> events =
              LeaveOut.events(instrument.folder(), table, choice, desk.words());
          return events instanceof Checked.Ok<List<Event>> ok
              ? enter.plain(Optional.empty(), ok.value())
              : Checked.refused(events.problems());
        },
        answer -> told.accept(answer.map(entry -> counted(entry, table))));
  }

  private Path counted(JournalEntry entry, Path before) {
    return entry.event().attached().map(a -> instrument.folder().resolve(a.file())).orElse(before);
  }

  @Override
  public Optional<Checked<Kept>> read() throws IOException {
    return last.isPresent() ? Optional.of(job.read(last.get(), state)) : Optional.empty();
  }

  @Override
  public boolean isInForce(String file) {
    return state
        .last(Event.CalibrationPutInForce.class)
        .filter(line -> line.event().file().equals(file))
        .isPresent();
  }

  @Override
  public Kept drawnAgain(Kept kept, JobWatch watch) throws IOException {
    return job.drawnAgain(kept, state, watch);
  }

  @Override
  public void made(Kept kept) {
    instrument.enter(enter -> enter.plain(Optional.empty(), job.events(kept)));
  }

  @Override
  public InForceGate.Answer gate(Kept kept) {
    return InForceGate.check(
        instrument.checklist(),
        instrument.now().get().situation(),
        kept.file(),
        kept.formula().calibration());
  }

  @Override
  public List<Problem> whyNotExplained(String reason) {
    return InForceGate.refusals(instrument.state(), reason, instrument.who().get());
  }

  @Override
  public void forceExplained(String file, String reason) {
    instrument.enter(enter -> enter.forceExplained(file, reason));
  }

  @Override
  public void putInForce(String file) {
    enter(new Event.CalibrationPutInForce(file));
  }

  @Override
  public Checked<String> writeBuildLog() throws IOException {
    return instrument.writeLog(Optional.empty()).map(file -> WriteReport.KEPT_AS);
  }

  @Override
  public Checked<Path> export(String file, ExportFormula.Kind kind, Path target)
      throws IOException {
    return new ExportFormula(desk.words()).write(instrument.folder().resolve(file), kind, target);
  }

  @Override
  public Optional<String> due() {
    Situation situation = instrument.now().get().situation();
    return Due.ofInForce(instrument.checklist(), situation)
        .map(
            due ->
                desk.text(
                    due.isPast(situation.now()) ? "formula.due-now" : "formula.due",
                    DateText.day(desk.words(), due.at()),
                    desk.text(due.cause().key())));
  }

  @Override
  public boolean isOverdue() {
    Situation situation = instrument.now().get().situation();
    return Due.ofInForce(instrument.checklist(), situation)
        .filter(due -> due.isPast(situation.now()))
        .isPresent();
  }

  private void enter(Event event) {
    instrument.enter(enter -> enter.plain(Optional.empty(), event));
  }

  @Override
  public void toTurntable() {
    desk.go().accept(Place.TURNTABLE);
  }

  @Override
  public void toField() {
    desk.go().accept(Place.FIELD);
  }
}
