package faintwind.job.turntable;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.ClickFinder;
import faintwind.calibration.plan.Beat;
import faintwind.files.WavFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Finds the turns of a spin in a sound recording: a click at each mark that the arm passes. */
public final class FindTurns {
  private FindTurns() {}

  /**
   * Listens to the whole recording.
   *
   * @param sound a WAV file
   * @param beat about how often the arm passes a mark, and how many marks a turn has
   * @return the marks, with what was missed, doubled or set aside as notes; refused where it is no
   *     recording or no clicks are in it
   * @throws IOException where the disk fails
   */
  public static Checked<BeatTimes> in(Path sound, Beat beat) throws IOException {
    return WavFile.read(sound, Listening::new)
        .then(heard -> BeatTimes.of(heard.clicks(beat.period_s()), beat.aTurn()));
  }

  private static final class Listening implements WavFile.Listener {
    private final ClickFinder finder;

    Listening(int rate_Hz) {
      finder = new ClickFinder(rate_Hz);
    }

    @Override
    public void hear(float[] samples, int count) {
      finder.hear(samples, count);
    }

    /** Those that keep the beat, and the clear ones beside it, which show as doubled. */
    List<Double> clicks(double period_s) {
      ClickFinder.Found found = finder.find(OptionalDouble.of(period_s));
      List<Double> all = new ArrayList<>(found.clicks());
      found.setAside().stream()
          .filter(t -> !all.isEmpty() && t > all.get(0) && t < all.get(found.clicks().size() - 1))
          .forEach(all::add);
      return all;
    }
  }
}
