package faintwind.ui.part;

import java.util.List;

/**
 * An explanation that opens in the margin.
 *
 * @param title the question it answers, such as "Why 20 MΩ?"
 * @param text what it is about, one or two sentences
 * @param equations lines with this instrument's numbers; empty where there is none
 * @param result what follows for this instrument; may be empty
 * @param source author and year, or "common practice, no source"; may be empty
 */
public record Note(
    String title, String text, List<String> equations, String result, String source) {
  public Note {
    equations = List.copyOf(equations);
  }
}
