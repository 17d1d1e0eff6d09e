package faintwind.ui.home;

import faintwind.job.record.HandOver;
import faintwind.message.Checked;
import faintwind.ui.frame.Desk;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Takes in an instrument that somebody packed into one file, beside those that are there. */
final class TakingIn {
  private final Desk desk;
  private final Path bench;
  private final Answers answers;

  /**
   * What becomes of it.
   *
   * @param came reads the instruments again and says this
   * @param refused says this
   * @param open opens an instrument
   */
  record Answers(Consumer<Next> came, Consumer<Next> refused, Consumer<Path> open) {}

  /**
   * A way in.
   *
   * @param bench the folder of instruments
   */
  TakingIn(Desk desk, Path bench, Answers answers) {
    this.desk = desk;
    this.bench = bench;
    this.answers = answers;
  }

  /** Asks for the file. */
  void ask() {
    desk.files()
        .open(desk.text("take-in.act"), desk.text("take-in.kind"), "*.zip")
        .ifPresent(this::takeIn);
  }

  private void takeIn(Path archive) {
    desk.background()
        .run(
            watch -> HandOver.unpack(archive, bench),
            this::came,
            world -> refused(DiskWords.say(world, desk.words())));
  }

  private void came(Checked<HandOver.TakenIn> answer) {
    if (!(answer instanceof Checked.Ok<HandOver.TakenIn> ok)) {
      refused(desk.words().lines(answer.problems()));
      return;
    }
    Path folder = ok.value().folder();
    String notes =
        ok.notes().stream().map(n -> desk.words().sentence(n) + " ").collect(Collectors.joining());
    Act open =
        new Act("take-in-open", desk.text("take-in.open"), () -> answers.open().accept(folder));
    answers
        .came()
        .accept(
            Next.say(
                    ok.notes().isEmpty() ? Mark.DONE : Mark.ATTENTION,
                    desk.text("unpack.done", folder.getFileName()),
                    open)
                .withDetail(notes + desk.text("take-in.head", ok.value().head())));
  }

  private void refused(String why) {
    Act again = new Act("take-in-again", desk.text("take-in.other"), this::ask);
    answers
        .refused()
        .accept(Next.say(Mark.BLOCKED, desk.text("take-in.refused"), again).withDetail(why));
  }
}
