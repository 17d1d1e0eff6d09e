package faintwind.ui.turntable;

import faintwind.calibration.live.SourceAddress;
import faintwind.job.live.LiveSession;
import faintwind.job.live.SourceLook;
import faintwind.job.live.TypedSession;
import faintwind.message.AmountText;
import faintwind.message.Checked;
import faintwind.message.Messages;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * A plain meter at the turntable: asks for its readings at even times and gives what is typed to
 * the session.
 */
final class TypedMeter {
  private final Messages words;
  private final TypedSession typed;
  private final ReadOnlyStringWrapper asked = new ReadOnlyStringWrapper("");
  private volatile Optional<LiveSession> session = Optional.empty();

  /**
   * A meter that is asked for once its session runs.
   *
   * @param address how often, in what unit
   * @param text how the recording names it
   */
  TypedMeter(Messages words, SourceAddress.Typed address, String text) {
    this.words = words;
    typed = new TypedSession(address, text, this::ask);
  }

  /** Where its readings come from. */
  TypedSession source() {
    return typed;
  }

  /** The session that its readings guide. */
  void follow(LiveSession now) {
    session = Optional.of(now);
  }

  /** Called on the recording's own thread. */
  private void ask(long number, double time_s) {
    session.ifPresent(s -> s.clockShows(time_s));
    SourceLook.beep();
    String time = AmountText.quantity(time_s, "s", 6, words.locale());
    Platform.runLater(() -> asked.set(words.text("listen.ask-window", number, time)));
  }

  /** What is asked now; empty once it was typed. */
  ReadOnlyStringProperty asked() {
    return asked.getReadOnlyProperty();
  }

  /** Takes what was typed; says what is wrong with it, or nothing. */
  String enter(String text) {
    Checked<Double> entered = typed.enter(text);
    if (entered.isOk()) {
      asked.set("");
      return "";
    }
    return words.sentence(entered.problems().get(0));
  }
}
