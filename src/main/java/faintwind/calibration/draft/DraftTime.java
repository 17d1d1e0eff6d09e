package faintwind.calibration.draft;

import faintwind.calibration.profile.ColumnRef;
import faintwind.calibration.profile.TimeColumn;
import faintwind.calibration.profile.TimeForm;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The time of a drafted profile.
 *
 * @param column where it stands, and in what form
 * @param used the columns, from 0
 * @param notes message ids of what was taken for granted
 */
record DraftTime(TimeColumn column, Set<Integer> used, List<String> notes) {
  DraftTime {
    used = Set.copyOf(used);
    notes = List.copyOf(notes);
  }

  static Optional<DraftTime> of(SampleTable table, IntFunction<ColumnRef> ref, ZoneId zone) {
    return new Search(table, ref, zone).time();
  }

  /** Looks for it. */
  private record Search(SampleTable table, IntFunction<ColumnRef> ref, ZoneId zone) {
    Optional<DraftTime> time() {
      OptionalInt iso = first(SampleTime::isIso);
      OptionalInt both = first(SampleTime::isDayAndTime);
      OptionalInt day = first(SampleTime::isDay);
      OptionalInt clock = first(SampleTime::isTimeOfDay);
      if (iso.isPresent()) {
        return Optional.of(iso(iso.getAsInt()));
      }
      if (both.isPresent()) {
        return Optional.of(pattern(both.getAsInt(), Optional.empty()));
      }
      if (day.isPresent() && clock.isPresent()) {
        return Optional.of(pattern(clock.getAsInt(), Optional.of(day.getAsInt())));
      }
      return clock.isPresent() ? Optional.of(clock(clock.getAsInt())) : number();
    }

    private OptionalInt first(Predicate<String> form) {
      return IntStream.range(0, table.width())
          .filter(c -> !table.column(c).isEmpty() && table.column(c).stream().allMatch(form))
          .findFirst();
    }

    private DraftTime iso(int column) {
      boolean told = table.column(column).get(0).matches(".*(Z|[-+]\\d\\d:?\\d\\d)");
      return dated(TimeForm.ISO, column, Optional.empty(), "", told ? Zoned.TOLD : Zoned.TAKEN);
    }

    private DraftTime pattern(int column, Optional<Integer> day) {
      List<String> cells = new ArrayList<>();
      for (List<String> row : table.rows()) {
        String date = day.map(d -> row.get(d) + " ").orElse("");
        if (!row.get(column).isEmpty() && !date.equals(" ")) {
          cells.add(date + row.get(column));
        }
      }
      if (cells.stream().allMatch(SampleTime::isIso)) {
        return dated(TimeForm.ISO, column, day, "", Zoned.TAKEN);
      }
      SampleTime read = SampleTime.of(cells);
      DraftTime time = dated(TimeForm.PATTERN, column, day, read.text(), Zoned.TAKEN);
      List<String> notes = new ArrayList<>(time.notes());
      if (!read.isSure()) {
        notes.add("draft.day-or-month");
      }
      return new DraftTime(time.column(), time.used(), notes);
    }

    /** Whether the cells tell their offset. */
    private enum Zoned {
      TOLD,
      TAKEN
    }

    private DraftTime dated(
        TimeForm form, int column, Optional<Integer> day, String pattern, Zoned zoned) {
      Set<Integer> used = day.map(d -> Set.of(column, d)).orElseGet(() -> Set.of(column));
      boolean taken = zoned == Zoned.TAKEN;
      return new DraftTime(
          new TimeColumn(
              form,
              Optional.of(ref.apply(column)),
              day.map(ref::apply),
              pattern,
              OptionalDouble.empty(),
              taken ? Optional.of(zone) : Optional.empty()),
          used,
          taken ? List.of("draft.zone-taken") : List.of());
    }

    /** A time of day, or one that runs from 0. */
    private DraftTime clock(int column) {
      String first = table.column(column).get(0);
      if (first.matches(".*[AaPp][Mm]")) {
        return plain(
            new TimeColumn(
                TimeForm.PATTERN,
                Optional.of(ref.apply(column)),
                Optional.empty(),
                SampleTime.clock(first),
                OptionalDouble.empty(),
                Optional.empty()),
            column);
      }
      boolean fromZero = first.matches("0?0:00(:00([.,]0+)?)?");
      TimeForm form = fromZero ? TimeForm.ELAPSED : TimeForm.CLOCK;
      return plain(TimeColumn.of(form, ref.apply(column)), column);
    }

    private static DraftTime plain(TimeColumn time, int column) {
      return new DraftTime(time, Set.of(column), List.of());
    }

    /** A column of numbers that says it is the time; its unit is seconds where it says none. */
    private Optional<DraftTime> number() {
      OptionalInt column =
          IntStream.range(0, table.width())
              .filter(c -> table.column(c).stream().allMatch(SampleCell::isNumber))
              .filter(c -> HeadWords.isTime(table.heads(c)))
              .findFirst();
      if (column.isEmpty()) {
        return Optional.empty();
      }
      int at = column.getAsInt();
      Optional<TimeForm> form = SampleUnit.time(table.heads(at));
      TimeColumn time = TimeColumn.of(form.orElse(TimeForm.SECONDS), ref.apply(at));
      List<String> notes = form.isPresent() ? List.of() : List.of("draft.seconds-taken");
      return Optional.of(new DraftTime(time, Set.of(at), notes));
    }
  }
}
