package faintwind.calibration.plan;

import faintwind.message.Checked;
import faintwind.message.FieldTexts;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a person says of a plan, before the instrument's response is known.
 *
 * @param arm the arm on the bench
 * @param wish what the session should bring and may cost
 * @param uCarried standard uncertainty of the share of carried air, where it is stated
 * @param asymmetry standard deviation of half the relative difference between the two directions
 */
public record PlanTerms(ArmSetup arm, PlanWish wish, OptionalDouble uCarried, double asymmetry) {

  /**
   * The terms, of texts by the id of their field; refused with everything that cannot be, whoever
   * says it.
   *
   * @param place how a field is found by the person who gave it
   */
  public static Checked<PlanTerms> of(Map<String, String> texts, Function<PlanField, Where> place) {
    FieldTexts given = new FieldTexts(texts, field -> place.apply(PlanField.named(field.id())));
    Checked<ArmSetup> arm = ArmSetup.of(given);
    Checked<PlanWish> wish = PlanWish.of(given);
    List<Problem> problems = new ArrayList<>(arm.problems());
    problems.addAll(wish.problems());
    problems.addAll(given.problems(List.of(PlanRequest.U_SWIRL, PlanRequest.ASYMMETRY)));
    return problems.isEmpty()
        ? arm.then(
            a ->
                wish.map(
                    w ->
                        new PlanTerms(
                            a,
                            w,
                            given.optional(PlanRequest.U_SWIRL, 0.01),
                            given.number(PlanRequest.ASYMMETRY) / 100)))
        : Checked.refused(problems);
  }

  /** With how the instrument answers, everything a plan starts from. */
  public PlanRequest with(Response response) {
    return new PlanRequest(arm, wish, response, uCarried, asymmetry);
  }
}
