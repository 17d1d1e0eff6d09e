package faintwind.files.asset;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.ImportProfile;
import faintwind.calibration.profile.LineForm;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.ValueColumn;

/** An import profile as it goes into its file. */
final class ProfileJson {
  private ProfileJson() {}

  static ObjectNode object(ImportProfile profile) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("format", ProfileFile.FORMAT);
    json.put("id", profile.id());
    json.put("name", profile.name());
    json.put("delimiter", LineForm.word(profile.lines().delimiter()));
    json.put("decimal_mark", String.valueOf(profile.lines().decimalMark()));
    json.put("header_lines", profile.lines().headerLines());
    putText(json, "comment", profile.lines().comment());
    if (!profile.lines().missing().isEmpty()) {
      profile.lines().missing().forEach(json.withArray("missing")::add);
    }
    time(profile.time(), json.putObject("time"));
    profile.columns().forEach(column -> column(column, json.withArray("columns").addObject()));
    return json;
  }

  private static void time(TimeColumn time, ObjectNode json) {
    json.put("as", time.form().word());
    time.column().ifPresent(ref -> put(json, "column", ref));
    time.date().ifPresent(ref -> put(json, "date_column", ref));
    putText(json, "pattern", time.pattern());
    time.wrapsAt().ifPresent(turn -> json.put("wraps_at", turn));
  }

  private static void column(ValueColumn column, ObjectNode json) {
    put(json, "column", column.column());
    json.put("means", column.meaning().word());
    json.put("unit", column.unit().word());
    if (column.scale() != 1) {
      json.put("scale", column.scale());
    }
    if (column.shift() != 0) {
      json.put("shift", column.shift());
    }
    column.wrapsAt().ifPresent(turn -> json.put("wraps_at", turn));
    putText(json, "before", column.around().before());
    putText(json, "after", column.around().after());
  }

  private static void put(ObjectNode json, String key, ColumnRef ref) {
    if (ref.isNamed()) {
      json.put(key, ref.name());
    } else {
      json.put(key, ref.number());
    }
  }

  private static void putText(ObjectNode json, String key, String text) {
    if (!text.isEmpty()) {
      json.put(key, text);
    }
  }
}
