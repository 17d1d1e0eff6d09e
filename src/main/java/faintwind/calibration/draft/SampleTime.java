package faintwind.calibration.draft;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dates and times of day as they stand in cells, and the pattern that reads them.
 *
 * @param text pattern of Java's DateTimeFormatter
 * @param isSure whether day and month cannot be mistaken for one another
 */
record SampleTime(String text, boolean isSure) {
  private static final String DATE = "\\d{1,4}([./-]) ?\\d{1,2}[./-] ?\\d{2,4}";
  private static final String CLOCK = "\\d{1,2}:\\d\\d(:\\d\\d([.,]\\d{1,9})?)?( ?[AaPp][Mm])?";
  private static final Pattern DAY = Pattern.compile(DATE);
  private static final Pattern TIME_OF_DAY = Pattern.compile(CLOCK);
  private static final Pattern BOTH = Pattern.compile(DATE + "[T ]+" + CLOCK);
  private static final Pattern ISO =
      Pattern.compile(
          "\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d([.,]\\d+)?)?(Z|[-+]\\d\\d:?\\d\\d)?");
  private static final Pattern PARTS =
      Pattern.compile("(\\d+)([./-] ?)(\\d+)([./-] ?)(\\d+)(?:([T ]+)(.*))?");

  static boolean isTime(String cell) {
    return isIso(cell) || isDay(cell) || isTimeOfDay(cell) || BOTH.matcher(cell).matches();
  }

  static boolean isIso(String cell) {
    return ISO.matcher(cell).matches();
  }

  static boolean isDay(String cell) {
    return DAY.matcher(cell).matches();
  }

  static boolean isTimeOfDay(String cell) {
    return TIME_OF_DAY.matcher(cell).matches();
  }

  static boolean isDayAndTime(String cell) {
    return BOTH.matcher(cell).matches();
  }

  /** The pattern of cells that all have a date and a time of day, in one form. */
  static SampleTime of(List<String> cells) {
    Matcher first = parts(cells.get(0));
    boolean yearFirst = first.group(1).length() == 4;
    boolean firstIsLarge = cells.stream().anyMatch(c -> part(c, 1) > 12);
    boolean secondIsLarge = cells.stream().anyMatch(c -> part(c, 3) > 12);
    String clock = String.valueOf(first.group(7));
    boolean noon = clock.matches(".*[AaPp][Mm]");
    boolean points = first.group(2).startsWith(".");
    boolean monthFirst = !points && (secondIsLarge || (noon && !firstIsLarge));
    String[] letters = {"d", "M", "u"};
    if (yearFirst) {
      letters = new String[] {"u", "M", "d"};
    } else if (monthFirst) {
      letters = new String[] {"M", "d", "u"};
    }
    String date =
        part(letters[0], first.group(1), cells, 1)
            + first.group(2)
            + part(letters[1], first.group(3), cells, 3)
            + first.group(4)
            + part(letters[2], first.group(5), cells, 5);
    boolean sure = yearFirst || points || firstIsLarge || secondIsLarge;
    return new SampleTime(date + separator(first.group(6)) + clock(clock), sure);
  }

  private static String separator(String between) {
    return between.contains("T") ? "'T'" : between;
  }

  /** The pattern of a time of day. */
  static String clock(String clock) {
    Matcher digits =
        Pattern.compile("(\\d+):\\d\\d(:\\d\\d)?([.,]\\d+)?( ?)([AaPp][Mm])?").matcher(clock);
    if (!digits.matches()) {
      return "HH:mm:ss";
    }
    boolean noon = digits.group(5) != null;
    String hour = noon ? "h" : "H";
    StringBuilder pattern = new StringBuilder(digits.group(1).length() == 2 ? hour + hour : hour);
    pattern.append(":mm").append(digits.group(2) == null ? "" : ":ss");
    if (digits.group(3) != null) {
      pattern.append(digits.group(3).charAt(0)).append("S".repeat(digits.group(3).length() - 1));
    }
    return pattern.append(noon ? digits.group(4) + "a" : "").toString();
  }

  private static String part(String letter, String sample, List<String> cells, int group) {
    if (letter.equals("u")) {
      return "u".repeat(sample.length());
    }
    boolean two = cells.stream().allMatch(c -> parts(c).group(group).length() == 2);
    return two ? letter + letter : letter;
  }

  private static int part(String cell, int group) {
    return Integer.parseInt(parts(cell).group(group));
  }

  private static Matcher parts(String cell) {
    Matcher match = PARTS.matcher(cell);
    if (!match.matches()) {
      throw new IllegalArgumentException("cell = " + cell + ", allowed a date and a time of day");
    }
    return match;
  }
}
