package faintwind.message;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Texts in another language, by the keys of the English ones. A text that is missing stays English
 * with {@link #ENGLISH} before it; so does a text on safety that nobody has compared with the
 * English one as it is today.
 *
 * @param language of the texts
 * @param direction in which they are read
 * @param texts by key
 * @param reviewed marks that texts on safety were reviewed, by key
 */
public record Translation(
    Locale language, Direction direction, Map<String, String> texts, Map<String, Review> reviewed) {
  /** Stands before an English text among those of another language. */
  public static final String ENGLISH = "[en] ";

  /** A value in a text: {@code {0}}, {@code {0,choice,…}}, {@code {fuse_mA}}. */
  private static final Pattern VALUE = Pattern.compile("\\{(\\w+)");

  private static final Pattern VALUES = Pattern.compile("\\{\\w+}");
  private static final Pattern NUMBER = Pattern.compile("(?<![\\d.,])(\\d+)\\.(\\d+)(?![\\d.,])");
  private static final Pattern WORD = Pattern.compile("\\p{L}");

  /** Which way a line is read. */
  public enum Direction {
    LTR,
    RTL
  }

  /**
   * A mark that a text on safety was compared with the English one.
   *
   * @param on the day
   * @param english the English text it was compared with; where that has changed, the mark is void
   */
  public record Review(LocalDate on, String english) {}

  public Translation {
    texts = Map.copyOf(texts);
    reviewed = Map.copyOf(reviewed);
  }

  /** No texts yet in a language: all are English, and marked. */
  public static Translation none(Locale language) {
    return new Translation(language, Direction.LTR, Map.of(), Map.of());
  }

  /** Whether a text is one that stayed English among those of another language. */
  public static boolean isEnglish(String text) {
    return text.startsWith(ENGLISH);
  }

  /**
   * The text to show where English has one; without words in it, it is no English but for the
   * decimal mark of its numbers.
   */
  public String over(String key, String english, boolean safety) {
    String own = texts.get(key);
    Review review = reviewed.get(key);
    boolean counts = !safety || (review != null && review.english().equals(english));
    if (own != null && counts) {
      return own;
    }
    return WORD.matcher(VALUES.matcher(english).replaceAll("")).find()
        ? ENGLISH + english
        : NUMBER.matcher(english).replaceAll("$1" + NumberMarks.of(language).decimalMark() + "$2");
  }

  /** The same for all English texts. */
  Map<String, String> over(Map<String, String> english, Predicate<String> safety) {
    Map<String, String> all = new TreeMap<>();
    english.forEach((key, text) -> all.put(key, over(key, text, safety.test(key))));
    return all;
  }

  /**
   * What is wrong with the texts: a key that English does not have, a value that is missing or that
   * English does not give.
   *
   * @param file as it is named to people
   */
  public List<Problem> problems(Map<String, String> english, String file) {
    List<Problem> problems = new ArrayList<>();
    for (Map.Entry<String, String> text : new TreeMap<>(texts).entrySet()) {
      String key = text.getKey();
      Where where = Where.file(file).atColumn(key);
      String base = english.get(key);
      if (base == null) {
        problems.add(Problem.error("language.foreign-key", where, key));
        continue;
      }
      Set<String> wanted = values(base);
      Set<String> found = values(text.getValue());
      wanted.stream()
          .filter(value -> !found.contains(value))
          .forEach(value -> problems.add(missing("language.value-missing", where, value)));
      found.stream()
          .filter(value -> !wanted.contains(value))
          .forEach(value -> problems.add(missing("language.value-foreign", where, value)));
    }
    return problems;
  }

  private static Problem missing(String id, Where where, String value) {
    return Problem.error(id, where, "{" + value + "}");
  }

  private static Set<String> values(String text) {
    Set<String> values = new TreeSet<>();
    Matcher matcher = VALUE.matcher(text);
    while (matcher.find()) {
      values.add(matcher.group(1));
    }
    return values;
  }
}
