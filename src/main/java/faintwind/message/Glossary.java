package faintwind.message;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The words of the trade that people meet, each in a sentence or two. */
public record Glossary(List<Term> terms) {
  private static final String KEY = "glossary.";
  private static final String MEANS = ".means";
  private static final Pattern END = Pattern.compile("(s|es)?(?![\\w-])");

  public Glossary {
    terms = List.copyOf(terms);
  }

  /**
   * One meaning.
   *
   * @param words that have it, the usual one first
   * @param meaning in a sentence or two
   */
  public record Term(List<String> words, String meaning) {
    public Term {
      words = List.copyOf(words);
    }

    /**
     * Whether a text uses one of its words, in the singular or plural. A word all in small letters
     * is found in capitals too; En is not the word "en".
     */
    private boolean isIn(String text, String lower) {
      return words.stream()
          .anyMatch(w -> has(w.equals(w.toLowerCase(Locale.ROOT)) ? lower : text, w));
    }

    private static boolean has(String text, String word) {
      for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
        String after =
            text.substring(at + word.length(), Math.min(text.length(), at + word.length() + 3));
        if ((at == 0 || !joins(text.charAt(at - 1))) && END.matcher(after).lookingAt()) {
          return true;
        }
      }
      return false;
    }

    private static boolean joins(char c) {
      return Character.isLetterOrDigit(c) || c == '-' || c == '_';
    }
  }

  /** All of them, by the alphabet. */
  public static Glossary of(Messages words) {
    return new Glossary(
        words.bundle().keySet().stream()
            .filter(key -> key.startsWith(KEY) && !key.endsWith(MEANS))
            .map(
                key ->
                    new Term(Arrays.asList(words.text(key).split(", ")), words.text(key + MEANS)))
            .sorted(Comparator.comparing(t -> t.words().get(0), String.CASE_INSENSITIVE_ORDER))
            .toList());
  }

  /** Those that one of the texts uses. */
  public Glossary usedIn(Collection<String> texts) {
    String all = String.join("\n", texts);
    String lower = all.toLowerCase(Locale.ROOT);
    return new Glossary(terms.stream().filter(term -> term.isIn(all, lower)).toList());
  }

  /** Those that have what was typed in their words, then those that have it in their meaning. */
  public Glossary having(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    Comparator<Term> wordsFirst = Comparator.comparing(t -> !has(t.words().toString(), wanted));
    return new Glossary(
        terms.stream()
            .filter(t -> has(t.words() + " " + t.meaning(), wanted))
            .sorted(wordsFirst)
            .toList());
  }

  private static boolean has(String text, String wanted) {
    return text.toLowerCase(Locale.ROOT).contains(wanted);
  }
}
