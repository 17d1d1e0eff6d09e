package faintwind.ui.listen;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.Calibration;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.job.live.Listen;
import faintwind.message.Messages;
import faintwind.report.plot.MadeUpCalibration;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListenModelTest {
  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
  private final List<SpeedRow> heard = new ArrayList<>();

  @Test
  void whoHearsTheSpeedsHearsOneARow() throws IOException, InterruptedException {
    StringBuilder rows = new StringBuilder("time_s,delta_K\n");
    for (int t = 0; t < 400; t++) {
      rows.append(String.format(Locale.ROOT, "%d,%.3f%n", t, 20 - 0.01 * t));
    }
    String text = "file:" + Files.writeString(folder.resolve("log.csv"), rows) + "?from=start";
    ListenModel model =
        new ListenModel(Messages.of(Locale.ENGLISH), posted::add, folder.resolve("recordings"));
    model.whenSpeed((time_s, speed) -> heard.add(speed));
    Calibration by = MadeUpCalibration.of("2026-10-14T10:00:00+02:00");
    model.begin(
        SourceText.read(text)
            .fold(
                (address, notes) ->
                    new Listen.What(
                        address,
                        text,
                        Optional.empty(),
                        Optional.of(new Listen.BySpeed(by, SpeedSettings.usual(by))),
                        Listen.Raw.KEPT),
                problems -> {
                  throw new AssertionError(problems);
                }));
    runUntil(() -> heard.size() == 400);
    assertThat(heard.get(399).speed_m_s()).isPresent();
    model.stop();
    runUntil(() -> model.view().get().stage() == ListenModel.Stage.OVER);
  }

  private interface Done {
    boolean now();
  }

  private void runUntil(Done done) throws InterruptedException {
    while (!done.now()) {
      Runnable next = posted.poll(20, TimeUnit.SECONDS);
      assertThat(next).as("something within 20 s").isNotNull();
      if (next != null) {
        next.run();
      }
    }
  }
}
