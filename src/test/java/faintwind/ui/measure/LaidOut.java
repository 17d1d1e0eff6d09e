package faintwind.ui.measure;

import faintwind.ui.measure.Finding.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/**
 * Finds what cannot be read in a root that was laid out: words cut, words broken, words on words,
 * nodes beyond an edge that nothing scrolls to. One pixel is allowed, for rounding.
 */
public final class LaidOut {
  private static final double SLACK_PX = 1;
  private static final int SQUEEZED_LINES = 4;
  private static final double SQUEEZED_LETTERS = 8;
  private static final double ROOM_EM = 6;

  private final double em_px;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Seen> seen;

  private LaidOut(Parent root, double width, double height, double em_px) {
    this.em_px = em_px;
    seen = Seen.under(root, width, height);
  }

  /** All findings in a root of this size whose text is {@code em_px} high; JavaFX thread. */
  public static List<Finding> faults(Parent root, double width, double height, double em_px) {
    LaidOut measured = new LaidOut(root, width, height, em_px);
    measured.seen.forEach(measured::look);
    measured.overlaps();
    return measured.findings;
  }

  private void look(Seen one) {
    if (one.node() instanceof Labeled labeled) {
      labeled(one, labeled);
    }
    if (one.node() instanceof TextField field) {
      field(one, field);
    }
    if (one.node() instanceof ScrollPane pane && "sheet-pane".equals(pane.getId())) {
      double room = pane.getViewportBounds().getHeight();
      if (room < ROOM_EM * em_px) {
        add(Fault.NO_ROOM, one, "", room + " px");
      }
    }
    outside(one);
    unreachable(one);
  }

  private void labeled(Seen one, Labeled labeled) {
    String words = labeled.getText();
    Optional<Text> shown = text(labeled);
    if (words == null || words.isBlank() || shown.isEmpty() || one.box().getWidth() == 0) {
      return;
    }
    Text text = shown.get();
    String expected = labeled.isMnemonicParsing() ? words.replace("_", "") : words;
    if (!text.getText().replace("_", "").equals(expected.replace("_", ""))) {
      add(Fault.SHORTENED, one, words, "shows \"" + text.getText() + "\"");
      return;
    }
    Bounds drawn = text.localToScene(text.getLayoutBounds());
    if (sticksOut(drawn, one.box())) {
      add(Fault.TEXT_OUTSIDE, one, words, beyond(drawn, one.box()));
    }
    if (labeled.isWrapText()) {
      wrapped(one, text);
    }
  }

  private void wrapped(Seen one, Text text) {
    double room = text.getWrappingWidth();
    if (room <= 0) {
      return;
    }
    for (String word : text.getText().split("[\\s\u2002\u2003\u2009\u200a\u2013\u2014/-]+", -1)) {
      double wide = width(word, text.getFont());
      if (wide > room + SLACK_PX) {
        add(Fault.BROKEN_WORD, one, word, Math.round(wide) + " in " + Math.round(room) + " px");
        return;
      }
    }
    double line = new Text("X").getLayoutBounds().getHeight() / 12 * text.getFont().getSize();
    long lines = Math.round(text.getLayoutBounds().getHeight() / Math.max(1, line));
    if (lines >= SQUEEZED_LINES && text.getText().length() / (double) lines < SQUEEZED_LETTERS) {
      add(Fault.SQUEEZED, one, text.getText(), lines + " lines");
    }
  }

  private void field(Seen one, TextField field) {
    String typed =
        field.getText() == null || field.getText().isEmpty()
            ? field.getPromptText()
            : field.getText();
    double room =
        field.getWidth() - field.snappedLeftInset() - field.snappedRightInset() + SLACK_PX;
    if (typed != null && width(typed, field.getFont()) > room && !field.isFocused()) {
      add(Fault.FIELD_CUT, one, typed, Math.round(room) + " px");
    }
  }

  /** A pane holds what it lays out. */
  private void outside(Seen one) {
    Parent parent = one.node().getParent();
    boolean laidOut =
        one.node() instanceof Region && one.node().isManaged() && parent instanceof Pane;
    if (laidOut && one.box().getWidth() > 0 && !isContent(parent)) {
      Bounds around = parent.localToScene(parent.getLayoutBounds());
      if (sticksOut(one.box(), around)) {
        add(Fault.OUTSIDE, one, words(one.node()), beyond(one.box(), around));
      }
    }
  }

  private static boolean isContent(Parent parent) {
    return parent.getClip() != null
        || (parent.getParent() != null && parent.getParent().getClip() != null);
  }

  /** Words and controls are in sight or can be scrolled to. */
  private void unreachable(Seen one) {
    boolean leaf = one.node() instanceof Labeled || one.node() instanceof TextField;
    boolean drawn = one.node() instanceof Text text && !text.getText().isBlank();
    if (!leaf && !(drawn && !(one.node().getParent() instanceof Labeled))) {
      return;
    }
    Bounds box = one.box();
    Bounds hole = one.window();
    boolean inField =
        one.node().getParent() instanceof Pane p && p.getParent() instanceof TextField;
    if (inField || box.getWidth() == 0) {
      return;
    }
    boolean across =
        box.getMaxX() > hole.getMaxX() + SLACK_PX || box.getMinX() < hole.getMinX() - SLACK_PX;
    boolean down =
        box.getMaxY() > hole.getMaxY() + SLACK_PX || box.getMinY() < hole.getMinY() - SLACK_PX;
    if ((across && !one.sideways()) || (down && !one.upright())) {
      add(Fault.UNREACHABLE, one, words(one.node()), beyond(box, hole));
    }
  }

  private void overlaps() {
    List<Seen> texts =
        seen.stream()
            .filter(s -> s.node() instanceof Text text && !text.getText().isBlank())
            .filter(s -> s.visible().isPresent())
            .toList();
    for (int i = 0; i < texts.size(); i++) {
      for (int k = i + 1; k < texts.size(); k++) {
        Bounds both =
            Seen.common(texts.get(i).visible().orElseThrow(), texts.get(k).visible().orElseThrow());
        if (both.getWidth() > SLACK_PX && both.getHeight() > SLACK_PX) {
          add(
              Fault.OVERLAP,
              texts.get(i),
              words(texts.get(i).node()),
              "with \"" + words(texts.get(k).node()) + "\" at " + texts.get(k).path());
        }
      }
    }
  }

  private void add(Fault fault, Seen one, String words, String measured) {
    findings.add(new Finding(fault, words, one.path(), measured));
  }

  private static String words(Node node) {
    if (node instanceof Labeled labeled) {
      return String.valueOf(labeled.getText());
    }
    return node instanceof Text text
        ? text.getText()
        : node instanceof TextField field ? String.valueOf(field.getText()) : "";
  }

  private static Optional<Text> text(Labeled labeled) {
    return labeled.getChildrenUnmodifiable().stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .findFirst();
  }

  private static double width(String words, Font font) {
    Text alone = new Text(words);
    alone.setFont(font);
    return alone.getLayoutBounds().getWidth();
  }

  private static boolean sticksOut(Bounds inner, Bounds outer) {
    return inner.getMinX() < outer.getMinX() - SLACK_PX
        || inner.getMaxX() > outer.getMaxX() + SLACK_PX
        || inner.getMinY() < outer.getMinY() - SLACK_PX
        || inner.getMaxY() > outer.getMaxY() + SLACK_PX;
  }

  private static String beyond(Bounds inner, Bounds outer) {
    return String.format(
        Locale.ROOT,
        "left %.0f, right %.0f, top %.0f, low %.0f px",
        Math.max(0, outer.getMinX() - inner.getMinX()),
        Math.max(0, inner.getMaxX() - outer.getMaxX()),
        Math.max(0, outer.getMinY() - inner.getMinY()),
        Math.max(0, inner.getMaxY() - outer.getMaxY()));
  }
}
