package faintwind.job.live;

import faintwind.calibration.beat.ToneTrack;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.survey.SpeedTone;
import faintwind.device.BeatSound;
import java.io.Closeable;
import java.util.Optional;
import java.util.OptionalDouble;

/** The air speed as a tone, where there is a loudspeaker; silent until it is switched on. */
public final class SpeedSound implements Closeable {
  private final SpeedTone tone;
  private final ToneTrack track = new ToneTrack(BeatSound.RATE_HZ);
  private Optional<BeatSound> sound = Optional.empty();

  public SpeedSound(SpeedTone tone) {
    this.tone = tone;
  }

  /** Switches it on; whether there is anything to hear it by. */
  public boolean on() {
    if (sound.isEmpty()) {
      sound = BeatSound.open();
      sound.ifPresent(s -> s.start(track));
    }
    return sound.isPresent();
  }

  /** Follows a row; a row without a speed that means anything is silent. */
  public void follow(SpeedRow row) {
    track.pitch(tone.pitch_Hz(row));
  }

  /** Silent until the next row: nothing arrives. */
  public void pause() {
    track.pitch(OptionalDouble.empty());
  }

  /** Switches it off. */
  @Override
  public void close() {
    sound.ifPresent(BeatSound::close);
    sound = Optional.empty();
  }
}
