package faintwind.guide.checklist;

import faintwind.message.Problem;
import java.util.List;

/**
 * A file of the teacher's own that lies over the shipped checklist.
 *
 * @param file name in the checklist, such as {@code 04-assemble/coat-parts.json}
 * @param sha256 hash of its bytes
 * @param refused why it is not used and the shipped one stands; empty where it is used
 */
public record OwnFile(String file, String sha256, List<Problem> refused) {
  public OwnFile {
    refused = List.copyOf(refused);
  }
}
