package faintwind.ui.turntable;

import faintwind.calibration.beat.BeatTimes;
import faintwind.calibration.beat.SpinTurns;
import faintwind.calibration.beat.TurnMark;
import faintwind.calibration.plan.PlannedSpin;
import faintwind.job.live.LiveSession;
import faintwind.job.turntable.FindTurns;
import faintwind.job.turntable.SpinDone;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Rows;
import faintwind.ui.part.Words;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * The turns of one spin put right: counted by hand and typed, or found in a sound recording, where
 * each click that was missed or doubled can be put in or taken out.
 */
final class SpinCorrection {
  private final Desk desk;
  private final LiveSession session;
  private final int spin;
  private final Runnable close;
  private final VBox box = Boxes.column("data-body spin-correction");
  private final VBox said = new VBox();
  private final TextField turns = new TextField();
  private final TextField time = new TextField();
  private final TextField begins = new TextField();

  /**
   * A correction of one spin.
   *
   * @param spin its place among those turned, from 0
   * @param close puts it away
   */
  SpinCorrection(Desk desk, LiveSession session, int spin, Runnable close) {
    this.desk = desk;
    this.session = session;
    this.spin = spin;
    this.close = close;
    SpinDone done = session.spins().get(spin);
    box.setId("spin-correction");
    turns.setText(String.valueOf(done.turns().turns()));
    time.setText(Numerals.places(done.turns().time_s().value(), 1));
    HBox fields =
        Boxes.row(
            "spin-fields",
            labelled("spin-turns", "turntable.typed.turns", turns),
            labelled("spin-time", "turntable.typed.time", time),
            Words.button("spin-keep", desk.text("turntable.live.count.keep"), this::keep),
            Words.button("spin-sound", desk.text("turntable.live.count.sound"), this::listen),
            Words.button("spin-close", desk.text("turntable.live.count.close"), close));
    Label head =
        Words.label(
            desk.text("turntable.live.count", done.step().step().spin().orElseThrow().number()),
            "semibold");
    box.getChildren().setAll(head, fields, said);
    say(done.doubts(), false);
  }

  Node node() {
    return box;
  }

  private Node labelled(String id, String key, TextField field) {
    field.setId(id);
    field.setAccessibleText(desk.text(key));
    field.setPrefColumnCount(7);
    Label label = Words.label(desk.text(key), "fine", "soft");
    label.setLabelFor(field);
    return new VBox(label, field);
  }

  private void keep() {
    OptionalDouble counted = number(turns.getText(), "");
    OptionalDouble lasted_s = number(time.getText(), "s");
    if (counted.isEmpty() || lasted_s.isEmpty()) {
      said.getChildren()
          .setAll(
              Rows.problems(
                  List.of(desk.text("turntable.live.count.numbers")), true, desk.words()));
      return;
    }
    Checked<SpinTurns> typed = session.count(spin, counted.getAsDouble(), lasted_s.getAsDouble());
    if (typed.isOk() && typed.problems().isEmpty()) {
      close.run();
    } else {
      say(typed.problems(), !typed.isOk());
    }
  }

  private static OptionalDouble number(String typed, String unit) {
    return NumberText.read(typed, unit)
        .fold((amount, notes) -> OptionalDouble.of(amount.value()), p -> OptionalDouble.empty());
  }

  private void say(List<Problem> problems, boolean refused) {
    List<String> lines = problems.stream().map(desk.words()::line).toList();
    said.getChildren().setAll(Rows.problems(lines, refused, desk.words()));
  }

  private PlannedSpin planned() {
    return session.spins().get(spin).step().step().spin().orElseThrow();
  }

  private void listen() {
    desk.files()
        .open(
            desk.text("turntable.live.count.sound"), desk.text("turntable.live.count.wav"), "*.wav")
        .ifPresent(this::listen);
  }

  private void listen(Path sound) {
    desk.background()
        .run(
            watch -> FindTurns.in(sound, planned().beat()),
            this::found,
            broke ->
                said.getChildren()
                    .setAll(
                        Rows.problems(
                            List.of(DiskWords.say(broke, desk.words())), true, desk.words())));
  }

  /** Shows what was found; each doubt has its way out beside it. */
  private void found(Checked<BeatTimes> checked) {
    if (!(checked instanceof Checked.Ok<BeatTimes> ok)) {
      say(checked.problems(), true);
      return;
    }
    BeatTimes times = ok.value();
    BeatTimes.Turning turning = times.turning();
    List<Node> rows = new ArrayList<>();
    rows.add(
        Words.label(
            desk.text(
                "turntable.live.count.found",
                turning.turns(),
                Numerals.places(turning.time_s().value(), 2),
                times.missed(),
                times.doubled())));
    List<String> outside =
        ok.notes().stream()
            .filter(n -> n.id().equals("beat.outside"))
            .map(desk.words()::line)
            .toList();
    rows.addAll(Rows.problems(outside, false, desk.words()));
    List<TurnMark> marks = times.marks();
    for (int i = 1; i < marks.size(); i++) {
      TurnMark mark = marks.get(i);
      double before_s = marks.get(i - 1).time_s();
      if (mark.kind() == TurnMark.Kind.DOUBLED) {
        rows.add(
            doubt(
                desk.text("turntable.live.count.doubled", Numerals.places(mark.time_s(), 2)),
                desk.text("turntable.live.count.take-out"),
                () -> found(times.without(mark.time_s()))));
      } else if (mark.kind() == TurnMark.Kind.AFTER_MISSED) {
        double middle_s = before_s + missing_s(marks.get(i - 1), mark);
        rows.add(
            doubt(
                desk.text(
                    "turntable.live.count.missed",
                    Numerals.places(before_s, 2),
                    Numerals.places(mark.time_s(), 2)),
                desk.text("turntable.live.count.put-in", Numerals.places(middle_s, 2)),
                () -> found(times.with(middle_s))));
      }
    }
    rows.add(labelled("spin-sound-begins", "turntable.live.count.begins", begins));
    rows.add(
        Words.button(
            "spin-use-found",
            desk.text("turntable.live.count.use"),
            () -> {
              OptionalDouble begins_s = number(begins.getText(), "s");
              session.count(spin, SpinTurns.heard(turning, begins_s), ok.notes());
              close.run();
            }));
    said.getChildren().setAll(rows);
  }

  /** Where the first missing mark would be, after the one before the gap. */
  private static double missing_s(TurnMark before, TurnMark after) {
    return (after.time_s() - before.time_s()) / Math.max(1, after.number() - before.number());
  }

  private Node doubt(String found, String act, Runnable run) {
    return Boxes.row("problem", Words.label(found), Words.link("spin-doubt", act, run));
  }
}
