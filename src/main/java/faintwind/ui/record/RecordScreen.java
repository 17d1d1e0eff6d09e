package faintwind.ui.record;

import faintwind.job.record.WriteReport;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.FxScreen;
import faintwind.ui.frame.Screen;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.part.MarkShape;
import faintwind.ui.part.Next;
import faintwind.ui.part.Words;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The ledger: what was entered, by date. */
public final class RecordScreen implements Screen {
  /** Rows that are drawn at once: a long ledger must not hold the window. */
  private static final int PAGE = 40;

  private final Desk desk;
  private final OpenInstrument instrument;
  private final RecordModel model;
  private final VBox sheet;
  private final ChangeListener<Standpoint> stateChanged;

  private int shown = PAGE;

  @FXML private Label title;
  @FXML private VBox ledger;

  public RecordScreen(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
    model =
        new RecordModel(desk.words(), instrument.checklist(), instrument.state(), this::writeLog);
    sheet = FxScreen.load(this, desk.words(), VBox.class);
    stateChanged = (property, was, now) -> model.show(now.view().state());
    instrument.now().addListener(stateChanged);
    model.lines().addListener((property, was, now) -> fill());
    fill();
  }

  @Override
  public Node sheet() {
    return sheet;
  }

  @Override
  public ObservableValue<Next> next() {
    return model.next();
  }

  @Override
  public void left() {
    instrument.now().removeListener(stateChanged);
  }

  private void writeLog() {
    WriteReport job = new WriteReport(desk.clock(), desk.words());
    Path folder = instrument.folder();
    desk.files()
        .save(desk.words().text("window.record.log"), "build-log.html")
        .ifPresent(
            target ->
                desk.background()
                    .run(
                        watch -> job.write(folder, target),
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
        Label head = new Label(day);
        head.getStyleClass().addAll("column-head", "ledger-day");
        ledger.getChildren().add(head);
      }
      ledger.getChildren().add(row(line));
    }
    if (lines.size() > shown) {
      ledger
          .getChildren()
          .add(Words.link("ledger-more", desk.words().text("window.record.more"), this::more));
    }
  }

  private void more() {
    shown += PAGE;
    fill();
  }

  private Node row(RecordModel.Line line) {
    Label time = Words.label(line.time(), "fine", "soft", "ledger-time");
    MarkShape mark = new MarkShape(line.mark(), desk.words().text(line.mark().key()));
    Label text = Words.label(line.text(), line.struck() ? "struck" : "ledger-text");
    VBox said = new VBox(text);
    if (line.struck()) {
      said.getChildren().add(Words.label(line.strike(), "fine", "soft"));
    }
    HBox.setHgrow(said, Priority.ALWAYS);
    Label who = Words.label(line.who(), "fine", "soft", "ledger-who");
    HBox row = new HBox(time, mark, said, who);
    row.getStyleClass().addAll("row", "ledger-row");
    return row;
  }
}
