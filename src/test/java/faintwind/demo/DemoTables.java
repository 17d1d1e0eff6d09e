package faintwind.demo;

import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Recording;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Series;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Writes made-up recordings as run files and a runs table. */
final class DemoTables {
  private static final String MADE_UP =
      "# made-up data: an invented cheese-ageing cellar and its draughts, simulated\n";
  private static final String HEADER =
      "run,file,from_s,to_s,kind,radius_mm,u_radius_mm,turns,turns_time_s,u_turns_time_s,"
          + "first_click_s,spin_start_s,spin_stop_s,air_C,pressure_hPa,rh_pct,thermocouple,direction,note\n";

  private DemoTables() {}

  static void recording(Path file, Recording recording, String start) throws IOException {
    StringBuilder text = new StringBuilder(MADE_UP);
    text.append("# start: ").append(start).append('\n');
    text.append("time_s,").append(recording.unit().column()).append(",air_C,supply_V\n");
    Series signal = recording.signal();
    for (int i = 0; i < signal.size(); i++) {
      double t = signal.time_s(i);
      text.append(
          String.format(
              Locale.ROOT,
              "%.1f,%.2f,%.2f,%.3f%n",
              t,
              signal.value(i),
              recording.air_K().orElseThrow().at(t) - 273.15,
              recording.supply_V().orElseThrow().at(t)));
    }
    Files.writeString(file, text.toString().replace("\r", ""), StandardCharsets.UTF_8);
  }

  static void runs(Path file, List<Run> runs) throws IOException {
    StringBuilder text = new StringBuilder(HEADER);
    for (Run run : runs) {
      text.append(String.join(",", cells(run))).append('\n');
    }
    Files.writeString(file, text.toString(), StandardCharsets.UTF_8);
  }

  private static List<String> cells(Run run) {
    Series signal = run.recording().signal();
    List<String> cells = new ArrayList<>();
    cells.add(run.name());
    cells.add(run.file());
    boolean whole = run.name().equals("zero");
    cells.add(whole ? "" : number(signal.first_s(), 1));
    cells.add(whole ? "" : number(signal.last_s(), 1));
    cells.add(run.kind().word());
    if (run.arm().isPresent()) {
      ArmTurning arm = run.arm().get();
      cells.add(number(1000 * arm.radius_m().value(), 1));
      cells.add(number(1000 * arm.radius_m().u().orElseThrow(), 1));
      cells.add(number(arm.turns(), 0));
      cells.add(number(arm.turnsTime_s().value(), 2));
      cells.add(number(arm.turnsTime_s().u().orElseThrow(), 1));
      cells.add(number(arm.firstClick_s(), 1, 0, 1));
      cells.add(number(arm.spinStart_s(), 1));
      cells.add(number(arm.spinStop_s(), 1));
    } else {
      cells.addAll(List.of("", "", "", "", "", "", "", ""));
    }
    cells.add(number(run.conditions().air_K(), 1, -273.15, 1));
    cells.add(number(run.conditions().pressure_Pa(), 0.01, 0, 1));
    cells.add(number(run.conditions().relativeHumidity(), 100, 0, 0));
    cells.add(run.conditions().thermocouple().orElse(""));
    cells.add(run.conditions().direction().map(d -> d.word()).orElse(""));
    cells.add("made up");
    return cells;
  }

  private static String number(OptionalDouble value, double factor, double shift, int digits) {
    return value.isPresent() ? number(value.getAsDouble() * factor + shift, digits) : "";
  }

  private static String number(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }
}
