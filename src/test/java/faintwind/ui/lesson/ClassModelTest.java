package faintwind.ui.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.lesson.ClassLook;
import faintwind.job.lesson.ClassText;
import faintwind.job.lesson.PairLook;
import faintwind.job.lesson.ToSign;
import faintwind.ui.Quiet;
import faintwind.ui.RehearsedClass;
import faintwind.ui.frame.Place;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ClassModelTest {
  @SuppressWarnings("NullAway.Init")
  private Quiet quiet;

  @SuppressWarnings("NullAway.Init")
  private ClassModel model;

  @BeforeAll
  void begin(@TempDir Path folder) throws IOException {
    RehearsedClass.into(folder, Quiet.CLOCK);
    quiet = new Quiet(folder);
    model = new ClassModel(quiet.desk(), folder);
  }

  private ClassLook look() throws InterruptedException {
    model.look();
    quiet.answer();
    return model.view().get().orElseThrow();
  }

  @Test
  void whoIsStuckIsSaidOnceTheFoldersAreRead() throws InterruptedException {
    assertThat(look().pairs()).hasSize(5);
    assertThat(model.next().get().mark()).isEqualTo(Mark.ATTENTION);
    assertThat(model.next().get().sentence()).isEqualTo("Stuck: Pair 3, Pair 4");
    assertThat(model.next().get().act()).map(Act::id).contains("class-report");
  }

  /** A teacher's own instrument may lie beside the folders of the pairs. */
  @Test
  void anInstrumentOfNoPairIsNotStuck() throws InterruptedException {
    ClassLook look = look();
    PairLook stranger =
        new PairLook(
            new Pair(0, "mine", ""),
            "mine",
            Optional.of("It is none's."),
            List.of(),
            Optional.empty());
    List<PairLook> all = new ArrayList<>(look.pairs());
    all.add(stranger);
    ClassLook beside = new ClassLook(look.it(), all, look.now(), look.trouble());
    assertThat(model.now(beside, new Act("class-report", "", () -> {})).sentence())
        .isEqualTo("Stuck: Pair 3, Pair 4");
  }

  /** A calibration that does not meet the build stops nobody, and waits for the teacher. */
  @Test
  void whoWaitsForASignatureIsSaidWhereNobodyIsStuck() throws InterruptedException {
    ClassLook look = look();
    List<PairLook> well =
        look.pairs().stream().filter(pair -> !ClassText.isStuck(pair)).map(this::unsigned).toList();
    ClassLook waiting = new ClassLook(look.it(), well, look.now(), look.trouble());
    Next next = model.now(waiting, new Act("class-report", "", () -> {}));
    assertThat(next.mark()).isEqualTo(Mark.ATTENTION);
    assertThat(next.sentence()).isEqualTo("Waits for your signature: Pair 5");
  }

  private PairLook unsigned(PairLook pair) {
    Optional<String> file =
        pair.pair().number() == 5 ? Optional.of("calibrations/a.json") : Optional.empty();
    return new PairLook(
        pair.pair(),
        pair.label(),
        pair.trouble(),
        pair.remarks(),
        pair.known()
            .map(
                k ->
                    new PairLook.Known(
                        k.looked(), k.origin(), k.numbers(), k.turntable_min(), file)));
  }

  /** Neither the board nor the projector is left by a key alone. */
  @Test
  void backLeavesTheProjectorFirstAndThenTheBoard() throws InterruptedException {
    look();
    Act back = model.next().get().others().get(0);
    quiet.desk().look().projector().set(true);
    back.run().run();
    assertThat(quiet.desk().look().projector().get()).isFalse();
    assertThat(quiet.sentTo()).isEmpty();
    back.run().run();
    assertThat(quiet.sentTo()).containsExactly(Place.HOME);
  }

  @Test
  void aLookThatIsStillUnderWayIsNotBegunTwice() throws InterruptedException {
    model.look();
    model.look();
    quiet.answer();
    assertThat(quiet.unanswered()).isZero();
  }

  @Test
  void whatFitsGoesByTheMinutesTypedOrThoseThatAreLeftOfTheLesson() throws InterruptedException {
    ClassLook look = look();
    assertThat(look.minutes()).isEqualTo(35);
    String lesson = String.join("\n", model.fits(look));
    model.minutes().set("35");
    assertThat(String.join("\n", model.fits(look))).isEqualTo(lesson);
    model.minutes().set("5");
    assertThat(String.join("\n", model.fits(look))).isNotEqualTo(lesson);
    model.minutes().set("an hour");
    assertThat(String.join("\n", model.fits(look))).isEqualTo(lesson);
  }

  @Test
  void theTeachersCodeSignsAWrongOneDoesNotAndBothAreForgotten() throws InterruptedException {
    List<ToSign> doubtful = model.toSign(look());
    assertThat(doubtful).extracting(ToSign::pair).containsExactly(4);
    model.because().set("measured again beside me");
    model.code().set("0000");
    assertThat(signed(doubtful.get(0))).isEqualTo(doubtful);
    assertThat(model.remark().get()).isNotEmpty().isNotEqualTo("Signed.");
    model.code().set("4711");
    assertThat(signed(doubtful.get(0))).isEmpty();
    assertThat(model.remark().get()).isEqualTo("Signed.");
  }

  /** What waits still, once the class was looked at again. */
  private List<ToSign> signed(ToSign one) throws InterruptedException {
    model.sign(one);
    assertThat(model.code().get()).isEmpty();
    quiet.answer();
    quiet.answer();
    return model.toSign(model.view().get().orElseThrow());
  }

  @Test
  void aFolderWithoutAClassIsSaid(@TempDir Path empty) throws InterruptedException {
    Quiet there = new Quiet(empty);
    ClassModel none = new ClassModel(there.desk(), empty);
    assertThat(none.next().get().mark()).isEqualTo(Mark.DOING);
    none.look();
    there.answer();
    assertThat(none.view().get()).isEmpty();
    assertThat(none.next().get().mark()).isEqualTo(Mark.BLOCKED);
    assertThat(none.next().get().sentence()).contains("class.json");
  }
}
