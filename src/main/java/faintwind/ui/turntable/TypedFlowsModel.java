package faintwind.ui.turntable;

import faintwind.job.turntable.TypedRuns;
import faintwind.message.Amount;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.part.NumberModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Reference flows of the recording, and the air that the arm carries round, as a person noted them.
 */
public final class TypedFlowsModel {
  private static final double MOST_SWIRL_PCT = 50;

  private final Messages words;
  private final ObservableList<Row> rows = FXCollections.observableArrayList();
  private final NumberModel swirl;
  private final NumberModel uSwirl;

  /**
   * One flow, each number as typed.
   *
   * @param speed of the air by the other instrument
   * @param u its standard uncertainty; may stay empty
   * @param from when it was steady
   * @param to until when
   */
  public record Row(NumberModel speed, NumberModel u, NumberModel from, NumberModel to) {
    boolean isEmpty() {
      return Stream.of(speed, u, from, to).allMatch(f -> f.typed().get().isBlank());
    }
  }

  TypedFlowsModel(Messages words) {
    this.words = words;
    swirl = new NumberModel("%", words);
    uSwirl = new NumberModel("%", words);
  }

  public ObservableList<Row> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  /** Share of the arm's speed at which a vane or thread showed the air to go round. */
  public NumberModel swirl() {
    return swirl;
  }

  public NumberModel uSwirl() {
    return uSwirl;
  }

  /** One more flow. */
  public void addRow() {
    rows.add(
        new Row(
            new NumberModel("m/s", words),
            new NumberModel("m/s", words),
            new NumberModel("s", words),
            new NumberModel("s", words)));
  }

  /** The flows; what is missing or impossible is added to the problems. */
  List<TypedRuns.Flow> read(List<Problem> problems) {
    List<TypedRuns.Flow> flows = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.isEmpty()) {
        continue;
      }
      Where line = Where.NOWHERE.atLine(i + 1);
      OptionalDouble speed = number(row.speed(), line.atColumn("speed_m_s"), true, problems);
      OptionalDouble u = number(row.u(), line.atColumn("u_speed_m_s"), false, problems);
      OptionalDouble from = number(row.from(), line.atColumn("from_s"), true, problems);
      OptionalDouble to = number(row.to(), line.atColumn("to_s"), true, problems);
      if (speed.isPresent() && from.isPresent() && to.isPresent()) {
        flow(speed.getAsDouble(), u, from.getAsDouble(), to.getAsDouble(), line, problems)
            .ifPresent(flows::add);
      }
    }
    return flows;
  }

  private static Optional<TypedRuns.Flow> flow(
      double speed, OptionalDouble u, double from, double to, Where line, List<Problem> problems) {
    if (speed <= 0 || from < 0) {
      problems.add(Problem.error("turntable.typed.flow-impossible", line, ""));
    } else if (to <= from) {
      problems.add(
          Problem.error(
              "turntable.typed.stop-first",
              line.atColumn("to_s"),
              Numerals.digits(to, 6),
              Numerals.digits(from, 6)));
    } else {
      return Optional.of(new TypedRuns.Flow(speed, u, from, to));
    }
    return Optional.empty();
  }

  /** The carried air, for all spins. */
  TypedRuns.Arm arm(List<Problem> problems) {
    Where where = Where.NOWHERE.atColumn("swirl_pct");
    OptionalDouble share = number(swirl, where, false, problems);
    OptionalDouble u = number(uSwirl, Where.NOWHERE.atColumn("u_swirl_pct"), false, problems);
    if (share.isPresent() && (share.getAsDouble() < 0 || share.getAsDouble() >= MOST_SWIRL_PCT)) {
      problems.add(Problem.error("runs.swirl-out-of-range", where, swirl.typed().get()));
    }
    return new TypedRuns.Arm(OptionalDouble.empty(), share, u);
  }

  /** All that is in the boxes. */
  List<String> typed() {
    List<String> typed = new ArrayList<>(List.of(swirl.typed().get(), uSwirl.typed().get()));
    rows.forEach(
        row ->
            Stream.of(row.speed(), row.u(), row.from(), row.to())
                .forEach(f -> typed.add(f.typed().get().strip())));
    return typed;
  }

  private static OptionalDouble number(
      NumberModel field, Where where, boolean needed, List<Problem> problems) {
    if (!needed && field.typed().get().isBlank()) {
      return OptionalDouble.empty();
    }
    field.judge();
    Optional<Amount> exact = field.amount().filter(a -> a.bound() == Amount.Bound.EXACT);
    if (exact.isEmpty()) {
      problems.add(Problem.error("turntable.typed.not-a-number", where, field.typed().get()));
    }
    return exact.map(a -> OptionalDouble.of(a.value())).orElse(OptionalDouble.empty());
  }
}
