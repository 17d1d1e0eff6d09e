package faintwind.ui.listen;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.live.SourceText;
import faintwind.calibration.profile.ImportProfile;
import faintwind.job.live.Listen;
import faintwind.job.live.SourceLook;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.ui.work.Background;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Which source is listened to, as a person chooses it. */
public final class SourceChoiceModel {
  private final Messages words;
  private final Background background;
  private final List<Kind> kinds;
  private final ObjectProperty<Kind> kind = new SimpleObjectProperty<>(Kind.SERIAL);
  private final StringProperty port = new SimpleStringProperty("");
  private final StringProperty baud = new SimpleStringProperty("9600");
  private final StringProperty host = new SimpleStringProperty("");
  private final StringProperty here = new SimpleStringProperty("");
  private final StringProperty number = new SimpleStringProperty("5000");
  private final StringProperty file = new SimpleStringProperty("");
  private final StringProperty every = new SimpleStringProperty("30");
  private final StringProperty unit = new SimpleStringProperty("mV");
  private final ObjectProperty<Optional<ImportProfile>> profile =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObservableList<ImportProfile> profiles = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Seen> seen = new ReadOnlyObjectWrapper<>(Seen.NOTHING);

  /** Kinds of sources. */
  public enum Kind {
    SERIAL("serial"),
    TCP("tcp"),
    UDP("udp"),
    FILE("file"),
    TYPED("typed");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Those that send lines of text. */
    public static final List<Kind> OF_LINES = List.of(SERIAL, TCP, UDP, FILE);

    /** The word before the colon of its spelling, and in keys. */
    public String word() {
      return word;
    }

    /** Whether it sends lines of text. */
    public boolean hasLines() {
      return this != TYPED;
    }
  }

  /**
   * What a look at the source brought.
   *
   * @param lines its first lines
   * @param problems what went wrong, in words
   */
  public record Seen(List<String> lines, List<String> problems) {
    static final Seen NOTHING = new Seen(List.of(), List.of());

    public Seen {
      lines = List.copyOf(lines);
      problems = List.copyOf(problems);
    }
  }

  /**
   * A choice that is not made.
   *
   * @param kinds what may be chosen
   * @param profiles what lines may mean, shipped and the instrument's own
   */
  public SourceChoiceModel(
      Messages words, Background background, List<Kind> kinds, List<ImportProfile> profiles) {
    this.kinds = List.copyOf(kinds);
    this.words = words;
    this.background = background;
    this.profiles.setAll(profiles);
  }

  /** What may be chosen. */
  public List<Kind> kinds() {
    return kinds;
  }

  public ObjectProperty<Kind> kind() {
    return kind;
  }

  public StringProperty port() {
    return port;
  }

  public StringProperty baud() {
    return baud;
  }

  /** Own address that takes packets; empty for those of this computer alone. */
  public StringProperty here() {
    return here;
  }

  public StringProperty host() {
    return host;
  }

  /** Port number of a connection or of packets. */
  public StringProperty number() {
    return number;
  }

  public StringProperty file() {
    return file;
  }

  public StringProperty every() {
    return every;
  }

  public StringProperty unit() {
    return unit;
  }

  /** What the lines mean; empty where they are those of a run file. */
  public ObjectProperty<Optional<ImportProfile>> profile() {
    return profile;
  }

  public ObservableList<ImportProfile> profiles() {
    return profiles;
  }

  public ReadOnlyObjectProperty<Seen> seen() {
    return seen.getReadOnlyProperty();
  }

  /** The source as {@code faintwind listen} spells it. */
  public String text() {
    return switch (kind.get()) {
      case SERIAL -> "serial:" + port.get().strip() + "?baud=" + baud.get().strip();
      case TCP -> "tcp:" + host.get().strip() + ":" + number.get().strip();
      case UDP ->
          "udp:" + (here.get().isBlank() ? "" : here.get().strip() + ":") + number.get().strip();
      case FILE -> "file:" + file.get();
      case TYPED -> "typed:?every_s=" + every.get().strip() + "&unit=" + unit.get();
    };
  }

  /** What is chosen, or everything that is missing. */
  public Checked<Listen.What> chosen(Optional<Listen.BySpeed> speed) {
    Optional<ImportProfile> meaning = kind.get().hasLines() ? profile.get() : Optional.empty();
    return SourceText.read(text())
        .map(a -> new Listen.What(a, text(), meaning, speed, Listen.Raw.KEPT));
  }

  /** A profile that was put together is used from now on. */
  public void use(ImportProfile made) {
    profiles.removeIf(p -> p.id().equals(made.id()));
    profiles.add(made);
    profile.set(Optional.of(made));
    seen.set(Seen.NOTHING);
  }

  /** Looks at the first lines of the source, off the JavaFX thread. */
  public void look() {
    Checked<SourceAddress> address = SourceText.read(text());
    if (!(address instanceof Checked.Ok<SourceAddress> ok)) {
      seen.set(new Seen(List.of(), sentences(address.problems())));
      return;
    }
    background.run(
        watch -> SourceLook.firstLines(ok.value(), watch),
        lines ->
            seen.set(
                lines.isEmpty()
                    ? new Seen(lines, List.of(words.text("listen.nothing-seen")))
                    : new Seen(lines, List.of())),
        this::broke);
  }

  /** Says what the disk refused. */
  public void say(IOException failure) {
    broke(failure);
  }

  private void broke(IOException failure) {
    seen.set(new Seen(List.of(), List.of(DiskWords.say(failure, words))));
  }

  private List<String> sentences(List<Problem> problems) {
    return problems.stream().map(words::sentence).toList();
  }
}
