package faintwind.ui.record;

import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Words;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The ledger: what was entered, by date. */
public final class RecordScreen extends DataScreen {
  /** Rows that are drawn at once: a long ledger must not hold the window. */
  private static final int PAGE = 40;

  private final RecordModel model;
  private final OpenInstrument instrument;
  private final HappenedModel happened;
  private int shown = PAGE;

  @FXML private Label title;
  @FXML private VBox calibrations;
  @FXML private VBox happenedRoom;
  @FXML private VBox ledger;

  /** The ledger of an instrument. */
  public RecordScreen(Desk desk, OpenInstrument instrument) {
    this(
        desk,
        instrument,
        new RecordModel(
            desk.words(),
            instrument.checklist(),
            instrument.now().get().situation(),
            record -> writeLog(desk, instrument, record)),
        new HappenedModel(desk.words(), instrument::enter));
  }

  private RecordScreen(
      Desk desk, OpenInstrument instrument, RecordModel model, HappenedModel happened) {
    super(
        desk,
        Bindings.createObjectBinding(
            () -> happened.next().get().orElseGet(model.next()::get),
            happened.next(),
            model.next()));
    this.model = model;
    this.instrument = instrument;
    this.happened = happened;
    Packing packing = new Packing(desk, instrument, happened::say);
    HappenedView form = new HappenedView(desk, instrument, happened, packing::ask);
    happenedRoom.getChildren().setAll(form);
    filledBy(happened.open(), form::show);
    CalibrationsView view = new CalibrationsView(desk, instrument);
    calibrations.getChildren().setAll(view);
    filledBy(
        instrument.now(),
        now -> {
          model.show(now.situation());
          view.show();
        });
    filledBy(model.lines(), lines -> fill());
  }

  @Override
  public Optional<Unsaved> unsaved() {
    return happened.unsaved();
  }

  @Override
  public boolean undo() {
    happened.leave();
    return model.undo(
        instrument.state(),
        entry ->
            instrument.enter(
                enter -> enter.correct(entry, text("window.record.undone"), Optional.empty())));
  }

  private static void writeLog(Desk desk, OpenInstrument instrument, RecordModel model) {
    desk.files()
        .save(desk.words().text("window.record.log"), "build-log.html")
        .ifPresent(
            target ->
                desk.background()
                    .run(
                        watch -> instrument.writeLog(Optional.of(target)),
                        answer -> model.logWritten(target, answer),
                        model::logBroke));
  }

  private void fill() {
    title.setText(model.title());
    ledger.getChildren().clear();
    String day = "";
    List<RecordModel.Line> lines = model.lines().get();
    for (RecordModel.Line line : lines.subList(0, Math.min(shown, lines.size()))) {
      if (!line.day().equals(day)) {
        day = line.day();
        Label head = Words.label(day, "column-head", "ledger-day");
        ledger.getChildren().add(head);
      }
      ledger.getChildren().add(row(line));
    }
    if (lines.size() > shown) {
      ledger.getChildren().add(Words.link("ledger-more", text("window.record.more"), this::more));
    }
  }

  private void more() {
    shown += PAGE;
    fill();
  }

  private Node row(RecordModel.Line line) {
    Label time = Words.label(line.time(), "fine", "soft", "ledger-time");
    MarkShape mark = new MarkShape(line.mark(), text(line.mark().key()));
    Label text = Words.label(line.text(), line.struck() ? "struck" : "ledger-text");
    VBox said = new VBox(text);
    if (!line.strike().isEmpty()) {
      said.getChildren().add(Words.label(line.strike(), "fine", "soft"));
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    Label who = Words.label(line.who(), "fine", "soft", "ledger-who");
    return Boxes.row("row ledger-row", time, mark, said, who);
  }
}
