package faintwind.ui.formula;

import faintwind.report.figure.SettlingPlots;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.figure.FigureView;
import faintwind.ui.frame.Desk;
import faintwind.ui.work.Running;
import java.util.List;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The picture of a fit that runs: a curve that settles as its refits are made. */
final class FitCurve extends VBox {
  private static final double HEIGHT_EM = 18;
  private static final Duration A_LOOK = Duration.millis(500);

  private final SettlingPlots plots;
  private final FigureView view;
  private final Running running;
  private final Timeline looks = new Timeline(new KeyFrame(A_LOOK, event -> look()));
  private int shown;

  FitCurve(Desk desk, Running running) {
    this.running = running;
    plots = new SettlingPlots(desk.words());
    view = new FigureView(desk.look(), desk.words().locale(), HEIGHT_EM);
    view.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setId("fit-curve");
    looks.setCycleCount(Animation.INDEFINITE);
    // a screen that is left takes its curve out of the window
    sceneProperty().addListener((property, was, now) -> follow(now != null));
  }

  private void follow(boolean seen) {
    if (seen) {
      looks.play();
      look();
    } else {
      looks.stop();
    }
  }

  private void look() {
    List<Running.Settled> so = running.settling();
    long wanted = running.latest().total();
    if (so.size() == shown || wanted <= 1) {
      return;
    }
    shown = so.size();
    PlotFigure figure =
        plots.figure(
            so.stream().mapToDouble(Running.Settled::done).toArray(),
            so.stream().mapToDouble(Running.Settled::value).toArray(),
            (double) wanted);
    view.setAccessibleText(figure.title() + ". " + figure.description());
    view.show(figure);
    if (getChildren().isEmpty()) {
      getChildren().add(view);
    }
  }
}
