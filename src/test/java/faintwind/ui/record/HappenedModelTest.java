package faintwind.ui.record;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.ShippedChecklist;
import faintwind.guide.checklist.Step;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event;
import faintwind.record.Event.NoteWritten;
import faintwind.record.Event.StepOpened;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import faintwind.ui.Cellar;
import faintwind.ui.instrument.OpenInstrument.Entry;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import faintwind.ui.record.HappenedModel.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class HappenedModelTest {
  private final Messages words = Messages.of(Locale.ENGLISH);
  private final List<Entry> entered = new ArrayList<>();
  private Optional<Consumer<Checked<JournalEntry>>> told = Optional.empty();
  private final HappenedModel model =
      new HappenedModel(
          words,
          (entry, answer) -> {
            entered.add(entry);
            told = Optional.of(answer);
          });

  private static JournalEntry entry(String step, Event event) {
    return new JournalEntry("e-" + step, Cellar.NOW, "Ida", Optional.of(step), event);
  }

  private Next next() {
    return model.next().get().orElseThrow();
  }

  private static Step step() {
    return ShippedChecklist.standard().step("glue-heater").orElseThrow();
  }

  @Test
  void nothingIsEnteredBeforeItIsSaid() {
    for (Kind kind : Kind.values()) {
      model.begin(kind);
      assertThat(next().act()).isEmpty();
    }
    assertThat(model.unsaved()).isEmpty();
    model.said().set("new leads");
    assertThat(next().act()).as("to whom is not said").isEmpty();
    assertThat(model.unsaved().orElseThrow().keep()).isEmpty();
    model.begin(Kind.REPAIR);
    assertThat(next().act()).as("which work is not said").isEmpty();
    model.step().set(Optional.of(step()));
    assertThat(next().act()).isPresent();
    assertThat(model.unsaved().orElseThrow().keep()).isPresent();
  }

  @Test
  void whatIsRefusedStaysTyped() {
    model.begin(Kind.NOTE);
    model.said().set("moved to the south shelf");
    next().act().orElseThrow().run().run();
    assertThat(entered).hasSize(1);
    told.orElseThrow().accept(Checked.refused(Problem.error("enter.no-name", Where.NOWHERE, "")));
    assertThat(next().detail()).contains("No name was given.");
    assertThat(model.said().get()).isEqualTo("moved to the south shelf");
    told.orElseThrow()
        .accept(Checked.ok(entry("glue-heater", new NoteWritten("moved to the south shelf"))));
    assertThat(model.open().get()).isEmpty();
    assertThat(model.said().get()).isEmpty();
    assertThat(next().sentence()).isEqualTo("The note is entered.");
  }

  @Test
  void whatIsTypedStaysWhenSomethingElseIsSaid() {
    model.begin(Kind.NOTE);
    model.said().set("moved to the");
    model.say(Next.say(Mark.DONE, "Packed"));
    assertThat(next().sentence()).isEqualTo("Packed");
    assertThat(model.open().get()).contains(Kind.NOTE);
    model.said().set("moved to the south shelf");
    assertThat(next().act()).isPresent();
  }

  @Test
  void onlyWorkThatWasBegunCanHaveBeenMended() {
    InstrumentState state = InstrumentState.replay(List.of(entry("glue-heater", new StepOpened())));
    assertThat(HappenedModel.begun(ShippedChecklist.standard(), state)).containsExactly(step());
  }
}
