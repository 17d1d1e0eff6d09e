package faintwind.calibration.plan;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.Uncertain;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.Interval;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a person types of a plan, in units of people, and what becomes of it in SI. */
class PlanTermsTest {
  private static final Response RESPONSE =
      new Response(Interval.share(520, 0.1), Interval.share(190, 0.1), 32, 0.01, 1);

  private static Checked<PlanTerms> of(Map<PlanField, String> typed) {
    Map<String, String> texts = new HashMap<>(PlanField.usual());
    texts.put(PlanField.RADIUS.field().id(), "600");
    typed.forEach((field, text) -> texts.put(field.field().id(), text));
    return PlanTerms.of(texts, field -> Where.NOWHERE);
  }

  private static PlanTerms terms(Map<PlanField, String> typed) {
    return value(of(typed));
  }

  private static PlanTerms value(Checked<PlanTerms> terms) {
    return terms.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static List<String> refused(Map<PlanField, String> typed) {
    return of(typed).problems().stream().map(Problem::id).toList();
  }

  @Test
  void whatIsTypedIsTakenInSi() {
    PlanTerms terms =
        terms(
            Map.of(
                PlanField.RADIUS, "600,400",
                PlanField.U_RADIUS, "1,2",
                PlanField.BATTERY, "2.5",
                PlanField.MINUTES, "90",
                PlanField.U_SWIRL, "0.5",
                PlanField.ASYMMETRY, "0.4"));
    assertThat(terms.arm().radii_m())
        .containsExactly(Uncertain.of(0.4, 0.002), Uncertain.of(0.6, 0.001));
    assertThat(terms.arm().way().battery_s()).hasValue(9000);
    assertThat(terms.wish().time().available_s()).hasValue(5400);
    assertThat(terms.uCarried()).hasValue(0.005);
    assertThat(terms.asymmetry()).isEqualTo(0.004);
  }

  @Test
  void oneUncertaintyCountsForAllRadiiAndNoneForNone() {
    Map<PlanField, String> two = Map.of(PlanField.RADIUS, "400,600", PlanField.U_RADIUS, "3");
    assertThat(terms(two).arm().radii_m())
        .containsExactly(Uncertain.of(0.4, 0.003), Uncertain.of(0.6, 0.003));
    assertThat(terms(Map.of(PlanField.U_RADIUS, "")).arm().radii_m())
        .containsExactly(Uncertain.of(0.6));
  }

  @Test
  void aCableHasTurnsAndNothingElseHas() {
    String cable = DataWay.Kind.CABLE.word();
    String none = DataWay.Kind.WIRELESS.word();
    assertThat(refused(Map.of(PlanField.WAY, cable))).containsExactly("plan.cable-turns");
    assertThat(refused(Map.of(PlanField.WAY, none, PlanField.CABLE_TURNS, "50")))
        .containsExactly("plan.cable-turns");
    assertThat(
            terms(Map.of(PlanField.WAY, cable, PlanField.CABLE_TURNS, "50"))
                .arm()
                .way()
                .turnBudget())
        .hasValue(50);
  }

  /** Whatever is asked is typed again as it was. */
  @Test
  void aRequestSaysWhatWasTyped() {
    PlanTerms terms =
        terms(
            Map.of(
                PlanField.RADIUS, "400,600",
                PlanField.U_RADIUS, "1,2",
                PlanField.BATTERY, "2.5",
                PlanField.LESSONS, "3",
                PlanField.U_SWIRL, "0.5"));
    Map<String, String> again = PlanField.texts(terms.with(RESPONSE));
    assertThat(again).containsEntry(PlanField.BEATS_A_TURN.field().id(), "1,2,4,8,12,24");
    assertThat(again).containsEntry(PlanField.RADIUS.field().id(), "400,600");
    assertThat(value(PlanTerms.of(again, field -> Where.NOWHERE))).isEqualTo(terms);
  }

  @Test
  void aPlanFileCountsTimeInSeconds() {
    assertThat(PlanField.BATTERY.path()).isEqualTo("arm.battery_s");
    assertThat(PlanField.BATTERY.perUnit()).isEqualTo(3600);
    assertThat(PlanField.MINUTES.perUnit()).isEqualTo(60);
    assertThat(PlanField.SLOWEST.perUnit()).isEqualTo(1);
    assertThat(PlanField.RADIUS.perUnit()).isEqualTo(1);
  }
}
