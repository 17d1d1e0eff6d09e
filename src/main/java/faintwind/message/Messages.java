package faintwind.message;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of the program in one language. Immutable; safe from any thread. A key that is missing
 * is a broken promise in the code: it throws {@link java.util.MissingResourceException}, and a test
 * compares the keys of all languages.
 */
public final class Messages {
  private static final Pattern TIME =
      Pattern.compile(
          "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d(\\.\\d+)?)?(Z|[+-]\\d\\d:\\d\\d)");

  /** So many problems of one thing are told where there is little room. */
  private static final int FIRST = 3;

  private final Locale language;
  private final Translation.Direction direction;
  private final ResourceBundle bundle;
  private final NumberMarks marks;

  private Messages(Locale language, Translation.Direction direction, ResourceBundle bundle) {
    this.language = language;
    this.direction = direction;
    this.bundle = bundle;
    this.marks = NumberMarks.of(language);
  }

  /**
   * The words that ship in the program itself: English, whichever language is asked for. Numbers
   * and dates are in the language of the words, never in that of the system.
   */
  public static Messages of(Locale asked) {
    ResourceBundle bundle = ProgramTexts.bundle(asked);
    boolean root = bundle.getLocale().equals(Locale.ROOT);
    Locale language = root ? Locale.ENGLISH : bundle.getLocale();
    return new Messages(language, Translation.Direction.LTR, bundle);
  }

  /** The words of a language file, English and marked where it has none. */
  public static Messages in(Translation translation) {
    ResourceBundle bundle = new TranslatedBundle(translation, ProgramTexts.bundle(Locale.ROOT));
    return new Messages(translation.language(), translation.direction(), bundle);
  }

  public ResourceBundle bundle() {
    return bundle;
  }

  /** The language of the words, and of the numbers and dates among them. */
  public Locale locale() {
    return language;
  }

  /** In which direction a line is read. */
  public Translation.Direction direction() {
    return direction;
  }

  /**
   * The text under {@code key}; its placeholders {@code {0}}… are filled with the arguments' own
   * words, plain numbers with the decimal mark of the language. A text that stays English has
   * English numbers, and one mark for what is English within it.
   */
  public String text(String key, Object... arguments) {
    String pattern = bundle.getString(key);
    Object[] marked = new Object[arguments.length];
    for (int i = 0; i < arguments.length; i++) {
      marked[i] = arguments[i] instanceof String text ? within(pattern, text) : arguments[i];
    }
    return format(pattern, marked);
  }

  /** Plain numbers and amounts, as {@link Numerals} writes them, with the language's mark. */
  public String numbers(String text) {
    return marks.own(text);
  }

  private String within(String pattern, String argument) {
    return Translation.isEnglish(pattern)
        ? marks.english(argument).replace(Translation.ENGLISH, "")
        : marks.own(argument);
  }

  /** The lines of several problems, one after the other: the first, and how many more. */
  public String lines(List<Problem> problems) {
    String first = problems.stream().limit(FIRST).map(this::line).collect(Collectors.joining(" "));
    int more = problems.size() - FIRST;
    return more > 0 ? first + " " + text("problems.more", more) : first;
  }

  /** What was found, where, what was expected and what to do, as one line. */
  public String line(Problem problem) {
    String place = place(problem.where());
    String sentence = sentence(problem);
    return place.isEmpty() ? sentence : place + ": " + sentence;
  }

  /** The same without the place. */
  public String sentence(Problem problem) {
    StringBuilder joined = new StringBuilder();
    boolean english = false;
    for (String suffix : List.of("", ".expected", ".todo")) {
      String key = problem.id() + suffix;
      if (suffix.isEmpty() || bundle.containsKey(key)) {
        String pattern = bundle.getString(key);
        String part = format(pattern, arguments(problem, pattern));
        boolean marked = Translation.isEnglish(pattern);
        joined.append(joined.isEmpty() ? "" : stop(joined) + " ");
        joined.append(marked && english ? part.substring(Translation.ENGLISH.length()) : part);
        english = marked;
      }
    }
    return joined.toString();
  }

  /** What a sentence lacks where another follows. */
  private static String stop(CharSequence sentence) {
    return ".!?:;".indexOf(sentence.charAt(sentence.length() - 1)) < 0 ? "." : "";
  }

  /**
   * A detail that is the key of a field's name becomes the name; a time, the time as people read
   * it; a number takes the decimal mark of the language. What was found in a line of a file is
   * quoted as it stands there.
   */
  private Object[] arguments(Problem problem, String pattern) {
    List<String> arguments = new ArrayList<>();
    boolean quoted = problem.where().line().isPresent();
    arguments.add(quoted ? problem.found() : within(pattern, problem.found()));
    for (String detail : problem.details()) {
      boolean name = detail.startsWith("field.") && bundle.containsKey(detail);
      arguments.add(within(pattern, name ? text(detail) : time(detail, of(pattern))));
    }
    return arguments.toArray();
  }

  private static String time(String detail, Locale language) {
    return TIME.matcher(detail).matches()
        ? new DateForm(language).zoned(OffsetDateTime.parse(detail))
        : detail;
  }

  /** The language of a text: English where it is not translated. */
  private Locale of(String pattern) {
    return Translation.isEnglish(pattern) ? Locale.ENGLISH : language;
  }

  /** The sentence, and after it in brackets the place in the input; the run is left out. */
  public String note(Problem problem) {
    Where where = problem.where();
    Where rest =
        new Where(where.file(), where.line(), where.column(), where.step(), Optional.empty());
    String place = place(rest);
    String sentence = sentence(problem);
    return place.isEmpty() ? sentence : sentence + " (" + place + ")";
  }

  /** The place in words, empty where there is none. */
  public String place(Where where) {
    List<String> parts = new ArrayList<>();
    where.file().ifPresent(parts::add);
    where.step().ifPresent(step -> parts.add(text("where.step", step)));
    where.run().ifPresent(run -> parts.add(text("where.run", run)));
    if (where.line().isPresent()) {
      parts.add(text("where.line", String.valueOf(where.line().getAsInt())));
    }
    where.column().ifPresent(parts::add);
    return String.join(", ", parts);
  }

  private String format(String pattern, Object[] arguments) {
    if (arguments.length == 0 && !pattern.contains("'") && !pattern.contains("{")) {
      return pattern;
    }
    Locale numbers = NumberMarks.withPlainDigits(of(pattern));
    List<Object> all = new ArrayList<>(Arrays.asList(arguments));
    String filled = pattern;
    for (int i = 0; i < arguments.length; i++) {
      if (pattern.contains("{" + i + ",choice,") && arguments[i] instanceof String said) {
        all.set(i, Long.valueOf(said)); // a problem's details are words
      }
      if (all.get(i) instanceof Number n && Math.abs(n.doubleValue()) >= 1000) {
        // where it is written, also within a plural; the plural goes by the number itself
        filled = filled.replace("{" + i + "}", "{" + all.size() + "}");
        all.add(grouping(numbers).format(n));
      }
    }
    return new MessageFormat(filled, numbers).format(all.toArray());
  }

  /** Thousands apart by a narrow space: a comma could be a decimal mark. */
  private static NumberFormat grouping(Locale language) {
    NumberFormat numbers = NumberFormat.getInstance(language);
    if (numbers instanceof DecimalFormat decimal) {
      DecimalFormatSymbols symbols = decimal.getDecimalFormatSymbols();
      symbols.setGroupingSeparator(AmountText.NARROW_SPACE);
      decimal.setDecimalFormatSymbols(symbols);
    }
    return numbers;
  }
}
