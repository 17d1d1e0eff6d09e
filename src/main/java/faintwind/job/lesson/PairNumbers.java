package faintwind.job.lesson;

import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.files.calibration.CalibrationFile;
import faintwind.guide.Due;
import faintwind.guide.InForceGate;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.ReadBench.Looked;
import faintwind.job.lesson.PairLook.Known;
import faintwind.job.record.InstrumentView;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Amount;
import faintwind.message.Checked;
import faintwind.message.NumberText;
import faintwind.message.Problem;
import faintwind.record.Event.CalibrationMade;
import faintwind.record.InstrumentState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The numbers of a pair that are compared over the class, and what its turntable session takes. */
final class PairNumbers {
  private static final double PER_CENT = 100;
  private static final double MINUTE_s = 60;

  /** Where no plan is kept and the steps say nothing. */
  private static final int USUAL_min = 60;

  private PairNumbers() {}

  static Known known(Looked looked, OffsetDateTime now) throws IOException {
    InstrumentView view = looked.view();
    InstrumentState state = view.state();
    Map<Quantity, Double> numbers = new EnumMap<>(Quantity.class);
    reading(state, Due.JAR_STEP, Due.JAR_READING, Quantity.STILL, numbers);
    reading(state, "heater-alone", "heater-alone", Quantity.HEATER, numbers);
    Optional<BenchRow.InForce> inForce = looked.row().inForce();
    inForce
        .flatMap(f -> f.range())
        .ifPresent(range -> numbers.put(Quantity.U95, PER_CENT * range.u95Share()));
    if (inForce.isPresent()) {
      Path file = view.path().resolve(inForce.get().file());
      if (Files.isRegularFile(file)
          && PlanTurntable.response(file, now) instanceof Checked.Ok<Response> response) {
        numbers.put(Quantity.CONSTANT, response.value().still_s().nominal());
        numbers.put(Quantity.BREEZE, response.value().breeze_s().nominal());
      }
    }
    String origin =
        state.lines().isEmpty()
            ? view.path().toString()
            : state.lines().get(0).entry()
                + " "
                + state.lines().get(0).at()
                + " "
                + state.lines().get(0).event();
    return new Known(looked, origin, numbers, turntable_min(view), toExplain(view));
  }

  private static Optional<String> toExplain(InstrumentView view) throws IOException {
    Optional<String> last = view.state().last(CalibrationMade.class).map(l -> l.event().file());
    if (last.isEmpty() || !Files.isRegularFile(view.path().resolve(last.get()))) {
      return Optional.empty();
    }
    return CalibrationFile.read(view.path().resolve(last.get()), last.get())
        .fold(
            (made, notes) -> InForceGate.reasons(view.state(), last.get(), made),
            problems -> List.<Problem>of())
        .stream()
        .filter(reason -> reason.id().equals("in-force.build-off"))
        .findFirst()
        .flatMap(off -> last);
  }

  private static void reading(
      InstrumentState state,
      String step,
      String reading,
      Quantity quantity,
      Map<Quantity, Double> to) {
    state
        .reading(step, reading)
        .map(line -> line.event().amount())
        .filter(amount -> amount.bound() == Amount.Bound.EXACT)
        .ifPresent(
            amount ->
                to.put(
                    quantity, NumberText.convert(amount.value(), amount.unit(), quantity.unit())));
  }

  private static double turntable_min(InstrumentView view) throws IOException {
    Checked<Optional<PlannedSession>> plan = PlanTurntable.kept(view.path(), view.state());
    return plan.fold((kept, notes) -> kept, problems -> Optional.<PlannedSession>empty())
        .map(kept -> kept.choice().staircase().total_s() / MINUTE_s)
        .orElseGet(
            () ->
                (double)
                    PairLook.QUEUED.stream()
                        .flatMap(id -> view.checklist().step(id).stream())
                        .mapToInt(step -> step.kit().minutes().orElse(USUAL_min))
                        .sum());
  }
}
