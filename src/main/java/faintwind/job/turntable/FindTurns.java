package faintwind.job.turntable;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.ClickFinder;
import faintwind.calibration.plan.Beat;
import faintwind.files.WavFile;
import faintwind.message.Checked;
import faintwind.message.Field;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the turns of a spin in a sound recording: a click at each mark that the arm passes. */
public final class FindTurns {
  /** About how far apart clicks are, s. */
  public static final Field PERIOD = Field.number("period_s", 0.15, 40);

  /** Marks a turn. */
  public static final Field PER_TURN = Field.whole("per-turn", 1, 100);

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
    return in(sound, OptionalDouble.of(beat.period_s()), beat.aTurn());
  }

  /**
   * The same where the beat need not be known.
   *
   * @param period_s about how far apart clicks are, within a tenth; empty: found from the recording
   * @param perTurn how many marks a turn has
   */
  public static Checked<BeatTimes> in(Path sound, OptionalDouble period_s, int perTurn)
      throws IOException {
    return WavFile.read(sound, Listening::new).then(heard -> heard.turns(period_s, perTurn));
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

    /** Those that keep the beat, and the clear ones among them that do not. */
    Checked<BeatTimes> turns(OptionalDouble period_s, int perTurn) {
      ClickFinder.Found found = finder.find(period_s);
      List<Double> clicks = found.clicks();
      Set<Double> others =
          found.setAside().stream()
              .filter(t -> t > clicks.get(0) && t < clicks.get(clicks.size() - 1))
              .collect(Collectors.toSet());
      return BeatTimes.heard(clicks, others, perTurn);
    }
  }
}
