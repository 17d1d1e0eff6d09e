package faintwind.ui.make;

import faintwind.guide.Gate;
import faintwind.guide.Remedies;
import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.Waivers;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Remedy;
import faintwind.guide.checklist.Step;
import faintwind.message.Amount;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import faintwind.message.NumberText;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import faintwind.ui.make.StepView.Trouble;
import faintwind.ui.part.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the worst reading of a step that was not gone on without, and says what it means. */
final class TroubleWords {
  private final Messages words;
  private final Checklist checklist;

  private record Bad(Reading reading, Reading.Judgement judgement, String typed) {}

  TroubleWords(Messages words, Checklist checklist) {
    this.words = words;
    this.checklist = checklist;
  }

  /** The trouble of a step; empty where no reading of it is worse than good. */
  Optional<Trouble> of(Step step, Situation situation) {
    List<Bad> all = new ArrayList<>();
    for (Reading reading : step.asks().readings()) {
      bad(step, reading, situation).ifPresent(all::add);
    }
    return all.stream()
        .reduce((a, b) -> b.judgement().verdict().compareTo(a.judgement().verdict()) > 0 ? b : a)
        .map(
            worst ->
                shortMeter(step, worst, situation)
                    .orElseGet(() -> trouble(step, worst, situation)));
  }

  private Optional<Bad> bad(Step step, Reading reading, Situation situation) {
    if (isWaived(step, reading, situation)) {
      return Optional.empty();
    }
    String typed =
        situation
            .state()
            .reading(step.id(), reading.id())
            .map(line -> line.event().typed())
            .orElse("");
    return Verdicts.of(checklist, step, reading, situation)
        .filter(judged -> judged.verdict() != ReadingVerdict.GOOD)
        .map(judged -> new Bad(reading, judged, typed));
  }

  private boolean isWaived(Step step, Reading reading, Situation situation) {
    return situation
        .state()
        .waiver(step.id(), reading.id())
        .filter(w -> Waivers.refusals(checklist, step, w.event(), w.who(), situation).isEmpty())
        .isPresent();
  }

  /** A stop on which heater power stands cannot be waived: no way is offered. */
  private String waivable(Step step, Bad worst) {
    boolean stop = worst.judgement().verdict() == ReadingVerdict.STOP;
    return stop && Waivers.isOfPower(step, worst.reading()) ? "" : worst.reading().id();
  }

  /** A meter that ends too early: nothing is known to be wrong with the coat. */
  private Optional<Trouble> shortMeter(Step step, Bad worst, Situation situation) {
    Reading reading = worst.reading();
    Map<String, Double> values = situation.values(checklist);
    return situation
        .state()
        .reading(step.id(), reading.id())
        .filter(line -> Verdicts.isShortOfRange(reading, line, situation, values))
        .map(
            line -> {
              String wanted = situation.fill(reading.expected(), words);
              if (Verdicts.isWithoutRange(line, situation)) {
                return new Trouble(
                    Mark.ATTENTION,
                    words.text("window.step.no-range", reading.label()),
                    words.text("window.step.no-range-because", wanted),
                    "",
                    words.text("window.step.no-range-todo"),
                    locked(step, situation),
                    reading.id());
              }
              String top = top(line, reading, situation);
              return new Trouble(
                  Mark.ATTENTION,
                  words.text("window.step.short-meter", reading.label()),
                  words.text("window.step.short-meter-because", top, wanted),
                  "",
                  words.text("window.step.short-meter-todo"),
                  locked(step, situation),
                  reading.id());
            });
  }

  /** How far the range goes on which over range was seen. */
  private String top(Standing<ReadingEntered> line, Reading reading, Situation situation) {
    Amount amount = line.event().amount();
    double top =
        amount.bound() == Amount.Bound.OVER_RANGE
            ? situation.meterAt(line.at()).map(m -> m.top(reading.unit()).orElse(0)).orElse(0.0)
            : NumberText.convert(amount.value(), amount.unit(), reading.unit());
    return AmountText.quantity(top, reading.unit(), 2, words.locale());
  }

  private Trouble trouble(Step step, Bad worst, Situation situation) {
    boolean stop = worst.judgement().verdict() == ReadingVerdict.STOP;
    List<Remedy> remedies =
        Remedies.of(checklist, situation).stream()
            .filter(remedy -> speaksOf(remedy, step))
            .toList();
    Optional<Remedy> likely = remedies.stream().findFirst();
    Optional<Remedy.Words> first = likely.map(Remedy::words);
    String said = situation.fill(worst.judgement().words(), words);
    String plain =
        words.text(
            stop ? "window.step.stopped" : "window.step.doubtful",
            worst.reading().label(),
            worst.typed(),
            situation.fill(worst.reading().expected(), words));
    return new Trouble(
        stop ? Mark.BLOCKED : Mark.ATTENTION,
        first.map(r -> situation.fill(r.cause(), words)).orElse(plain),
        first.map(r -> situation.fill(r.because(), words)).orElse(said),
        remedies.stream()
            .skip(1)
            .findFirst()
            .map(r -> situation.fill(r.words().cause() + " " + apart(first), words).strip())
            .orElse(""),
        likely
            .map(r -> situation.fill(Remedies.todo(checklist, r, situation), words))
            .orElse(said.isEmpty() ? words.text("window.step.measure-again") : said),
        locked(step, situation),
        waivable(step, worst));
  }

  private static String apart(Optional<Remedy.Words> first) {
    return first.flatMap(Remedy.Words::apart).orElse("");
  }

  /** A pattern belongs to a step when it names one of that step's readings. */
  private static boolean speaksOf(Remedy remedy, Step step) {
    return step.asks().readings().stream()
        .anyMatch(reading -> remedy.when().names().contains(reading.name()));
  }

  private String locked(Step step, Situation situation) {
    Optional<String> gate = step.order().gate();
    if (gate.isEmpty() || Gate.check(checklist, gate.get(), situation).open()) {
      return "";
    }
    List<Step> steps = checklist.stepsOfGate(gate.get());
    long good =
        steps.stream()
            .filter(s -> Gate.toFinish(checklist, s, situation).open())
            .filter(s -> situation.state().finished(s.id()).isPresent())
            .count();
    return words.text("window.step.locked." + gate.get(), steps.size(), good);
  }
}
