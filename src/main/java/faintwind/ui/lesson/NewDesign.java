package faintwind.ui.lesson;

import faintwind.job.lesson.OneDesign;
import faintwind.message.Checked;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import faintwind.ui.instrument.Workspace;
import faintwind.ui.lesson.TypedBox.Said;
import faintwind.ui.work.DiskWords;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The one design of a class that is being made: an instrument's, a file's, or none yet. */
final class NewDesign {
  private final Desk desk;
  private final ObservableList<Choice> choices = FXCollections.observableArrayList();
  private final ObjectProperty<Choice> chosen = new SimpleObjectProperty<>();
  private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

  /**
   * One of several.
   *
   * @param words as it is shown
   * @param from a design file or the folder of an instrument; empty for none yet
   */
  record Choice(String words, Optional<Path> from) {}

  NewDesign(Desk desk) {
    this.desk = desk;
    Choice later = new Choice(desk.text("class.new.design-later"), Optional.empty());
    choices.setAll(List.of(later));
    chosen.set(later);
    chosen.addListener((property, was, now) -> judge());
  }

  ObservableList<Choice> choices() {
    return choices;
  }

  ObjectProperty<Choice> chosen() {
    return chosen;
  }

  /** What is said below the choice. */
  ReadOnlyObjectProperty<Said> said() {
    return said.getReadOnlyProperty();
  }

  Optional<Path> from() {
    return Optional.ofNullable(chosen.get()).flatMap(Choice::from);
  }

  /** Looks in the background which instruments of the folder have a design. */
  void look(Workspace workspace) {
    desk.background()
        .runQuietly(
            watch ->
                workspace.read(many -> {}).instruments().stream()
                    .map(Workspace.Listed::standpoint)
                    .filter(s -> s.view().state().designJson().isPresent())
                    .filter(s -> !s.view().state().retired())
                    .map(this::of)
                    .sorted(Comparator.comparing(Choice::words, String.CASE_INSENSITIVE_ORDER))
                    .toList(),
            found -> choices.addAll(1, found),
            broke -> said.set(new Said(DiskWords.say(broke, desk.words()), false)));
  }

  private Choice of(Standpoint instrument) {
    Path folder = instrument.view().path();
    String name = instrument.view().state().name().orElse(String.valueOf(folder.getFileName()));
    return new Choice(desk.text("class.new.design-of", name), Optional.of(folder));
  }

  /** Asks for a file and chooses it. */
  void chooseFile() {
    desk.files()
        .open(desk.text("class.new.design-choose"), desk.text("class.new.design-kind"), "*.json")
        .ifPresent(
            file -> {
              String name = String.valueOf(file.getFileName());
              Choice one = new Choice(desk.text("class.new.design-file", name), Optional.of(file));
              if (!choices.contains(one)) {
                choices.add(one);
              }
              chosen.set(one);
            });
  }

  private void judge() {
    Optional<Path> from = from();
    said.set(Said.NOTHING);
    from.ifPresent(
        path ->
            desk.background()
                .runQuietly(
                    watch -> OneDesign.text(path),
                    read -> {
                      if (from().equals(from)) {
                        said.set(said(read));
                      }
                    },
                    broke -> said.set(new Said(DiskWords.say(broke, desk.words()), true))));
  }

  private Said said(Checked<String> read) {
    return read.fold(
        (text, notes) -> new Said(desk.text("class.new.design-fits"), false),
        problems ->
            new Said(
                problems.stream().map(desk.words()::line).collect(Collectors.joining(" ")), true));
  }

  /** Says why it is refused, where that was found while the class was made. */
  void refuse(String why) {
    said.set(new Said(why, true));
  }
}
