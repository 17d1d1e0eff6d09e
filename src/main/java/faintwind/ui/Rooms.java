package faintwind.ui;

import faintwind.calibration.plan.PlannedSession;
import faintwind.ui.field.FieldPage;
import faintwind.ui.formula.FormulaModels;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Place;
import faintwind.ui.frame.Screen;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.make.StepScreen;
import faintwind.ui.record.RecordScreen;
import faintwind.ui.turntable.LiveTables;
import java.util.Optional;
import java.util.function.Consumer;

/** The one place where the screens of an instrument are made. */
final class Rooms {
  private final Desk desk;
  private final LiveTables tables;
  private final FieldRoom field;
  private final Consumer<Optional<PlannedSession>> rehearse;
  private final FormulaModels formulas = new FormulaModels();

  /**
   * Rooms of a window.
   *
   * @param rehearse opens the folder for rehearsals, with a plan to be rehearsed there
   */
  Rooms(
      Desk desk, LiveTables tables, FieldRoom field, Consumer<Optional<PlannedSession>> rehearse) {
    this.desk = desk;
    this.tables = tables;
    this.field = field;
    this.rehearse = rehearse;
  }

  /** The screen of a place; Home is none of an instrument. */
  Screen at(Place place, OpenInstrument opened) {
    return switch (place) {
      case HOME ->
          throw new IllegalArgumentException("place = HOME, allowed those of an instrument");
      case RECORD -> new RecordScreen(desk, opened);
      case MAKE -> new StepScreen(desk, opened);
      case TURNTABLE -> DataScreens.turntable(desk, opened, tables, rehearse);
      case FIELD -> field.page(FieldPage.LOG, opened);
      case DESIGN -> DataScreens.design(desk, opened);
      case FORMULA -> DataScreens.formula(desk, opened, formulas);
    };
  }
}
