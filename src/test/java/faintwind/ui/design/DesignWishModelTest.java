package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.physics.design.Use;
import faintwind.physics.part.Catalogue;
import faintwind.ui.Quiet;
import faintwind.ui.design.DesignWishModel.Pick;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DesignWishModelTest {
  private final Quiet quiet = new Quiet(Path.of(""));
  private final Worked worked = new Worked();
  private final Catalogue parts = worked.work.parts();
  private final DesignWishModel wish =
      new DesignWishModel(quiet.desk().words(), quiet.desk().background());

  DesignWishModelTest() throws IOException {}

  @BeforeAll
  void itBeginsWithWhatTheDesignIsForAndAsksOnce() throws InterruptedException {
    wish.begin(worked.sample.design(), parts);
    assertThat(wish.slowest().typed().get()).isEqualTo("0.05");
    assertThat(wish.pick(Pick.PLACE).get()).isEqualTo("indoors");
    assertThat(wish.pick(Pick.CONTACT).get()).isEqualTo("4");
    assertThat(wish.response().typed().get()).isEqualTo("120");
    assertThat(wish.pick(Pick.SPEND).get()).isEqualTo("little");
    assertThat(wish.answer().get().known()).isFalse();
    quiet.answer();
    assertThat(wish.answer().get().known()).isTrue();
    assertThat(wish.answer().get().suggestions()).isNotEmpty();
    wish.begin(worked.sample.design(), parts);
    assertThat(quiet.unanswered()).isZero();
  }

  @Test
  void aNumberThatIsNoneAsksNothingAndOnlyTheLastOfTwoChangesIsAnswered()
      throws InterruptedException {
    wish.response().set("");
    wish.pick(Pick.PLACE).set("sun");
    assertThat(quiet.unanswered()).isZero();
    wish.response().set("60");
    wish.pick(Pick.PLACE).set("classroom");
    quiet.answer();
    assertThat(wish.answer().get().known()).isFalse();
    quiet.answer();
    assertThat(wish.answer().get().suggestions())
        .isNotEmpty()
        .allMatch(s -> s.design().use().place() == Use.Place.CLASSROOM);
  }

  @Test
  void somethingElseIsSaidUntilADesignIsTakenForIt() throws InterruptedException {
    wish.taken();
    assertThat(wish.isChanged()).isFalse();
    wish.pick(Pick.CONTACT).set("28800");
    quiet.answer();
    assertThat(wish.isChanged()).isTrue();
    wish.taken();
    assertThat(wish.isChanged()).isFalse();
  }

  @Test
  void everyChoiceOffersWhatIsPicked() {
    for (Pick pick : Pick.values()) {
      assertThat(wish.options(pick, parts))
          .extracting(DesignChoices.Option::id)
          .contains(wish.pick(pick).get());
    }
  }
}
