package faintwind.ui;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.message.Messages;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Look;
import faintwind.ui.frame.Place;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.part.Notes;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.beans.property.SimpleStringProperty;

/**
 * What a model needs of the window, without a window: what comes back from the background runs when
 * the test says so, and where a person was sent is written down.
 */
public final class Quiet {
  public static final Clock CLOCK = Clock.fixed(Cellar.NOW.toInstant(), ZoneOffset.UTC);

  private final BlockingQueue<Runnable> back = new LinkedBlockingQueue<>();
  private final Workspace workspace;
  private final List<Place> sentTo = new ArrayList<>();
  private final Desk desk =
      new Desk(
          Messages.of(Locale.ENGLISH),
          new Background(back::add),
          new Notes(),
          sentTo::add,
          NoFiles.ASKED,
          new Look(),
          CLOCK);

  public Quiet(Path folder) {
    workspace = new Workspace(folder, CLOCK, Locale.ENGLISH);
  }

  public Desk desk() {
    return desk;
  }

  public Workspace workspace() {
    return workspace;
  }

  /** The places that a model asked for. */
  public List<Place> sentTo() {
    return List.copyOf(sentTo);
  }

  /** Opens an instrument of the folder, in the name of Ida. */
  public OpenInstrument open(Path instrument) throws IOException {
    return open(instrument, "Ida");
  }

  /** Opens an instrument of the folder, in the name of a person. */
  public OpenInstrument open(Path instrument, String who) throws IOException {
    Standpoint standpoint = Standpoint.of(workspace.opening().open(instrument), Cellar.NOW);
    return new OpenInstrument(desk, standpoint, workspace.opening(), new SimpleStringProperty(who));
  }

  /** How many answers from the background wait to be run. */
  public int unanswered() {
    return back.size();
  }

  /** Runs what came back from the background: the next answer. */
  public void answer() throws InterruptedException {
    Runnable next = back.poll(60, TimeUnit.SECONDS);
    assertThat(next).as("an answer within a minute").isNotNull();
    if (next != null) {
      next.run();
    }
  }
}
