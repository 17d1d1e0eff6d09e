package faintwind.job.bench;

import faintwind.guide.Due;
import faintwind.record.ReadingVerdict;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One instrument among many.
 *
 * @param folder where it is
 * @param name what it is called
 * @param need who or what it waits for
 * @param inForce the calibration that counts; empty where none does
 * @param jar the last jar check; empty where none was made
 * @param clocks those that run
 * @param waivers entries by which somebody went on against a reading or an answer
 */
public record BenchRow(
    Path folder,
    String name,
    Need need,
    Optional<InForce> inForce,
    Optional<JarLevel> jar,
    List<Clock> clocks,
    int waivers) {

  private static final Pattern DIGITS = Pattern.compile("\\d+");

  /** The most pressing first; among alike by name, Pair 2 before Pair 10, then by folder. */
  public static final Comparator<BenchRow> PRESSING_FIRST =
      Comparator.comparing((BenchRow row) -> row.need().kind())
          .thenComparing(row -> byValue(row.name()))
          .thenComparing(row -> byValue(row.folder().toString()));

  public BenchRow {
    clocks = List.copyOf(clocks);
  }

  /** Its name, with its folder where another one has the same. */
  String nameAmong(List<BenchRow> rows) {
    boolean alone = rows.stream().filter(other -> other.name.equals(name)).count() < 2;
    String own = String.valueOf(folder.getFileName());
    return alone || own.equals(name) ? name : name + " (" + own + ")";
  }

  /** A name as it is sorted: numbers in it by their value. */
  private static String byValue(String name) {
    return DIGITS
        .matcher(name.toLowerCase(Locale.ROOT))
        .replaceAll(
            number -> {
              String plain = number.group().replaceFirst("^0+(?=.)", "");
              return String.format(Locale.ROOT, "%04d", plain.length()) + plain;
            });
  }

  /** One of which there is no more to say than what it needs. */
  static BenchRow bare(Path folder, String name, Need need) {
    return new BenchRow(folder, name, need, Optional.empty(), Optional.empty(), List.of(), 0);
  }

  /** What an instrument is in need of, the most pressing first. */
  public enum Kind {
    /** Its folder cannot be read, or only be read. */
    BROKEN,
    /** Another folder begins with the same entry: one is a copy of the other. */
    COPIED,
    /** One of its own readings or answers says stop. */
    STOP,
    /** Something has to be looked at. */
    ATTENTION,
    /** Its calibration is due. */
    DUE,
    /** A step was begun. */
    DOING,
    /** A step can be done. */
    READY,
    /** A clock runs. */
    WAITING,
    /** Nothing is left to build. */
    IN_USE,
    /** It is a rehearsal: nothing is measured. */
    REHEARSAL,
    /** It was handed over, and whoever has it entered nothing since. */
    HANDED_OVER,
    /** It was taken off the bench. */
    ARCHIVED
  }

  /** The next moment at which it says something else by itself; empty where none is known. */
  public Optional<OffsetDateTime> until() {
    Stream<OffsetDateTime> due = inForce.filter(f -> !f.past()).map(f -> f.due().at()).stream();
    return Stream.concat(clocks.stream().map(Clock::ends), due).min(OffsetDateTime.timeLineOrder());
  }

  /**
   * What it needs.
   *
   * @param kind how much it presses
   * @param stage title of the stage of the pressing step; empty where there is none
   * @param step title of the step; empty where there is none
   * @param reason what stands in its way, and the way out
   */
  public record Need(Kind kind, String stage, String step, String reason) {}

  /**
   * A calibration.
   *
   * @param file its file, in the instrument's folder
   * @param range the speeds it covers; empty where its file cannot be read
   * @param due when it is due again
   * @param past whether that has come
   */
  public record InForce(String file, Optional<Range> range, Due due, boolean past) {}

  /**
   * The speeds a calibration covers.
   *
   * @param lowest_m_s slowest
   * @param highest_m_s fastest
   * @param u95Share expanded uncertainty over the speed, the median over the covered speeds
   */
  public record Range(double lowest_m_s, double highest_m_s, double u95Share) {
    private static final double LEAST_m_s = 0.01;
    private static final double MOST_m_s = 10;
    private static final double GOOD = 0.04;
    private static final double FAIR = 0.1;

    /** Where the slowest stands on a logarithmic scale from 0.01 to 10 m/s, 0 to 1. */
    public double from() {
      return place(lowest_m_s);
    }

    /** Where the fastest stands on it. */
    public double to() {
      return place(highest_m_s);
    }

    /**
     * The uncertainty in a word. A typical build reaches 3 %; King's law in place of the whole
     * formula is 10 % off. Own choice between these two.
     */
    public Grade grade() {
      return u95Share <= GOOD ? Grade.GOOD : u95Share <= FAIR ? Grade.FAIR : Grade.ROUGH;
    }

    private static double place(double speed_m_s) {
      double share = Math.log(speed_m_s / LEAST_m_s) / Math.log(MOST_m_s / LEAST_m_s);
      return Math.min(1, Math.max(0, share));
    }
  }

  /** How closely a calibration tells the speed. */
  public enum Grade {
    GOOD,
    FAIR,
    ROUGH;

    /** Bundle key of its word. */
    public String key() {
      return "bench-list.grade." + name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A jar check.
   *
   * @param amount value as it was entered, with its unit
   * @param at when
   * @param verdict what the checklist says of it; empty where it was never judged
   * @param drift change since the first one after the calibration, as a share of it
   */
  public record JarLevel(
      String amount, OffsetDateTime at, Optional<ReadingVerdict> verdict, Optional<Double> drift) {}

  /** A clock that runs: what for, and until when. */
  public record Clock(String label, OffsetDateTime ends) {}
}
