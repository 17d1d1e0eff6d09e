package faintwind.ui.record;

import faintwind.job.record.HandOver;
import faintwind.message.Checked;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Packs an instrument into one sealed file, once all that was entered is on disk. */
final class Packing {
  private final Desk desk;
  private final OpenInstrument instrument;
  private final Consumer<Next> say;

  Packing(Desk desk, OpenInstrument instrument, Consumer<Next> say) {
    this.desk = desk;
    this.instrument = instrument;
    this.say = say;
  }

  /** Asks where the file goes, beside the instrument at first. */
  void ask() {
    Path folder = instrument.folder().toAbsolutePath();
    Optional.ofNullable(folder.getParent()).ifPresent(desk.files()::beginIn);
    desk.files()
        .save(desk.text("record.pack"), folder.getFileName() + ".zip")
        .ifPresent(target -> instrument.whenWritten(() -> pack(folder, target)));
  }

  private void pack(Path folder, Path target) {
    desk.background()
        .run(
            watch -> HandOver.pack(folder, target),
            answer -> packed(target, answer),
            world -> refused(DiskWords.say(world, desk.words())));
  }

  private void packed(Path target, Checked<String> answer) {
    if (answer instanceof Checked.Ok<String> ok) {
      say.accept(
          Next.say(Mark.DONE, desk.text("pack.written", target))
              .withDetail(desk.text("record.pack.head", ok.value())));
    } else {
      refused(desk.words().sentence(answer.problems().get(0)));
    }
  }

  private void refused(String why) {
    Act again = new Act("record-pack-again", desk.text("record.pack"), this::ask);
    say.accept(Next.say(Mark.BLOCKED, desk.text("record.pack.refused"), again).withDetail(why));
  }
}
