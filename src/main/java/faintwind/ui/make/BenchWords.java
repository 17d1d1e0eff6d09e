package faintwind.ui.make;

import faintwind.calibration.bench.PickUp;
import faintwind.calibration.bench.QuietRecord;
import faintwind.job.record.LookAtBench;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.List;

/** What a recording on the bench shows, in sentences. */
final class BenchWords {
  private static final int DIGITS = 3;
  private static final double HOUR_S = 3600;

  private final Messages words;

  BenchWords(Messages words) {
    this.words = words;
  }

  /** Sentences, the result first. */
  List<String> of(LookAtBench.Looked looked, String unit, String file) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("window.bench.read", looked.typed() + " " + unit, file));
    looked.at_s().ifPresent(at -> lines.add(words.text("window.bench.at", number(at))));
    looked.quiet().ifPresent(quiet -> quiet(quiet, lines));
    return lines;
  }

  private void quiet(QuietRecord quiet, List<String> lines) {
    lines.add(
        words.text(
            "window.bench.quiet",
            number(quiet.mean()),
            number(quiet.drift_per_s() * HOUR_S),
            number(quiet.scatter())));
    lines.add(
        quiet.corner_Hz().isPresent()
            ? words.text("window.bench.corner", number(quiet.corner_Hz().getAsDouble()))
            : words.text("window.bench.white"));
    quiet.pickUp().ifPresent(pickUp -> lines.add(pickUp(pickUp)));
    if (!quiet.blindTo().isEmpty()) {
      String mains = String.join(", ", quiet.blindTo().stream().map(String::valueOf).toList());
      lines.add(words.text("window.bench.blind", mains));
    }
    lines.add(
        switch (quiet.input()) {
          case STEADY -> words.text("window.bench.input.steady");
          case WANDERS -> words.text("window.bench.input.wanders");
          case AT_AN_END -> words.text("window.bench.input.at-an-end");
          case STUCK -> words.text("window.bench.input.stuck");
        });
  }

  private String pickUp(PickUp pickUp) {
    String amplitude = number(pickUp.amplitude());
    String frequency = number(pickUp.frequency_Hz());
    return pickUp.mains_Hz().isPresent()
        ? words.text(
            "window.bench.mains",
            String.valueOf(pickUp.mains_Hz().getAsInt()),
            amplitude,
            frequency)
        : words.text("window.bench.oscillation", amplitude, frequency);
  }

  private String number(double value) {
    return AmountText.number(value, DIGITS, words.locale());
  }
}
