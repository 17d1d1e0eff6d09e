package faintwind.files.asset;

import com.fasterxml.jackson.databind.JsonNode;
import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.Meaning;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import faintwind.calibration.profile.ValueUnit;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What must hold in a profile beyond its schema. */
final class ProfileRules {
  private final Where where;
  private final List<Problem> problems = new ArrayList<>();

  private ProfileRules(Where where) {
    this.where = where;
  }

  static List<Problem> problems(JsonNode profile, Where where) {
    ProfileRules rules = new ProfileRules(where);
    String delimiter = text(profile, "delimiter");
    if (delimiter.equals(text(profile, "decimal_mark"))) {
      rules.error("profile.mark-is-delimiter", "decimal_mark", delimiter);
    }
    int lines = profile.get("header_lines").asInt();
    if (profile.path("names_line").asInt(0) > lines) {
      rules.error(
          "profile.names-line", "names_line", text(profile, "names_line"), String.valueOf(lines));
    }
    rules.time(profile.get("time"));
    rules.zone(profile.get("time"));
    rules.columns(profile.get("columns"));
    if (rules.problems.isEmpty() && profile.get("header_lines").asInt() == 0 && isNamed(profile)) {
      rules.error("profile.names-without-header", "header_lines", "0");
    }
    return rules.problems;
  }

  private static boolean isNamed(JsonNode profile) {
    JsonNode time = profile.get("time");
    return time.path("column").isTextual()
        || time.path("date_column").isTextual()
        || profile.findValues("column").stream().anyMatch(JsonNode::isTextual);
  }

  private void time(JsonNode time) {
    TimeForm form = ProfileForm.JSON.read(time.get("as"), TimeForm.class);
    String pattern = text(time, "pattern");
    if (form == TimeForm.RECEIVED && time.has("column")) {
      ColumnRef column = ProfileForm.JSON.read(time.get("column"), ColumnRef.class);
      error("profile.time-column-idle", "time.column", column.text());
    } else if (form != TimeForm.RECEIVED && !time.has("column")) {
      error("profile.time-column-missing", "time.column", form.word());
    }
    if (form == TimeForm.PATTERN && pattern.isEmpty()) {
      error("profile.pattern-missing", "time.pattern", "");
    } else if (form != TimeForm.PATTERN && !pattern.isEmpty()) {
      error("profile.pattern-idle", "time.pattern", pattern, form.word());
    } else if (form == TimeForm.PATTERN && !isPattern(pattern)) {
      error("profile.pattern-unknown", "time.pattern", pattern);
    }
    if (time.has("wraps_at") && !form.isNumber()) {
      error("profile.wraps-idle", "time.wraps_at", form.word());
    }
    if (time.has("date_column") && !form.isDated()) {
      error("profile.date-idle", "time.date_column", form.word());
    }
  }

  private void zone(JsonNode time) {
    String zone = text(time, "zone");
    TimeForm form = ProfileForm.JSON.read(time.get("as"), TimeForm.class);
    if (zone.isEmpty()) {
      return;
    }
    if (!form.isDated()) {
      error("profile.zone-idle", "time.zone", form.word());
    }
    try {
      ZoneId.of(zone);
    } catch (DateTimeException e) {
      error("profile.zone-unknown", "time.zone", zone);
    }
  }

  private static boolean isPattern(String pattern) {
    String letters = pattern.replaceAll("'[^']*'", "");
    return letters.matches(".*[Hhk].*") && TimeColumn.isPattern(pattern);
  }

  private void columns(JsonNode columns) {
    Set<Meaning> seen = EnumSet.noneOf(Meaning.class);
    List<Meaning> doubled = new ArrayList<>();
    boolean whole = true;
    for (int i = 0; i < columns.size(); i++) {
      Meaning meaning = ProfileForm.JSON.read(columns.get(i).get("means"), Meaning.class);
      ValueUnit unit = ProfileForm.JSON.read(columns.get(i).get("unit"), ValueUnit.class);
      if (!meaning.allows(unit)) {
        whole = false;
        String place = "columns." + i + ".unit";
        error("profile.unit-does-not-fit", place, unit.word(), meaning.word());
      } else if (!seen.add(meaning)) {
        doubled.add(meaning);
      }
    }
    doubled.forEach(meaning -> error("profile.meaning-twice", "columns", meaning.word()));
    boolean signal = seen.contains(Meaning.SIGNAL);
    boolean heated = seen.contains(Meaning.HEATED);
    boolean reference = seen.contains(Meaning.REFERENCE);
    if (signal && (heated || reference)) {
      error("profile.signal-and-balls", "columns", "");
    } else if (!signal && !(heated && reference) && whole) {
      error("profile.signal-missing", "columns", "");
    }
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asText("");
  }

  private void error(String id, String column, String found, String... details) {
    problems.add(Problem.error(id, where.atColumn(column), found, details));
  }
}
