package faintwind.message;

/** The beginning of a longer text, in whole sentences. */
public final class FirstSentences {
  private FirstSentences() {}

  /**
   * As many sentences as there is room for, and the first in any case.
   *
   * @param most letters there is room for
   */
  public static String of(String text, int most) {
    int end = text.length();
    while (end > most) {
      int before = Math.max(text.lastIndexOf(". ", end - 2), text.lastIndexOf("? ", end - 2));
      if (before < 0) {
        return text.substring(0, end);
      }
      end = before + 1;
    }
    return text.substring(0, end);
  }
}
