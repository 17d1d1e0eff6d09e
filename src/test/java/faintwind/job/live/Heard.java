package faintwind.job.live;

import faintwind.calibration.live.LiveRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Listens to a recording, does what a test says on the way, and ends it after a number of rows. */
final class Heard implements LiveListener {
  final Map<Integer, Runnable> afterRow = new HashMap<>();
  final List<Long> waits_s = new ArrayList<>();
  final List<LiveNews> news = new ArrayList<>();
  Runnable onReconnecting = () -> {};
  Runnable onConnected = () -> {};
  Runnable onReconnected = () -> {};
  int endAfter = Integer.MAX_VALUE;
  int rows;
  @Nullable LiveRecording recording;
  private boolean connected;

  @Override
  public void row(LiveRow row) {
    rows++;
    afterRow.getOrDefault(rows, () -> {}).run();
    if (rows == endAfter && recording != null) {
      try {
        recording.stop();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  @Override
  public void happened(LiveNews what) {
    news.add(what);
    if (what.kind() == LiveNews.Kind.RECONNECTING) {
      waits_s.add(Long.parseLong(what.problem().details().get(0)));
      onReconnecting.run();
    } else if (what.kind() == LiveNews.Kind.CONNECTED) {
      (connected ? onReconnected : onConnected).run();
      connected = true;
    }
  }
}
