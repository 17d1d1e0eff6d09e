package faintwind.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A language that nobody speaks: English in brackets, with accents and words two fifths longer, as
 * those of other languages are. What is left in plain English in the program is seen at once, as is
 * what is put together from parts or cut off. Values, units, names of files and short words stay.
 */
public final class PseudoWords {
  private static final double MORE = 0.4;
  private static final String PLAIN = "acdeghijklnorstuwyzACDEGHIJKLNORSTUWYZ";
  private static final String ACCENTED = "áçďéğĥíĵķļñóřšţúŵýžÁÇĎÉĞĤÍĴĶĻÑÓŘŠŢÚŴÝŽ";
  private static final Set<String> UNITS = Set.of("min", "mAh", "ppm", "ohm", "Ohm", "hPa", "kOhm");

  /** A word of three letters or more that is no part of a name such as time_s or log.csv. */
  private static final Pattern WORD =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}_./=-])[A-Za-z][a-z]{2,}(?![\\p{L}\\p{N}_/=]|\\.\\w|-\\w*_)");

  private static final Pattern CHOICE = Pattern.compile("(\\d+,choice,)(.*)", Pattern.DOTALL);
  private static final Pattern BRANCH = Pattern.compile("([^#<]*[#<])(.*)", Pattern.DOTALL);

  private PseudoWords() {}

  /** A text, in brackets where it has words. */
  public static String text(String english) {
    String changed = words(english);
    if (changed.equals(english)) {
      return english;
    }
    String text = changed.stripLeading();
    return changed.substring(0, changed.length() - text.length()) + "[" + text + "]";
  }

  /** The same without the brackets, for words that are looked for in other texts. */
  public static String words(String english) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    int open = english.indexOf('{');
    while (open >= 0) {
      int close = close(english, open);
      out.append(accented(english.substring(from, open)));
      out.append('{').append(value(english.substring(open + 1, close))).append('}');
      from = close + 1;
      open = english.indexOf('{', from);
    }
    return out.append(accented(english.substring(from))).toString();
  }

  /** The words of something shown that are still English. */
  public static List<String> english(String shown) {
    return WORD.matcher(shown)
        .results()
        .map(MatchResult::group)
        .filter(word -> !UNITS.contains(word) && word.chars().anyMatch(c -> PLAIN.indexOf(c) >= 0))
        .toList();
  }

  private static int close(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    throw new IllegalArgumentException(text);
  }

  /** The branches of a choice are texts; any other value stays. */
  private static String value(String inner) {
    Matcher choice = CHOICE.matcher(inner);
    if (!choice.matches()) {
      return inner;
    }
    return choice.group(1)
        + branches(choice.group(2)).stream()
            .map(PseudoWords::branch)
            .collect(Collectors.joining("|"));
  }

  private static List<String> branches(String all) {
    List<String> branches = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < all.length(); i++) {
      char c = all.charAt(i);
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (c == '|' && depth == 0) {
        branches.add(all.substring(from, i));
        from = i + 1;
      }
    }
    branches.add(all.substring(from));
    return branches;
  }

  private static String branch(String branch) {
    Matcher parts = BRANCH.matcher(branch);
    return parts.matches() ? parts.group(1) + words(parts.group(2)) : branch;
  }

  private static String accented(String text) {
    return WORD.matcher(text)
        .replaceAll(word -> UNITS.contains(word.group()) ? word.group() : longer(word.group()));
  }

  private static String longer(String word) {
    StringBuilder out = new StringBuilder();
    double owed = 0;
    for (int i = 0; i < word.length(); i++) {
      int at = PLAIN.indexOf(word.charAt(i));
      char c = at < 0 ? word.charAt(i) : ACCENTED.charAt(at);
      out.append(c);
      owed += MORE;
      if (owed >= 1) {
        out.append(Character.toLowerCase(c));
        owed -= 1;
      }
    }
    return out.toString();
  }
}
