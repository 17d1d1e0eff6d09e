package faintwind.report.sheet;

import faintwind.guide.Situation;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a printed sheet of steps is made from.
 *
 * @param name the instrument's name
 * @param checklist that guides it
 * @param situation its journal, designs and the time of printing
 * @param parts what is printed, in the checklist's order
 * @param pictures drawings of the steps as SVG, by file name
 */
public record StepSheetContent(
    String name,
    Checklist checklist,
    Situation situation,
    List<Part> parts,
    Map<String, String> pictures) {

  public StepSheetContent {
    parts = List.copyOf(parts);
    pictures = Map.copyOf(pictures);
  }

  /** Steps of one stage. */
  public record Part(Stage stage, List<Step> steps) {
    public Part {
      steps = List.copyOf(steps);
    }
  }

  /** A whole stage; empty where the checklist has none of that id. */
  public static Optional<List<Part>> ofStage(Checklist checklist, String stageId) {
    return checklist.stages().stream()
        .filter(stage -> stage.id().equals(stageId))
        .findFirst()
        .map(stage -> List.of(new Part(stage, stage.steps())));
  }

  /** One step; empty where the checklist has none of that id. */
  public static Optional<List<Part>> ofStep(Checklist checklist, String stepId) {
    return checklist
        .stageOf(stepId)
        .flatMap(
            stage -> checklist.step(stepId).map(step -> List.of(new Part(stage, List.of(step)))));
  }

  /** Every stage. */
  public static List<Part> ofAll(Checklist checklist) {
    return checklist.stages().stream().map(stage -> new Part(stage, stage.steps())).toList();
  }
}
