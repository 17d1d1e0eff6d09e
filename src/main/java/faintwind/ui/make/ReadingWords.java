package faintwind.ui.make;

import faintwind.guide.Situation;
import faintwind.guide.Verdicts;
import faintwind.guide.checklist.Reading;
import faintwind.guide.checklist.Step;
import faintwind.guide.checklist.Tips;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.ReadingVerdict;
import faintwind.record.Standing;
import faintwind.ui.make.StepView.Answer;
import faintwind.ui.make.StepView.Earlier;
import faintwind.ui.make.StepView.Probes;
import faintwind.ui.make.StepView.ReadingLine;
import faintwind.ui.part.Mark;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A reading of a step in words: band, answer, where the tips go, and everything typed before. */
final class ReadingWords {

  private final Messages words;

  ReadingWords(Messages words) {
    this.words = words;
  }

  /**
   * One reading.
   *
   * @param values those of the situation, worked out once for all readings of a step
   */
  ReadingLine of(Step step, Reading reading, Situation situation, Map<String, Double> values) {
    Optional<Standing<ReadingEntered>> counts = situation.state().reading(step.id(), reading.id());
    return new ReadingLine(
        reading.id(),
        situation.fill(reading.label(), words),
        situation.fill(reading.expected(), words),
        reading.unit(),
        counts.map(line -> answer(reading, line, situation, values)).orElse(Answer.NONE),
        earlier(step, reading, situation, counts.map(Standing::entry).orElse("")),
        reading.tips().map(tips -> probes(tips)));
  }

  private Answer answer(
      Reading reading,
      Standing<ReadingEntered> line,
      Situation situation,
      Map<String, Double> values) {
    Optional<Reading.Judgement> judged = Verdicts.of(reading, line, situation, values);
    return new Answer(
        line.event().typed(),
        judged.map(j -> mark(j.verdict())).orElse(Mark.ATTENTION),
        judged
            .map(j -> words.text("window.verdict." + j.verdict().word()))
            .orElse(words.text("window.verdict.unknown")),
        words.text("window.step.kept", when(line.at(), situation)));
  }

  private String when(OffsetDateTime at, Situation situation) {
    return DateText.near(words, at, situation.now());
  }

  private static Mark mark(ReadingVerdict verdict) {
    return switch (verdict) {
      case GOOD -> Mark.DONE;
      case DOUBTFUL -> Mark.ATTENTION;
      case STOP -> Mark.BLOCKED;
    };
  }

  /** Every other entry of the reading, the latest first; one that was corrected is struck. */
  private List<Earlier> earlier(Step step, Reading reading, Situation situation, String counting) {
    List<Standing<ReadingEntered>> history =
        situation.state().history(step.id(), reading.id()).stream()
            .filter(line -> !line.entry().equals(counting))
            .toList();
    return IntStream.range(0, history.size())
        .mapToObj(i -> earlier(history.get(history.size() - 1 - i), situation))
        .toList();
  }

  private Earlier earlier(Standing<ReadingEntered> line, Situation situation) {
    String verdict =
        line.event()
            .verdict()
            .map(v -> words.text("window.verdict." + v.word()))
            .orElse(words.text("window.verdict.unknown"));
    String text =
        words.text(
            "window.step.earlier",
            line.event().typed(),
            verdict,
            when(line.at(), situation),
            line.who());
    String struck =
        line.strike()
            .map(
                s ->
                    words.text(
                        "window.step.struck", s.who(), when(s.at(), situation), s.reason(words)))
            .orElse("");
    return new Earlier(text, struck);
  }

  private Probes probes(Tips tips) {
    return new Probes(
        tips.scene(),
        tips.one().word(),
        tips.other().word(),
        words.text(
            "window.step.tips",
            words.text("window.point." + tips.one().word()),
            words.text("window.point." + tips.other().word())));
  }
}
