package faintwind.ui.air;

import faintwind.calibration.speed.SpeedRow;
import faintwind.ui.frame.Desk;
import faintwind.ui.listen.ListenModel;
import faintwind.ui.listen.ListenPane;
import faintwind.ui.listen.LoggerWays;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Words;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.beans.value.ChangeListener;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The instrument listened to at a place: its speed now, whether it has settled, a tone. */
public final class LiveAirPane extends VBox {
  /** After so long without a row nothing is known of the speed now. */
  private static final Duration STALE = Duration.seconds(5);

  /** After so long the instrument counts as not listened to. */
  private static final Duration LOST = Duration.seconds(90);

  private final Desk desk;
  private final LiveAir live;
  private final LoggerWays logger;
  private final VBox now = Boxes.column("live-now-box");
  private final Label speed = Words.label("", "title");
  private final Label standing = Words.label("");
  private final CheckBox tone = new CheckBox();
  private final Label toneSaid = Words.label("", "fine", "soft");
  private final VBox source = Boxes.column("data-body");
  private final PauseTransition stale = new PauseTransition(STALE);
  private final PauseTransition lost = new PauseTransition(LOST);
  private final ChangeListener<LiveAir.View> changed = (property, was, is) -> show(is);
  private Optional<ListenPane> pane = Optional.empty();

  /**
   * A pane.
   *
   * @param logger how readings come to the instrument
   */
  public LiveAirPane(Desk desk, LiveAir live, LoggerWays logger) {
    this.desk = desk;
    this.live = live;
    this.logger = logger;
    setId("live-air");
    getStyleClass().add("data-body");
    now.setId("live-air-now");
    speed.setId("live-air-speed");
    standing.setId("live-air-standing");
    tone.setId("live-air-tone");
    tone.setText(desk.text("air.live.tone"));
    tone.setOnAction(event -> live.sound(tone.isSelected()));
    now.getChildren().setAll(speed, standing, Boxes.row("ways", tone, toneSaid));
    getChildren().setAll(now, source);
    stale.setOnFinished(event -> live.hush());
    lost.setOnFinished(event -> live.lost());
    live.view().addListener(changed);
    logger.whenSpeed(this::heard);
    if (logger.isListening()) {
      listen();
    } else {
      source.getChildren().setAll(Words.link("air-listen", desk.text("air.listen"), this::listen));
    }
    show(live.view().get());
  }

  private void listen() {
    ListenPane listening = logger.listening(live::bySpeed);
    pane = Optional.of(listening);
    source.getChildren().setAll(listening);
    if (live.bySpeed().isEmpty()) {
      source.getChildren().add(Words.label(desk.text("air.live.no-calibration")));
    }
  }

  private void heard(double time_s, SpeedRow row) {
    stale.playFromStart();
    lost.playFromStart();
    live.speed(time_s, row);
  }

  private void show(LiveAir.View is) {
    Boxes.present(now, is.look().isPresent());
    speed.setText(live.now());
    standing.setText(live.standing());
    tone.setSelected(is.tone() == LiveAir.Tone.ON);
    toneSaid.setText(
        is.tone() == LiveAir.Tone.NO_LOUDSPEAKER ? desk.text("air.live.no-loudspeaker") : "");
  }

  /** Stops looking; the recording goes on, the tone does not. */
  public void left() {
    stale.stop();
    lost.stop();
    live.view().removeListener(changed);
    logger.whenSpeed(ListenModel.NOBODY);
    live.left();
    pane.ifPresent(ListenPane::left);
  }
}
