package faintwind.ui.fold;

import java.util.Comparator;
import java.util.stream.Stream;
import javafx.scene.control.Labeled;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * How narrow words may stand and still be read: as wide as their longest word, and wide enough for
 * two or three lines, though never asking for more than a line of some thirty letters. A word of
 * more than some forty letters is nobody's word, and breaks where its line ends.
 */
final class Need {
  private static final double LINES = 2.2;
  private static final double LINE_EM = 14;
  private static final double WORD_EM = 20;

  /** Where a line of text may break. */
  private static final String BREAKS = "[\\s\u2002-\u2006\u2008-\u200b\u2013\u2014-]+";

  private Need() {}

  /**
   * The least width of a label, link or button.
   *
   * @param oneLine_px its width with all words in one line
   */
  static double width_px(Labeled words, double oneLine_px) {
    String text = words.getText();
    if (text == null || text.isEmpty()) {
      return oneLine_px;
    }
    Font font = words.getFont();
    double around_px = Math.max(0, oneLine_px - width_px(text, font));
    double word_px =
        Stream.of(text.split(BREAKS))
            .sorted(Comparator.comparingInt(String::length).reversed())
            .limit(2)
            .mapToDouble(word -> width_px(word, font))
            .map(width -> Math.min(WORD_EM * font.getSize(), width))
            .max()
            .orElse(0);
    double line_px = Math.min(LINE_EM * font.getSize(), (oneLine_px - around_px) / LINES);
    return Math.min(oneLine_px, Math.ceil(Math.max(word_px, line_px) + around_px) + 1);
  }

  private static double width_px(String words, Font font) {
    Text alone = new Text(words);
    alone.setFont(font);
    return alone.getLayoutBounds().getWidth();
  }
}
