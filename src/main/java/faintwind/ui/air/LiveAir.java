package faintwind.ui.air;

import faintwind.calibration.Calibration;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.SpeedRow;
import faintwind.calibration.speed.SpeedSettings;
import faintwind.calibration.survey.LiveStay;
import faintwind.calibration.survey.SpeedTone;
import faintwind.calibration.survey.Visit;
import faintwind.job.air.AirSource;
import faintwind.job.live.Listen;
import faintwind.job.live.SpeedSound;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The instrument while it is listened to at a place: the speed now, whether it has settled, a tone
 * that follows it. On the JavaFX thread.
 */
public final class LiveAir {
  private static final int MM_S = 3;
  private static final long BETWEEN_NS = 300_000_000L;

  private final Messages words;
  private final Consumer<StretchMean> taken;
  private final Runnable changed;
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.NOTHING);
  private Optional<Calibration> calibration = Optional.empty();
  private Optional<LiveStay> stay = Optional.empty();
  private Optional<SpeedSound> sound = Optional.empty();
  private long looked_ns = System.nanoTime() - BETWEEN_NS;

  /**
   * What there is to show.
   *
   * @param here whether the instrument was said to be at the place
   * @param look the last look; empty where nothing arrives
   * @param tone what became of the tone
   */
  public record View(boolean here, Optional<LiveStay.Look> look, Tone tone) {
    static final View NOTHING = new View(false, Optional.empty(), Tone.OFF);
  }

  /** What became of the tone. */
  public enum Tone {
    OFF,
    ON,
    /** Wanted, and there is nothing to hear it by. */
    NO_LOUDSPEAKER
  }

  /**
   * Nothing is heard yet.
   *
   * @param taken takes the speed of a place
   * @param changed is told where something else is to be done
   */
  LiveAir(Messages words, Consumer<StretchMean> taken, Runnable changed) {
    this.words = words;
    this.taken = taken;
    this.changed = changed;
  }

  /** Speeds are found by this calibration from now on. */
  void by(Calibration now) {
    left();
    calibration = Optional.of(now);
    AirSource source =
        new AirSource(Optional.empty(), calibration, AirSource.average_s(calibration));
    stay =
        source
            .settling(Optional.empty())
            .map(settling -> new LiveStay(settling, source.how(StretchMean.Of.THE_PLACE)));
    sound = Optional.of(new SpeedSound(SpeedTone.over(now.coverage())));
  }

  /** How a recording finds its air speed, where a calibration is at hand. */
  public Optional<Listen.BySpeed> bySpeed() {
    return calibration.map(by -> new Listen.BySpeed(by, SpeedSettings.usual(by)));
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  /** Whether the instrument is heard. */
  boolean isHeard() {
    return isHeard(view.get());
  }

  /** A row has come. */
  public void speed(double time_s, SpeedRow row) {
    stay.ifPresent(s -> s.take(time_s, row));
    sound.ifPresent(s -> s.follow(row));
    if (System.nanoTime() - looked_ns > BETWEEN_NS) {
      looked_ns = System.nanoTime();
      look();
    }
  }

  void look() {
    show(new View(view.get().here(), stay.flatMap(s -> s.look("")), view.get().tone()));
  }

  /** What to do is said anew only where it changes: a button that is pressed stays where it is. */
  private void show(View now) {
    View was = view.get();
    view.set(now);
    if (was.here() != now.here() || isSettled(was) != isSettled(now) || isHeard(was) != isHeard()) {
      changed.run();
    }
  }

  private static boolean isSettled(View now) {
    return now.look().filter(LiveStay.Look::settled).isPresent();
  }

  private static boolean isHeard(View now) {
    return now.look().isPresent();
  }

  /** The balls hang at the place now: the wait begins. */
  public void arrive() {
    stay.ifPresent(LiveStay::arrive);
    show(new View(true, view.get().look(), view.get().tone()));
  }

  /** Takes the mean of the stay for the speed of the place. */
  public void take() {
    Optional<StretchMean> mean = mean();
    show(new View(false, view.get().look(), view.get().tone()));
    mean.ifPresent(taken);
  }

  private Optional<StretchMean> mean() {
    return view.get().look().map(LiveStay.Look::visit).flatMap(Visit::speed);
  }

  /** Switches the tone on or off. */
  public void sound(boolean wanted) {
    boolean heard = wanted && sound.filter(SpeedSound::on).isPresent();
    if (!wanted) {
      sound.ifPresent(SpeedSound::close);
    }
    Tone off = wanted ? Tone.NO_LOUDSPEAKER : Tone.OFF;
    show(new View(view.get().here(), view.get().look(), heard ? Tone.ON : off));
  }

  /** Nothing has arrived for a while: no tone without a reading. */
  void hush() {
    sound.ifPresent(SpeedSound::pause);
  }

  /** Nothing arrives any more: there is no speed now, and no tone. */
  public void lost() {
    hush();
    show(new View(view.get().here(), Optional.empty(), view.get().tone()));
  }

  /** Nobody looks at it any more. */
  public void left() {
    sound.ifPresent(SpeedSound::close);
    view.set(View.NOTHING);
  }

  /**
   * What to do at a place; empty where the instrument is not heard.
   *
   * @param go where to go, in a sentence
   * @param place what it is called
   */
  Optional<Next> next(String go, String place) {
    if (!isHeard()) {
      return Optional.empty();
    }
    Act arrive = new Act("live-here", words.text("air.live.here"), this::arrive);
    if (!view.get().here()) {
      return Optional.of(
          Next.say(Mark.DOING, go, arrive).withDetail(words.text("air.live.here-detail")));
    }
    Act take = new Act("live-take", words.text("air.live.take"), this::take);
    return Optional.of(
        isSettled(view.get())
            ? Next.say(Mark.DONE, words.text("air.live.settled"), take).withDetail(place)
            : Next.say(Mark.WAITING, words.text("air.live.wait")).withDetail(place));
  }

  /** Where the stay stands, in words: how long it lasts and takes, or the mean so far. */
  String standing() {
    if (!view.get().here()) {
      return words.text("air.live.not-here");
    }
    Optional<StretchMean> mean = mean();
    return isSettled(view.get()) && mean.isPresent()
        ? words.text("air.live.mean", speed(mean.get()))
        : words.text("air.live.span", since(), wait(LiveStay::moving_s), wait(LiveStay::atMost_s));
  }

  private String since() {
    return view.get().look().map(look -> whole(look.since_s())).orElse("0");
  }

  private String wait(ToDoubleFunction<LiveStay> seconds) {
    return stay.map(s -> whole(seconds.applyAsDouble(s))).orElse("");
  }

  /** The speed now, in words. */
  String now() {
    return view.get()
        .look()
        .map(LiveStay.Look::now)
        .filter(row -> row.speed_m_s().isPresent())
        .map(
            row ->
                words.text(
                    "air.speed",
                    Numerals.places(row.speed_m_s().orElseThrow(), MM_S),
                    Numerals.places(row.u95_m_s().orElseThrow(), MM_S)))
        .orElse(words.text("air.live.no-speed"));
  }

  private String speed(StretchMean mean) {
    return words.text(
        "air.speed",
        Numerals.places(mean.speed_m_s(), MM_S),
        Numerals.places(mean.u95_m_s(), MM_S));
  }

  private static String whole(double time_s) {
    return Numerals.shortest(time_s, 0);
  }
}
