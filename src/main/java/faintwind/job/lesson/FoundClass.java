package faintwind.job.lesson;

import faintwind.files.lesson.ClassFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A class on the disk.
 *
 * @param folder of the class
 * @param name of the class; that of its folder where its file cannot be used
 */
public record FoundClass(Path folder, String name) {

  /** The class of a folder itself, then those directly in it; hidden folders are passed over. */
  public static List<FoundClass> in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> places = new ArrayList<>(List.of(folder));
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(path -> !String.valueOf(path.getFileName()).startsWith("."))
          .sorted()
          .forEach(places::add);
    }
    List<FoundClass> found = new ArrayList<>();
    for (Path place : places) {
      if (LookAtClass.is(place)) {
        String plain = String.valueOf(place.getFileName());
        String name = ClassFile.read(place).fold((it, notes) -> it.name(), problems -> plain);
        found.add(new FoundClass(place, name));
      }
    }
    return found;
  }
}
