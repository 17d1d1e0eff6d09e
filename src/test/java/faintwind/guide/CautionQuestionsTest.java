package faintwind.guide;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.checklist.Caution;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.SampleBuild;
import faintwind.guide.checklist.ShippedChecklist;
import faintwind.record.Event.CautionAcknowledged;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CautionQuestionsTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();
  private static final Pattern WORD = Pattern.compile("[a-z]{4,}");
  private static final int STEM = 4;

  private static Caution caution(String step, String id) {
    return CHECKLIST.step(step).flatMap(s -> s.caution(id)).orElseThrow();
  }

  @Test
  void everyCautionAsksForWhatItsTextSays() {
    List<Caution> all = CHECKLIST.steps().stream().flatMap(s -> s.cautions().stream()).toList();
    assertThat(all).hasSizeGreaterThan(100);
    for (Caution caution : all) {
      Caution.Ask ask = caution.ask().orElseThrow(() -> new AssertionError(caution.id()));
      assertThat(ask.question()).endsWith("?").hasSizeLessThan(60);
      assertThat(ask.wrong()).hasSize(2).doesNotContain(ask.right());
      String text = caution.text().toLowerCase(Locale.ROOT);
      List<String> words =
          WORD.matcher(ask.right().toLowerCase(Locale.ROOT)).results().map(w -> w.group()).toList();
      long there = words.stream().filter(w -> text.contains(w.substring(0, STEM))).count();
      assertThat(3 * there)
          .as(caution.id() + ": " + ask.right())
          .isGreaterThanOrEqualTo(words.size());
    }
  }

  @Test
  void aPersonIsAskedOnceAnInstrumentAboutTheSameCaution() {
    JournalEntry read =
        SampleBuild.complete(CHECKLIST).stream()
            .filter(e -> e.event().equals(new CautionAcknowledged("solvent")))
            .filter(e -> e.step().filter("polish-and-degrease"::equals).isPresent())
            .findFirst()
            .orElseThrow();
    InstrumentState fresh = SampleBuild.after(List.of()).state();
    InstrumentState later = SampleBuild.after(List.of(read)).state();
    Caution again = caution("coat-parts", "solvent");
    assertThat(CautionQuestions.of(again, CHECKLIST, fresh, read.who())).isPresent();
    assertThat(CautionQuestions.of(again, CHECKLIST, later, read.who())).isEmpty();
    assertThat(CautionQuestions.of(again, CHECKLIST, later, "Somebody else")).isPresent();
    assertThat(CautionQuestions.of(caution("coat-parts", "varnish"), CHECKLIST, later, read.who()))
        .isPresent();
  }
}
