package faintwind.ui.frame;

import faintwind.job.WindowChoices;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;

/** The look and the person's name, as kept beside the instruments. */
public final class KeptLook {
  private final Path folder;
  private final Look look = new Look();
  private final StringProperty who = new SimpleStringProperty("");
  private final StringProperty language = new SimpleStringProperty("");
  private boolean asked;

  private KeptLook(Path folder) {
    this.folder = folder;
  }

  /** What was chosen before; where nothing was, the window asks at its start. */
  public static KeptLook in(Path folder) {
    KeptLook kept = new KeptLook(folder);
    try {
      Optional<WindowChoices> choices = WindowChoices.read(folder);
      choices.ifPresent(kept::take);
      kept.asked = choices.isPresent();
    } catch (IOException notReadable) {
      // How the window looks is not worth refusing to open it; the folder itself is told of later.
      kept.asked = false;
    }
    return kept;
  }

  private void take(WindowChoices choices) {
    look.textPct().set(choices.textPct());
    for (Theme theme : Theme.values()) {
      if (theme.name().toLowerCase(Locale.ROOT).equals(choices.theme())) {
        look.theme().set(theme);
      }
    }
    look.lessMotion().set(choices.lessMotion());
    who.set(choices.who());
    language.set(choices.language());
  }

  /** The same choices, which nobody listens to yet: for a window in place of this one. */
  public KeptLook again() {
    KeptLook again = new KeptLook(folder);
    again.take(choices());
    again.asked = asked;
    again.look.projector().set(look.projector().get());
    return again;
  }

  public Look look() {
    return look;
  }

  public StringProperty who() {
    return who;
  }

  /** Code of the language the person chose; empty for the system's. */
  public StringProperty language() {
    return language;
  }

  /** Whether the person was asked before. */
  public boolean asked() {
    return asked;
  }

  /** The person was asked now. */
  public void wasAsked() {
    asked = true;
  }

  /** What is done where a choice changes that is kept as it is made. */
  public void whenChanged(Runnable then) {
    for (ObservableValue<?> each :
        List.of(look.theme(), look.textPct(), look.lessMotion(), language)) {
      each.addListener((property, was, now) -> then.run());
    }
  }

  /** The choices as they are now. */
  public WindowChoices choices() {
    return new WindowChoices(
        look.textPct().get(),
        look.theme().get().name().toLowerCase(Locale.ROOT),
        look.lessMotion().get(),
        who.get(),
        language.get());
  }

  public Path folder() {
    return folder;
  }
}
