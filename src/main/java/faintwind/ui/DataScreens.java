package faintwind.ui;

import faintwind.calibration.plan.PlannedSession;
import faintwind.job.EnteredFile;
import faintwind.job.record.KeepRuns;
import faintwind.job.turntable.PlanTurntable;
import faintwind.record.Event;
import faintwind.record.Event.FileRole;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import faintwind.ui.design.DesignModel;
import faintwind.ui.design.DesignScreen;
import faintwind.ui.field.FieldModel;
import faintwind.ui.field.FieldScreen;
import faintwind.ui.field.InstrumentField;
import faintwind.ui.formula.FormulaModel;
import faintwind.ui.formula.FormulaModels;
import faintwind.ui.formula.FormulaScreen;
import faintwind.ui.formula.InstrumentFormula;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Screen;
import faintwind.ui.instrument.CautionWords;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.turntable.LiveStart;
import faintwind.ui.turntable.LiveTables;
import faintwind.ui.turntable.TurntableModel;
import faintwind.ui.turntable.TurntablePlanModel;
import faintwind.ui.turntable.TurntablePlanView;
import faintwind.ui.turntable.TurntableScreen;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;

/** Makes the screens that show data, each on what the open instrument has on record. */
final class DataScreens {
  private DataScreens() {}

  /** The design on record, or the starting one. */
  static Screen design(Desk desk, OpenInstrument instrument) {
    DesignModel model =
        new DesignModel(
            desk.words(),
            desk.background(),
            new DesignModel.Ways(
                json ->
                    instrument.enter(
                        enter -> enter.plain(Optional.empty(), new Event.DesignChosen(json, ""))),
                name -> desk.files().save(desk.text("design.next.parts.act"), name),
                () -> desk.go().accept(Place.MAKE)));
    DesignScreen screen = new DesignScreen(desk, model);
    model.begin(instrument.state().designJson(), Optional.empty());
    return screen;
  }

  /** The turntable, with the runs kept last. */
  static Screen turntable(
      Desk desk,
      OpenInstrument instrument,
      LiveTables tables,
      Consumer<Optional<PlannedSession>> rehearse) {
    TurntableModel model =
        new TurntableModel(
            desk.words(),
            desk.background(),
            table -> {
              onceKept(instrument, () -> desk.go().accept(Place.FORMULA));
              tables.forgetTyped(instrument.folder());
              instrument.enter(enter -> KeepRuns.keep(instrument.folder(), table, enter));
            },
            tables.typed(instrument.folder()));
    runsTable(instrument).ifPresent(model::open);
    tables.of(instrument.folder()).ifPresent(model::show);
    Consumer<Path> over =
        table -> {
          instrument.enter(enter -> KeepRuns.recorded(instrument.folder(), table, enter));
          model.over(table);
        };
    tables.whenOver(instrument.folder(), over);
    tables
        .recording(instrument.folder())
        .whenOver(recorded(instrument, FileRole.RUN, model::recorded));
    LiveTables.Answers answers = new LiveTables.Answers(model::show, over, model::notBegun);
    return new TurntableScreen(
            desk,
            model,
            CautionWords.readBy(desk, instrument, TurntableScreen.CAUTION),
            event -> instrument.enter(enter -> enter.acknowledgeOnScreen(TurntableScreen.CAUTION)))
        .withPlan(new TurntablePlanView(desk, plan(desk, instrument)))
        .withLogger(logger(desk, instrument, tables))
        .withLive(
            new LiveStart(
                desk, instrument, tables, new LiveStart.Ways(answers, rehearse, model::offer)));
  }

  /** The planner, with the plan kept last. */
  private static TurntablePlanModel plan(Desk desk, OpenInstrument instrument) {
    TurntablePlanModel model =
        new TurntablePlanModel(
            desk.words(),
            desk.background(),
            new TurntablePlanModel.Ways(
                () -> PlanTurntable.response(instrument.folder(), OffsetDateTime.now(desk.clock())),
                planned ->
                    instrument.enter(
                        enter -> PlanTurntable.keep(instrument.folder(), planned, enter)),
                name -> desk.files().save(desk.text("turntable.plan.sheet"), name),
                instrument.name()));
    InstrumentState state = instrument.state();
    desk.background()
        .runQuietly(
            watch -> PlanTurntable.kept(instrument.folder(), state),
            kept ->
                kept.fold((plan, notes) -> plan, problems -> Optional.<PlannedSession>empty())
                    .ifPresent(model::show),
            broke -> {});
    return model;
  }

  /** The formula of the runs kept last, or the one in force; a fit that goes on is found again. */
  static Screen formula(Desk desk, OpenInstrument instrument, FormulaModels models) {
    InstrumentFormula ways = new InstrumentFormula(desk, instrument);
    FormulaModel model =
        models.of(
            instrument.folder(),
            runsTable(instrument),
            ways,
            () -> new FormulaModel(desk.words(), desk.background(), ways));
    return new FormulaScreen(desk, model);
  }

  /** A field log by the calibration in force. */
  static FieldScreen field(Desk desk, OpenInstrument instrument, LiveTables tables) {
    FieldModel model = fieldModel(desk);
    InstrumentField ways = new InstrumentField(desk, instrument);
    model.at(ways);
    inForce(instrument).ifPresent(model::useCalibration);
    tables
        .recording(instrument.folder())
        .whenOver(recorded(instrument, FileRole.FIELD_LOG, model::open));
    FieldScreen screen = new FieldScreen(desk, model).withLogger(logger(desk, instrument, tables));
    ways.kept(
        logs -> {
          screen.withKept(logs);
          if (!logs.isEmpty() && model.view().get().look().isEmpty()) {
            model.openFirst(logs.get(logs.size() - 1).file());
          }
        });
    model.whenKept(() -> ways.kept(screen::withKept));
    return screen;
  }

  /** A field log by a calibration file that lies with no instrument here. */
  static Screen field(Desk desk, Path calibration) {
    FieldModel model = fieldModel(desk);
    model.useCalibration(calibration);
    return new FieldScreen(desk, model);
  }

  private static FieldModel fieldModel(Desk desk) {
    return new FieldModel(
        desk.words(),
        desk.background(),
        name -> desk.files().save(desk.text("field.next.save.act"), name));
  }

  /** A recording that is over is a file of the instrument, whatever becomes of it. */
  static Consumer<Path> recorded(OpenInstrument instrument, FileRole role, Consumer<Path> then) {
    return file -> {
      instrument.enter(
          enter ->
              enter.plain(Optional.empty(), EnteredFile.added(instrument.folder(), role, file)));
      then.accept(file);
    };
  }

  static LoggerWays logger(Desk desk, OpenInstrument instrument, LiveTables tables) {
    return new LoggerWays(desk, instrument.folder(), tables.recording(instrument.folder()));
  }

  /** Entries are written in the background: what needs the table waits until it is kept. */
  private static void onceKept(OpenInstrument instrument, Runnable then) {
    int before = runsTables(instrument).size();
    instrument
        .now()
        .addListener(
            new ChangeListener<OpenInstrument.Standpoint>() {
              @Override
              public void changed(
                  ObservableValue<? extends OpenInstrument.Standpoint> now,
                  OpenInstrument.Standpoint old,
                  OpenInstrument.Standpoint fresh) {
                if (runsTables(instrument).size() > before) {
                  now.removeListener(this);
                  then.run();
                }
              }
            });
  }

  private static List<Standing<Event.FileAdded>> runsTables(OpenInstrument instrument) {
    return instrument.state().standing(Event.FileAdded.class).stream()
        .filter(line -> line.event().kind() == FileRole.RUNS_TABLE)
        .toList();
  }

  /** The runs table that was kept last. */
  static Optional<Path> runsTable(OpenInstrument instrument) {
    List<Standing<Event.FileAdded>> tables = runsTables(instrument);
    return tables.isEmpty()
        ? Optional.empty()
        : Optional.of(instrument.folder().resolve(tables.get(tables.size() - 1).event().file()));
  }

  /** The calibration that counts now. */
  static Optional<Path> inForce(OpenInstrument instrument) {
    return instrument
        .state()
        .last(Event.CalibrationPutInForce.class)
        .map(line -> instrument.folder().resolve(line.event().file()));
  }
}
