package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.job.design.PartsList;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.advice.Prices;
import faintwind.ui.Quiet;
import faintwind.ui.part.NumberModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesignPartsModelTest {
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final List<Checked<Prices>> changes = new ArrayList<>();
  private Optional<Path> target = Optional.empty();
  private Quiet window;
  private DesignPartsModel parts;
  private Worked worked;

  @BeforeEach
  void ofTheSampleDesign() throws IOException {
    worked = new Worked();
    window = new Quiet(folder);
    parts = new DesignPartsModel(WORDS, window.desk().background(), name -> target, changes::add);
  }

  private PartsList list() {
    return parts.list().get().orElseThrow();
  }

  private static NumberModel typed(String text) {
    NumberModel field = new NumberModel("", WORDS);
    field.set(text);
    return field;
  }

  @Test
  void thereIsNoListBeforeThereIsADesign() {
    assertThat(parts.list().get()).isEmpty();
    parts.present(worked.sample);
    assertThat(list().lines()).isNotEmpty();
  }

  @Test
  void moreInstrumentsNeedMoreBalls() {
    parts.present(worked.sample);
    // two balls each, a quarter of them to spare, up to the next whole one, and one for practice
    assertThat(balls()).isEqualTo(4);
    parts.instruments().set("3");
    assertThat(balls()).isEqualTo(9);
  }

  private double balls() {
    return list().lines().stream()
        .filter(line -> line.need().key().startsWith("ball"))
        .findFirst()
        .orElseThrow()
        .need()
        .buy();
  }

  @Test
  void noWholeNumberOfInstrumentsMakesNoList() {
    parts.present(worked.sample);
    for (String none : List.of("0", "1.5", "many", "")) {
      parts.instruments().set(none);
      assertThat(parts.list().get()).as(none).isEmpty();
    }
  }

  @Test
  void aPriceGoesIntoTheDesignAndAnEmptyOneOutOfIt() {
    parts.present(worked.sample);
    String key = list().lines().get(0).need().key();
    parts.priced(key, typed("2,50"));
    Prices with = Worked.ok(changes.get(0));
    assertThat(with.each()).containsEntry(key, 2.5);
    parts.present(worked.sample.with(with));
    assertThat(list().cost().sum()).isGreaterThan(0);
    parts.priced(key, typed(""));
    assertThat(Worked.ok(changes.get(1)).each()).doesNotContainKey(key);
  }

  @Test
  void whatChangesNothingAsksForNothing() {
    parts.priced("ball", typed("2"));
    parts.present(worked.sample);
    parts.currencyTyped();
    parts.priced("ball", typed("dear"));
    assertThat(changes).isEmpty();
    parts.currency().set(" € ");
    parts.currencyTyped();
    assertThat(Worked.ok(changes.get(0)).currency()).isEqualTo("€");
  }

  @Test
  void theListIsWrittenWhereAPersonWants() throws Exception {
    List<Path> saved = new ArrayList<>();
    parts.present(worked.sample);
    parts.save("csv", saved::add, world -> {});
    assertThat(window.unanswered()).isZero();
    target = Optional.of(folder.resolve("parts.csv"));
    parts.save("csv", saved::add, world -> {});
    window.answer();
    assertThat(saved).containsExactly(folder.resolve("parts.csv"));
    assertThat(Files.readAllLines(saved.get(0))).hasSize(list().rows().size());
  }

  @Test
  void whatTheWorldRefusesIsTold() throws Exception {
    List<IOException> refused = new ArrayList<>();
    parts.present(worked.sample);
    target = Optional.of(folder.resolve("no such folder/parts.csv"));
    parts.save("csv", written -> {}, refused::add);
    window.answer();
    assertThat(refused).hasSize(1);
  }
}
