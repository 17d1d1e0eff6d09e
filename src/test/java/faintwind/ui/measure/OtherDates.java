package faintwind.ui.measure;

import java.util.List;
import java.util.regex.Pattern;
import javafx.scene.Parent;

/** Finds days that are written in another form than "1 November 2026". */
public final class OtherDates {
  private static final String MONTHS =
      "(Jan(uary)?|Feb(ruary)?|Mar(ch)?|Apr(il)?|May|June?|July?|Aug(ust)?"
          + "|Sep(tember)?|Oct(ober)?|Nov(ember)?|Dec(ember)?)";
  private static final Pattern OTHER =
      Pattern.compile(
          "(?<![\\w./-])\\d{4}-\\d\\d-\\d\\d(?![\\w./-]*\\.[a-z])"
              + "|\\b(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day,? \\d"
              + ("|\\b\\d{1,2}\\.? " + MONTHS + "\\b(?! \\d{4})")
              + "|(?<=\\d )(Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b"
              + "|\\b\\d{1,2} \\w{3,9} \\d{4} \\d\\d:\\d\\d"
              + ("|\\b" + MONTHS + " \\d{1,2}\\b")
              + "|\\b\\d{1,2}[./]\\d{1,2}[./](20)?\\d\\d\\b");

  private OtherDates() {}

  /** All texts under a root that show a day in another form; JavaFX thread. */
  public static List<String> under(Parent root) {
    return ShownTexts.under(root).stream().filter(OtherDates::isOther).toList();
  }

  /** Whether a text has a day in another form; the names of files are none. */
  public static boolean isOther(String text) {
    return OTHER.matcher(text).find();
  }
}
