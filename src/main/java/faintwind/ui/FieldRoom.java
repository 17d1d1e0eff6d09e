package faintwind.ui;

import faintwind.calibration.Calibration;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.record.Event.FileRole;
import faintwind.ui.air.AirModels;
import faintwind.ui.air.AirWays;
import faintwind.ui.air.FlowModel;
import faintwind.ui.air.FlowScreen;
import faintwind.ui.air.InstrumentAir;
import faintwind.ui.air.LiveAir;
import faintwind.ui.air.LiveAirPane;
import faintwind.ui.air.SummaryModel;
import faintwind.ui.air.SummaryScreen;
import faintwind.ui.air.SurveyModel;
import faintwind.ui.air.SurveyScreen;
import faintwind.ui.field.FieldPage;
import faintwind.ui.field.FieldPages;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Screen;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.turntable.LiveTables;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The pages of the field, each a screen that leads to the others. */
final class FieldRoom {
  private final Desk desk;
  private final LiveTables tables;
  private final AirModels models = new AirModels();
  private final Consumer<Screen> show;

  /**
   * A room.
   *
   * @param show leaves the screen that stands in the frame for another
   */
  FieldRoom(Desk desk, LiveTables tables, Consumer<Screen> show) {
    this.desk = desk;
    this.tables = tables;
    this.show = show;
  }

  /** A page, on what the instrument has on record. */
  Screen page(FieldPage page, OpenInstrument instrument) {
    FieldPages links = new FieldPages(desk, page, other -> show.accept(page(other, instrument)));
    AirWays ways = new InstrumentAir(desk, instrument);
    return switch (page) {
      case LOG -> DataScreens.field(desk, instrument, tables).withPages(links);
      case SUMMARY ->
          new SummaryScreen(
              desk,
              new SummaryModel(
                  desk.words(),
                  desk.background(),
                  name -> desk.files().save(desk.text("air.summary.save"), name),
                  ways),
              links);
      case OPENING -> {
        FlowModel model =
            models.flow(
                instrument.folder(), () -> new FlowModel(desk.words(), desk.background(), ways));
        calibrated(ways, by -> model.at(ways, by));
        yield new FlowScreen(desk, model, links).withLive(live(instrument, model.live()));
      }
      case SURVEY -> {
        SurveyModel model =
            models.survey(
                instrument.folder(), () -> new SurveyModel(desk.words(), desk.background(), ways));
        calibrated(ways, by -> model.at(ways, by));
        yield new SurveyScreen(desk, model, links).withLive(live(instrument, model.live()));
      }
    };
  }

  /** Readings that are typed and not kept. */
  List<Unsaved> unsaved() {
    return models.unsaved();
  }

  /** The instrument as it is open now, then its calibration once that is read. */
  private void calibrated(AirWays ways, Consumer<Optional<Calibration>> at) {
    at.accept(Optional.empty());
    ways.calibration()
        .ifPresent(
            file ->
                desk.background()
                    .runQuietly(
                        watch -> OpenCalibration.read(file),
                        read -> at.accept(value(read)),
                        broke -> {}));
  }

  private static Optional<Calibration> value(Checked<Calibration> read) {
    return read.fold((value, notes) -> Optional.of(value), problems -> Optional.empty());
  }

  private LiveAirPane live(OpenInstrument instrument, LiveAir live) {
    tables
        .recording(instrument.folder())
        .whenOver(DataScreens.recorded(instrument, FileRole.FIELD_LOG, file -> {}));
    return new LiveAirPane(desk, live, DataScreens.logger(desk, instrument, tables));
  }
}
