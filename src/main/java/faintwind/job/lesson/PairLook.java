package faintwind.job.lesson;

import faintwind.guide.Pressing;
import faintwind.guide.Progress.StepProgress;
import faintwind.guide.StepState;
import faintwind.guide.checklist.Stage;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.job.bench.ReadBench.Looked;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pair as it was found.
 *
 * @param pair which
 * @param label how it is called
 * @param trouble why its folder tells nothing, or no more than before; empty where it does
 * @param remarks what is odd about its folder and no trouble, such as that it is open elsewhere
 * @param known what its folder tells, or told last
 */
public record PairLook(
    Pair pair,
    String label,
    Optional<String> trouble,
    List<String> remarks,
    Optional<Known> known) {

  public PairLook {
    remarks = List.copyOf(remarks);
  }

  /**
   * What a folder tells.
   *
   * @param looked instrument, progress and row
   * @param origin the first entry of its journal: two folders with the same are copies
   * @param numbers what is compared over the class, as far as it is known
   * @param turntable_min what its session at the turntable takes; {@link PairNumbers} takes it from
   *     the plan, without one from the steps
   * @param toExplain the last calibration, where it does not meet the build and nobody who may
   *     explained that
   */
  public record Known(
      Looked looked,
      String origin,
      Map<Quantity, Double> numbers,
      double turntable_min,
      Optional<String> toExplain) {
    public Known {
      numbers = Map.copyOf(numbers);
    }

    /** Where a stage stands: its most pressing step; done only where every step is settled. */
    public StepState stage(Stage stage) {
      List<StepProgress> steps =
          looked.progress().steps().stream().filter(s -> stage.steps().contains(s.step())).toList();
      if (steps.stream().anyMatch(Pressing::stopsItself)) {
        return StepState.BLOCKED;
      }
      for (StepState pressing :
          List.of(StepState.NEEDS_ATTENTION, StepState.DOING, StepState.WAITING)) {
        if (steps.stream().anyMatch(s -> s.state() == pressing)) {
          return pressing;
        }
      }
      if (steps.stream().allMatch(s -> s.state() == StepState.NOT_NEEDED)) {
        return StepState.NOT_NEEDED;
      }
      return steps.stream().allMatch(s -> s.state().settled()) ? StepState.DONE : StepState.READY;
    }

    /** How many of its steps are settled, and how many there are. */
    public String share(Stage stage) {
      List<StepProgress> steps =
          looked.progress().steps().stream()
              .filter(s -> stage.steps().contains(s.step()))
              .filter(s -> s.state() != StepState.NOT_NEEDED)
              .toList();
      long settled = steps.stream().filter(s -> s.state().settled()).count();
      return settled + "/" + steps.size();
    }

    private Optional<StepState> step(String id) {
      return looked.progress().step(id).map(StepProgress::state);
    }

    /** Whether nothing but the turntable is missing for its next step: it waits in the queue. */
    public boolean waitsForTurntable() {
      return QUEUED.stream()
          .anyMatch(
              id ->
                  step(id)
                      .filter(state -> state == StepState.READY || state == StepState.DOING)
                      .isPresent());
    }
  }

  /** Steps that need the one turntable. */
  static final List<String> QUEUED = List.of("warm-up-run", "spin-runs");
}
