package faintwind.ui.air;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The flows and surveys of this window, by the folder of their instrument: what was typed stays
 * while other screens are looked at. On the JavaFX thread only.
 */
public final class AirModels {
  private final Map<Path, FlowModel> flows = new HashMap<>();
  private final Map<Path, SurveyModel> surveys = new HashMap<>();

  /** The flow of an instrument, begun or not. */
  public FlowModel flow(Path folder, Supplier<FlowModel> fresh) {
    return flows.computeIfAbsent(folder, f -> fresh.get());
  }

  /** The survey of an instrument, begun or not. */
  public SurveyModel survey(Path folder, Supplier<SurveyModel> fresh) {
    return surveys.computeIfAbsent(folder, f -> fresh.get());
  }
}
