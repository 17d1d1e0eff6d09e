package faintwind.ui.make;

import faintwind.job.record.InstrumentView;
import faintwind.job.record.PrintSteps;
import faintwind.job.record.PrintSteps.Wanted;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument;
import faintwind.ui.part.Note;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;

/** Puts a step or a stage on paper: writes the page into the instrument's folder and opens it. */
final class StepPrinting {
  private final Desk desk;
  private final OpenInstrument instrument;

  StepPrinting(Desk desk, OpenInstrument instrument) {
    this.desk = desk;
    this.instrument = instrument;
  }

  /**
   * Writes the page in the background; a note says where it is.
   *
   * @param asker gets the focus back when the note is closed
   */
  void print(Wanted wanted, Node asker) {
    InstrumentView view = instrument.now().get().view();
    Messages words = desk.words();
    desk.background()
        .runQuietly(
            watch -> new PrintSteps(desk.clock(), words).keep(view, wanted),
            written -> written(written, asker),
            world ->
                tell(words.text("window.print.failed"), String.valueOf(world.getMessage()), asker));
  }

  private void written(Checked<Path> written, Node asker) {
    if (written instanceof Checked.Ok<Path> ok) {
      tell(desk.text("window.print.done"), desk.text("window.print.where", ok.value()), asker);
      desk.files().show(ok.value());
    } else {
      String sentences =
          written.problems().stream().map(desk.words()::sentence).collect(Collectors.joining(" "));
      tell(desk.text("window.print.failed"), sentences, asker);
    }
  }

  private void tell(String title, String text, Node asker) {
    desk.notes().clear();
    desk.notes().toggle(new Note(title, text, List.of(), "", ""), asker);
  }
}
