package faintwind.ui.air;

import faintwind.ui.frame.Unsaved;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
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

  /** Readings that are typed and not kept. */
  public List<Unsaved> unsaved() {
    List<Unsaved> all = new ArrayList<>();
    flows.forEach((folder, flow) -> flow.unsaved(name(folder)).ifPresent(all::add));
    surveys.forEach((folder, survey) -> survey.unsaved(name(folder)).ifPresent(all::add));
    return all;
  }

  private static String name(Path folder) {
    return String.valueOf(folder.getFileName());
  }
}
