package faintwind.guide.checklist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All steps of a build, with what a checklist's maker put into it. Safe from any thread. */
public final class Checklist {
  private final String id;
  private final String version;
  private final String sha256;
  private final List<Stage> stages;
  private final List<Remedy> remedies;
  private List<OwnFile> ownFiles = List.of();
  private final List<Step> steps;
  private final Map<String, Step> byId = new HashMap<>();
  private final Map<String, List<Step>> openers = new LinkedHashMap<>();

  /** Worked out at the first need, and the same for every instrument. */
  private final Map<String, Set<String>> needs = new HashMap<>();

  private final Map<String, Set<String>> names = new HashMap<>();

  /**
   * A checklist.
   *
   * @param id folder name, such as {@code standard}
   * @param version as written by its maker
   * @param sha256 hash over all its files, so that a changed text shows in the log
   * @param stages in physical order
   * @param remedies what patterns of readings mean
   */
  public Checklist(
      String id, String version, String sha256, List<Stage> stages, List<Remedy> remedies) {
    this.id = id;
    this.version = version;
    this.sha256 = sha256;
    this.stages = List.copyOf(stages);
    this.remedies = List.copyOf(remedies);
    steps = stages.stream().flatMap(stage -> stage.steps().stream()).toList();
    for (Step step : steps) {
      byId.putIfAbsent(step.id(), step);
      step.order()
          .gate()
          .ifPresent(gate -> openers.computeIfAbsent(gate, same -> new ArrayList<>()).add(step));
    }
  }

  /** The same with other notes on the files that lie over it. */
  public Checklist withOwnFiles(List<OwnFile> files) {
    Checklist other = new Checklist(id, version, sha256, stages, remedies);
    other.ownFiles = List.copyOf(files);
    return other;
  }

  public String id() {
    return id;
  }

  public String version() {
    return version;
  }

  public String sha256() {
    return sha256;
  }

  public List<Stage> stages() {
    return stages;
  }

  public List<Remedy> remedies() {
    return remedies;
  }

  /** Files of the teacher's own that lie over the shipped ones, used or refused. */
  public List<OwnFile> ownFiles() {
    return ownFiles;
  }

  /** Every step, in order. */
  public List<Step> steps() {
    return steps;
  }

  /** The step with that id. */
  public Optional<Step> step(String stepId) {
    return Optional.ofNullable(byId.get(stepId));
  }

  /** The stage a step belongs to. */
  public Optional<Stage> stageOf(String stepId) {
    return stages.stream()
        .filter(stage -> stage.steps().stream().anyMatch(step -> step.id().equals(stepId)))
        .findFirst();
  }

  /** The step that asks for a reading. */
  public Optional<Step> stepOfReading(String readingId) {
    return steps.stream().filter(step -> step.reading(readingId).isPresent()).findFirst();
  }

  /** The steps that help to open a gate. */
  public List<Step> stepsOfGate(String gate) {
    return openers.getOrDefault(gate, List.of());
  }

  /** Every gate that a step helps to open. */
  public Set<String> gates() {
    return Collections.unmodifiableSet(openers.keySet());
  }

  /** Everything a step needs, through all the steps between. Unknown ids are left out. */
  public synchronized Set<String> allNeeds(Step step) {
    Set<String> known = needs.get(step.id());
    if (known == null) {
      Set<String> all = new LinkedHashSet<>();
      collect(step, all);
      known = Collections.unmodifiableSet(all);
      needs.put(step.id(), known);
    }
    return known;
  }

  /** Every name of a value in the texts and formulas of a step of it. */
  public synchronized Set<String> names(Step step) {
    return names.computeIfAbsent(step.id(), same -> step.names());
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
