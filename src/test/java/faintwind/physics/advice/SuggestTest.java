package faintwind.physics.advice;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignRules;
import faintwind.physics.design.SupplyDesign;
import faintwind.physics.design.Use;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.OutcomeId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SuggestTest {
  private static final SupplyDesign FIVE_VOLTS =
      new SupplyDesign(
          Interval.share(5, 0.02),
          new SupplyDesign.Regulator(SupplyDesign.Kind.MAINS, 0, 0, 1),
          Optional.empty(),
          Optional.empty());

  private final Catalogue catalogue;

  SuggestTest() throws IOException {
    catalogue = Library.shipped();
  }

  private Wish wish(Use.Place place, double contact_s, String logger) {
    return new Wish(
        new Use(place, contact_s, 0.05, 3, 0),
        120,
        new Wish.AtHand(catalogue.logger(logger).orElseThrow(), 1, 30, FIVE_VOLTS),
        AirState.ROOM,
        Wish.Spend.LITTLE);
  }

  @Test
  void suggestionsWorkAndAreSafeToTouch() {
    List<Suggestion> all =
        Suggest.designs(wish(Use.Place.INDOORS, 60, "logger-24bit-256mV"), catalogue);
    assertThat(all).hasSizeBetween(2, 3);
    for (Suggestion s : all) {
      assertThat(s.sheet().stops()).as(s.design().name() + s.sheet().reasons()).isFalse();
      assertThat(DesignRules.problems(s.design(), Where.NOWHERE)).isEmpty();
      assertThat(s.sheet().quantity("heated_ball_C").orElseThrow().verdict())
          .isEqualTo(DesignVerdict.GOOD);
      assertThat(s.reasons()).isNotEmpty();
    }
    assertThat(all.get(0).reasons()).extracting(Problem::id).contains("suggest.balanced");
  }

  @Test
  void quickOneIsQuickestAndSlowOneReadsSlowest() {
    List<Suggestion> all =
        Suggest.designs(wish(Use.Place.INDOORS, 60, "logger-16bit-78mV"), catalogue);
    Suggestion quick = named(all, "suggest.quick");
    Suggestion slow = named(all, "suggest.slow-end");
    for (Suggestion s : all) {
      assertThat(value(quick, "time_constant_at_3_m_s_s"))
          .isLessThanOrEqualTo(value(s, "time_constant_at_3_m_s_s") * 1.1);
      // what the room hides counts beside the smallest speed: a near tie may go either way
      assertThat(value(slow, "smallest_speed_m_s"))
          .isLessThanOrEqualTo(value(s, "smallest_speed_m_s") * 1.15);
    }
  }

  @Test
  void stricterContactMakesColderBalls() {
    double minute = hottest(60);
    double hours = hottest(20_000);
    assertThat(hours).isLessThan(minute).isLessThanOrEqualTo(43);
  }

  @Test
  void heatIsUsedWhereItMayBe() {
    assertThat(hottest(1)).isGreaterThan(45);
  }

  private double hottest(double contact_s) {
    return Suggest.designs(wish(Use.Place.INDOORS, contact_s, "logger-24bit-256mV"), catalogue)
        .stream()
        .mapToDouble(s -> s.sheet().quantity("heated_ball_C").orElseThrow().value().high())
        .max()
        .orElseThrow();
  }

  @Test
  void inTheSunNoTarnishedOrBlackBallIsProposed() {
    List<Suggestion> all =
        Suggest.designs(wish(Use.Place.SUN, 60, "logger-24bit-256mV"), catalogue);
    assertThat(all).isNotEmpty();
    for (Suggestion s : all) {
      assertThat(s.design().ball().coat().solarAbsorptance().high()).isLessThan(0.4);
    }
  }

  @Test
  void nothingIsProposedWhereTheAirItselfIsTooHotToTouch() {
    Wish cool = wish(Use.Place.INDOORS, 20_000, "logger-24bit-256mV");
    Wish hot =
        new Wish(cool.use(), 120, cool.atHand(), new AirState(318, 101_325, 0.2), cool.spend());
    assertThat(Suggest.designs(hot, catalogue)).isEmpty();
  }

  @Test
  void substitutionsSayWhatTheyChange() throws IOException {
    String text = Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
    Design design =
        DesignFile.parse(text, catalogue)
            .fold(
                (d, n) -> d,
                p -> {
                  throw new AssertionError(p);
                });
    List<Substitution> all = Substitution.of(design, catalogue);
    assertThat(all)
        .extracting(Substitution::id)
        .containsExactly("ball", "resistor", "thermocouple", "leads");
    assertThat(all).extracting(Substitution::by).startsWith("12 mm", "120 Ω", "T");
    Substitution.Consequence power = consequence(all.get(1), OutcomeId.HEATER_POWER);
    assertThat(power.share()).isBetween(-0.17, -0.16);
    assertThat(consequence(all.get(0), OutcomeId.STILL_DELTA).share()).isPositive();
    assertThat(consequence(all.get(3), OutcomeId.LEAD_LOSS_SHARE).share()).isPositive();
  }

  private static Substitution.Consequence consequence(Substitution s, OutcomeId id) {
    return s.consequences().stream().filter(c -> c.before().id() == id).findFirst().orElseThrow();
  }

  private static Suggestion named(List<Suggestion> all, String reason) {
    return all.stream()
        .filter(s -> s.reasons().stream().anyMatch(r -> r.id().equals(reason)))
        .findFirst()
        .orElseThrow();
  }

  private static double value(Suggestion s, String id) {
    return s.sheet().quantity(id).orElseThrow().value().nominal();
  }
}
