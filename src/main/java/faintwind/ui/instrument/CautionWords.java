package faintwind.ui.instrument;

import faintwind.message.DateText;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.ui.frame.Desk;
import java.util.Optional;

/** Cautions that a screen shows and no step has. */
public final class CautionWords {
  private CautionWords() {}

  /**
   * Who read a caution, and when; empty where the person at the window has not: each answers its
   * question once.
   */
  public static Optional<String> readBy(Desk desk, OpenInstrument instrument, String caution) {
    return instrument.state().standing(CautionAcknowledged.class).stream()
        .filter(line -> line.event().caution().equals(caution))
        .filter(line -> line.who().equals(instrument.signed().strip()))
        .findFirst()
        .map(
            line ->
                desk.text(
                    "turntable.caution.read-by",
                    line.who(),
                    DateText.day(desk.words(), line.at())));
  }
}
