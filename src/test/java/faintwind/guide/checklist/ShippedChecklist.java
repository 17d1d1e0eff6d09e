package faintwind.guide.checklist;

import faintwind.files.checklist.ChecklistFiles;
import faintwind.message.Checked;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The checklist that ships, read once for the tests. */
public final class ShippedChecklist {
  private static final Checklist STANDARD = read();

  private ShippedChecklist() {}

  public static Checklist standard() {
    return STANDARD;
  }

  private static Checklist read() {
    try {
      Checked<Checklist> checked = ChecklistFiles.shipped("standard");
      if (checked instanceof Checked.Ok<Checklist> ok) {
        return ok.value();
      }
      throw new AssertionError(checked.problems().toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
