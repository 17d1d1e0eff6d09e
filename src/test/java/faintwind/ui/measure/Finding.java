package faintwind.ui.measure;

/**
 * Something that a person cannot read.
 *
 * @param fault what is wrong with it
 * @param text what should be read there
 * @param path the ids of the nodes around it, the outermost first
 * @param measured by how much, in words
 */
public record Finding(Fault fault, String text, String path, String measured) {

  /** What can be wrong. */
  public enum Fault {
    /** Dots or nothing in place of words. */
    SHORTENED,
    /** A word goes on in the next line because its column is narrower than it is. */
    BROKEN_WORD,
    /** Four lines and more of a few letters each. */
    SQUEEZED,
    /** What was typed is wider than its box. */
    FIELD_CUT,
    /** Words stick out of the node that owns them. */
    TEXT_OUTSIDE,
    /** A node sticks out of its parent, or of the window. */
    OUTSIDE,
    /** Beyond the edge of something that does not scroll that way. */
    UNREACHABLE,
    /** Two texts on one another. */
    OVERLAP,
    /** Less than a few lines of the sheet in sight. */
    NO_ROOM
  }

  @Override
  public String toString() {
    String shown = text.length() > 48 ? text.substring(0, 48) + "…" : text;
    return fault + " \"" + shown.replace('\n', '|') + "\" " + measured + "  at " + path;
  }
}
