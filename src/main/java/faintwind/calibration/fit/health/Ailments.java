package faintwind.calibration.fit.health;

import faintwind.calibration.fit.health.Ailment.Kind;
import faintwind.calibration.fit.health.HeatBlock.Phase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Tries every pattern of {@link Ailment} on a run's heat, one amplitude each, by weighted least
 * squares. Patterns that explain nearly as much as the best are told with it.
 */
public final class Ailments {
  /** No other pattern comes before a lost heater. */
  private static final double LOST = 1e9;

  private final RunHealth run;
  private final double usual;
  private final double scatter;
  private final Deviations deviations;
  private final List<Ailment> found = new ArrayList<>();

  private Ailments(RunHealth run, double usual, double scatter) {
    this.run = run;
    this.usual = usual;
    this.scatter = scatter;
    this.deviations = new Deviations(run.blocks(), scatter);
  }

  /**
   * What ails a run, the likeliest first; empty where nothing does.
   *
   * @param run the heat it took
   * @param usual the same of the healthy runs at rest
   * @param scatter its standard deviation between healthy runs
   */
  public static List<Ailment> of(RunHealth run, double usual, double scatter) {
    return run.blocks().isEmpty() ? List.of() : new Ailments(run, usual, scatter).found();
  }

  private List<Ailment> found() {
    List<HeatBlock> blocks = run.blocks();
    boolean endsWithout = without(blocks.get(blocks.size() - 1));
    blocks.stream()
        .filter(b -> endsWithout && without(b))
        .findFirst()
        .ifPresent(b -> found.add(new Ailment(Kind.HEATER_LOST, -1, b.from_s(), LOST)));
    double highest = blocks.stream().mapToDouble(HeatBlock::delta_K).max().orElseThrow();
    double first = blocks.get(0).from_s();
    boolean both = blocks.stream().map(b -> b.phase() == Phase.TURNING).distinct().count() > 1;
    tried(Kind.SCALE, first, b -> 1);
    tried(Kind.OFFSET, first, b -> highest / b.delta_K());
    for (double drying_s : OwnChoices.DRYING_S) {
      tried(Kind.FADING, first, b -> Math.exp(-(b.from_s() - first) / drying_s));
    }
    if (both) {
      tried(Kind.REST, first, b -> b.phase() == Phase.TURNING ? 0 : 1);
    } else if (unsteady()) {
      tried(Kind.REST, first, b -> 1);
      return likeliest().stream().filter(a -> a.kind() == Kind.REST).toList();
    }
    tried(Kind.TURNING, first, b -> b.phase() == Phase.TURNING ? 1 : 0);
    for (int k = 1; k < blocks.size(); k++) {
      double from = blocks.get(k).from_s();
      tried(Kind.SCALE_STEP, from, b -> b.from_s() < from ? 0 : 1);
      tried(Kind.OFFSET_STEP, from, b -> b.from_s() < from ? 0 : highest / b.delta_K());
      if (blocks.get(k).phase() == Phase.TURNING && blocks.get(k - 1).phase() == Phase.TURNING) {
        tried(
            Kind.TURNING_STEP, from, b -> b.phase() != Phase.TURNING || b.from_s() < from ? 0 : 1);
        tried(Kind.TURNING_STEP, from, contrast(b -> b.from_s() >= from));
        tried(Kind.TURNING_STEP, from, contrast(b -> b.from_s() == from));
      }
    }
    return likeliest();
  }

  /**
   * Whether a run that only rests took too little heat, and another amount in each block: draught.
   */
  private boolean unsteady() {
    List<HeatBlock> blocks = run.blocks();
    double squares = 0;
    double off = 0;
    for (int i = 1; i < blocks.size(); i++) {
      double step = blocks.get(i).ratio() - blocks.get(i - 1).ratio();
      double u = Math.hypot(blocks.get(i).u(), scatter);
      squares += step * step / (2 * u * u);
      off += blocks.get(i).ratio() / usual - 1;
    }
    int steps = blocks.size() - 1;
    return steps >= 2
        && off < 0
        && Math.sqrt(squares / steps) > OwnChoices.UNSTEADY
        && blocks.stream().noneMatch(b -> b.phase() == Phase.TURNING);
  }

  /**
   * Too fast in some blocks of the turning and too slow in the others, so that the count over all
   * is right; the amplitude is the difference.
   */
  private ToDoubleFunction<HeatBlock> contrast(Predicate<HeatBlock> some) {
    double inside = length_s(some);
    double outside = length_s(some.negate());
    double all = inside + outside;
    return b -> b.phase() != Phase.TURNING ? 0 : some.test(b) ? outside / all : -inside / all;
  }

  private double length_s(Predicate<HeatBlock> which) {
    return run.blocks().stream()
        .filter(b -> b.phase() == Phase.TURNING)
        .filter(which)
        .mapToDouble(b -> b.to_s() - b.from_s())
        .sum();
  }

  private boolean without(HeatBlock block) {
    return block.ratio() < OwnChoices.HEATER_OFF * usual;
  }

  private void tried(Kind kind, double from_s, ToDoubleFunction<HeatBlock> pattern) {
    double squares = deviations.product(pattern, pattern);
    if (squares > 0) {
      double product = deviations.product(pattern, this::off);
      double share = product / squares;
      found.add(new Ailment(kind, share, from_s, product * share - price(kind)));
    }
  }

  private double off(HeatBlock block) {
    return block.ratio() / usual - 1;
  }

  /** What a pattern pays for the freedom to choose where it begins or how fast it fades. */
  private static double price(Kind kind) {
    return switch (kind) {
      case HEATER_LOST, SCALE, OFFSET, REST, TURNING -> 0;
      case FADING -> OwnChoices.PRICE_OF_FADING;
      case SCALE_STEP, OFFSET_STEP, TURNING_STEP -> OwnChoices.PRICE_OF_STEP;
    };
  }

  /** The best of each kind that is sure, large, and leaves hardly more than the best of all. */
  private List<Ailment> likeliest() {
    double total = deviations.product(this::off, this::off);
    double most = found.stream().mapToDouble(Ailment::gain).max().orElse(0);
    double left = Math.max(0, total - most);
    double enough = total - Math.max(OwnChoices.NEARLY * left, left + OwnChoices.NEARLY_LEAST);
    List<Ailment> likeliest = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      found.stream()
          .filter(a -> a.kind() == kind)
          .max(Comparator.comparingDouble(Ailment::gain))
          .filter(a -> a.gain() > OwnChoices.PATTERN_SURE)
          .filter(a -> Math.abs(a.share()) > OwnChoices.PATTERN_OFF)
          .filter(a -> a.gain() >= enough || a.gain() == most)
          .ifPresent(likeliest::add);
    }
    likeliest.sort(Comparator.comparingDouble(Ailment::gain).reversed());
    return likeliest;
  }
}
