package faintwind.guide.checklist;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All steps of a build, with what a checklist's maker put into it.
 *
 * @param id folder name, such as {@code standard}
 * @param version as written by its maker
 * @param sha256 hash over all its files, so that a changed text shows in the log
 * @param stages in physical order
 * @param remedies what patterns of readings mean
 * @param ownFiles files of the teacher's own that lie over the shipped ones, used or refused
 */
public record Checklist(
    String id,
    String version,
    String sha256,
    List<Stage> stages,
    List<Remedy> remedies,
    List<OwnFile> ownFiles) {

  public Checklist {
    stages = List.copyOf(stages);
    remedies = List.copyOf(remedies);
    ownFiles = List.copyOf(ownFiles);
  }

  /** The same with other notes on the files that lie over it. */
  public Checklist withOwnFiles(List<OwnFile> files) {
    return new Checklist(id, version, sha256, stages, remedies, files);
  }

  /** Every step, in order. */
  public List<Step> steps() {
    return stages.stream().flatMap(stage -> stage.steps().stream()).toList();
  }

  /** The step with that id. */
  public Optional<Step> step(String id) {
    for (Stage stage : stages) {
      for (Step step : stage.steps()) {
        if (step.id().equals(id)) {
          return Optional.of(step);
        }
      }
    }
    return Optional.empty();
  }

  /** The stage a step belongs to. */
  public Optional<Stage> stageOf(String stepId) {
    return stages.stream()
        .filter(stage -> stage.steps().stream().anyMatch(step -> step.id().equals(stepId)))
        .findFirst();
  }

  /** The step that asks for a reading. */
  public Optional<Step> stepOfReading(String readingId) {
    return steps().stream().filter(step -> step.reading(readingId).isPresent()).findFirst();
  }

  /** The steps that help to open a gate. */
  public List<Step> stepsOfGate(String gate) {
    return steps().stream()
        .filter(step -> step.order().gate().filter(gate::equals).isPresent())
        .toList();
  }

  /** Every gate that a step helps to open. */
  public Set<String> gates() {
    Set<String> gates = new LinkedHashSet<>();
    steps().forEach(step -> step.order().gate().ifPresent(gates::add));
    return gates;
  }

  /** Everything a step needs, through all the steps between. Unknown ids are left out. */
  public Set<String> allNeeds(Step step) {
    Set<String> all = new LinkedHashSet<>();
    collect(step, all);
    return all;
  }

  private void collect(Step step, Set<String> all) {
    for (String need : step.order().needs()) {
      if (all.add(need)) {
        step(need).ifPresent(next -> collect(next, all));
      }
    }
    for (String gate : step.order().behind()) {
      for (Step opener : stepsOfGate(gate)) {
        if (all.add(opener.id())) {
          collect(opener, all);
        }
      }
    }
  }
}
