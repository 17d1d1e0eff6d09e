package faintwind.terminal;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Words on their way to a terminal. What came from a file may hold characters that a terminal obeys
 * (ISO/IEC 6429): they would clear the screen or write over what was said. Each becomes U+FFFD.
 */
final class WordStream extends PrintStream {
  private static final char REPLACED = '\ufffd';

  WordStream(OutputStream out) {
    super(out, true, StandardCharsets.UTF_8);
  }

  @Override
  public void print(@Nullable String text) {
    super.print(text == null ? null : harmless(text));
  }

  /** Line ends, tabs and a return to the line's beginning are the program's own. */
  private static String harmless(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean own = c == '\n' || c == '\t' || c == '\r';
      shown.append(Character.isISOControl(c) && !own ? REPLACED : c);
    }
    return shown.toString();
  }
}
