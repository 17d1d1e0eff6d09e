package faintwind.guide;

import faintwind.guide.Progress.StepProgress;
import faintwind.guide.checklist.Checklist;
import faintwind.guide.checklist.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What fits into the time there is, over several instruments. Steps that start a clock come first,
 * since they go on by themselves; then the earliest of each instrument. A step becomes possible as
 * soon as those before it are done or planned, unless one of them has to wait for its clock.
 *
 * @param items what to do, in this order
 * @param running what cures, dries or warms up meanwhile and afterwards
 * @param next the shortest possible step where none fits
 */
public record Today(List<Item> items, List<Item> running, Optional<Item> next) {
  public Today {
    items = List.copyOf(items);
    running = List.copyOf(running);
  }

  /** An instrument by its name, and where it is. */
  public record Bench(String name, Checklist checklist, Progress progress) {}

  /** A step on a bench. */
  public record Item(Bench bench, StepProgress step) {
    /** Time with one's hands, without that of its clock. */
    public int minutes() {
      return step.step().kit().minutes().orElse(OwnChoices.UNKNOWN_min);
    }

    private boolean hasClock() {
      return step.reasons().stream().anyMatch(r -> r.id().equals("gate.clock-not-started"));
    }
  }

  /**
   * Plans a time.
   *
   * @param benches in the order of who needs a person first
   * @param minutes there are
   */
  public static Today of(List<Bench> benches, int minutes) {
    List<Walk> walks = benches.stream().map(Walk::new).toList();
    List<Item> items = new ArrayList<>();
    int left = minutes;
    Optional<Item> next = next(walks, left);
    while (next.isPresent()) {
      Item item = next.get();
      items.add(item);
      left -= item.minutes();
      walks.stream().filter(w -> w.bench.equals(item.bench())).forEach(w -> w.plan(item));
      next = next(walks, left);
    }
    List<Item> running = new ArrayList<>();
    walks.forEach(walk -> running.addAll(walk.waiting));
    items.stream().filter(Item::hasClock).forEach(running::add);
    Optional<Item> shortest =
        walks.stream().flatMap(w -> w.possible().stream()).min(Comparator.comparing(Item::minutes));
    return new Today(items, running, items.isEmpty() ? shortest : Optional.empty());
  }

  private static Optional<Item> next(List<Walk> walks, int left) {
    List<Item> possible =
        walks.stream()
            .flatMap(walk -> walk.possible().stream())
            .filter(item -> item.minutes() <= left)
            .toList();
    return possible.stream()
        .filter(Item::hasClock)
        .findFirst()
        .or(() -> possible.stream().findFirst());
  }

  /** All of it together. */
  public int minutes() {
    return items.stream().mapToInt(Item::minutes).sum();
  }

  /** Tools to lay out. */
  public SortedSet<String> tools() {
    return kit(kit -> kit.tools());
  }

  /** Parts and consumables to lay out. */
  public SortedSet<String> parts() {
    return kit(kit -> kit.parts());
  }

  private SortedSet<String> kit(Function<Step.Kit, List<String>> things) {
    SortedSet<String> all = new TreeSet<>();
    items.forEach(item -> all.addAll(things.apply(item.step().step().kit())));
    return all;
  }

  /** What is possible on one bench as the plan goes on. */
  private static final class Walk {
    private final Bench bench;
    private final Set<String> settled = new HashSet<>();
    private final Set<String> begun = new HashSet<>();
    private final List<Item> now;
    private final List<Item> later;
    private final List<Item> waiting;

    Walk(Bench bench) {
      this.bench = bench;
      Agenda agenda = Agenda.of(bench.checklist(), bench.progress());
      now = agenda.now().stream().map(step -> new Item(bench, step)).toList();
      waiting = agenda.waiting().stream().map(step -> new Item(bench, step)).toList();
      later =
          agenda.later().stream()
              .filter(one -> !one.until().contains(one.step()))
              .map(one -> new Item(bench, one.step()))
              .toList();
      Set<String> open = new HashSet<>();
      List.of(now, later, waiting).forEach(l -> l.forEach(i -> open.add(i.step().step().id())));
      agenda.later().forEach(one -> open.add(one.step().step().id()));
      bench.progress().steps().stream()
          .map(step -> step.step().id())
          .filter(id -> !open.contains(id))
          .forEach(settled::add);
    }

    List<Item> possible() {
      List<Item> all = new ArrayList<>(now);
      later.stream().filter(item -> opens(item.step().step())).forEach(all::add);
      all.removeIf(item -> begun.contains(item.step().step().id()));
      return all;
    }

    private boolean opens(Step step) {
      return settled.containsAll(step.order().needs())
          && step.order().behind().stream()
              .flatMap(gate -> bench.checklist().stepsOfGate(gate).stream())
              .allMatch(opener -> settled.contains(opener.id()));
    }

    void plan(Item item) {
      begun.add(item.step().step().id());
      if (!item.hasClock()) {
        settled.add(item.step().step().id());
      }
    }
  }
}
