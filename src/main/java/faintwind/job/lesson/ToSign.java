package faintwind.job.lesson;

import faintwind.guide.InForceGate;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What waits for the teacher: a doubtful reading, or a calibration that does not meet the build.
 *
 * @param pair number of the pair
 * @param step id of the step
 * @param what as it is signed: id of the reading, or the calibration by its file
 * @param name of it on the screen
 * @param text whose and which, in words
 */
public record ToSign(int pair, String step, String what, String name, String text) {
  private static final String DOUBTFUL = "gate.reading-doubtful";
  private static final String JUDGED = "judge-formula";

  /** Every one of a class. */
  public static List<ToSign> of(ClassLook look, Messages words) {
    List<ToSign> all = new ArrayList<>();
    for (PairLook pair : look.pairs()) {
      pair.known()
          .filter(known -> pair.trouble().isEmpty())
          .flatMap(PairLook.Known::toExplain)
          .ifPresent(file -> all.add(calibration(pair, file, words)));
      pair.known().stream()
          .filter(known -> pair.trouble().isEmpty())
          .flatMap(known -> known.looked().progress().steps().stream())
          .forEach(
              step ->
                  step.reasons().stream()
                      .filter(reason -> reason.id().equals(DOUBTFUL))
                      .flatMap(reason -> of(pair, step.step().id(), reason, words))
                      .filter(one -> !all.contains(one))
                      .forEach(all::add));
    }
    return all;
  }

  private static ToSign calibration(PairLook pair, String file, Messages words) {
    return new ToSign(
        pair.pair().number(),
        JUDGED,
        InForceGate.EXPLAINED + file,
        "calibration",
        words.text("class.to-explain", pair.label(), file));
  }

  private static Stream<ToSign> of(PairLook pair, String step, Problem reason, Messages words) {
    // a step that needs another one repeats its reasons; each is signed at its own
    return reason.details().isEmpty() || !reason.where().step().equals(Optional.of(step))
        ? Stream.empty()
        : Stream.of(
            new ToSign(
                pair.pair().number(),
                step,
                reason.details().get(0),
                reason.details().get(0),
                words.text("class.to-sign", pair.label(), words.sentence(reason))));
  }
}
