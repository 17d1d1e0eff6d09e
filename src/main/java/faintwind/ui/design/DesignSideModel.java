package faintwind.ui.design;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Field;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.physics.choice.DesignField;
import faintwind.physics.part.Coat;
import faintwind.ui.work.Background;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Designs side by side: the present one, those that were put beside it, and the usual others made
 * from it: copper with gold, bare aluminium, thinner and thicker balls.
 */
public final class DesignSideModel {
  private static final int MOST_PINNED = 2;
  private static final double THINNER = 0.8;
  private static final double THICKER = 1.25;

  private final Messages words;
  private final Background background;
  private final ReadOnlyObjectWrapper<List<Compared>> columns =
      new ReadOnlyObjectWrapper<>(List.of());
  private final List<Compared> pinned = new ArrayList<>();
  private List<Compared> others = List.of();
  private long asked;

  DesignSideModel(Messages words, Background background) {
    this.words = words;
    this.background = background;
  }

  /**
   * One design of a comparison.
   *
   * @param name metal, diameter and surface
   * @param worked what follows from it
   */
  public record Compared(String name, Sized worked) {}

  /** The designs, the present one first. */
  public ReadOnlyObjectProperty<List<Compared>> columns() {
    return columns.getReadOnlyProperty();
  }

  /** The present design changed: the others are made from it anew. */
  void present(DesignWork by, Sized worked) {
    long turn = ++asked;
    put(worked);
    background.entry(
        watch -> others(by, worked),
        made -> {
          if (turn == asked) {
            others = made;
            put(worked);
          }
        },
        world -> {}); // the present design says itself what the disk refused
  }

  /** Puts the present design beside itself, to stay while the choices change. */
  public void pin() {
    if (columns.get().isEmpty()) {
      return;
    }
    Compared present = columns.get().get(0);
    pinned.removeIf(c -> c.worked().text().equals(present.worked().text()));
    pinned.add(0, present);
    while (pinned.size() > MOST_PINNED) {
      pinned.remove(pinned.size() - 1);
    }
    put(present.worked());
  }

  private void put(Sized worked) {
    List<Compared> all = new ArrayList<>();
    all.add(new Compared(name(worked), worked));
    all.addAll(pinned);
    all.addAll(others);
    columns.set(List.copyOf(all));
  }

  private List<Compared> others(DesignWork by, Sized worked) {
    double d_mm = 1e3 * worked.design().ball().diameter_m().nominal();
    String here = name(worked);
    Map<DesignField, String> gold = new LinkedHashMap<>();
    gold.put(DesignField.METAL, "copper");
    gold.put(DesignField.COAT, "gold");
    List<Compared> made = new ArrayList<>();
    for (Map<DesignField, String> changes :
        List.of(
            gold,
            Map.of(DesignField.METAL, "aluminium"),
            diameter(THINNER * d_mm),
            diameter(THICKER * d_mm))) {
      by.with(worked, changes)
          .fold((value, notes) -> made.add(new Compared(name(value), value)), problems -> false);
    }
    made.removeIf(c -> c.name().equals(here));
    return List.copyOf(made);
  }

  private static Map<DesignField, String> diameter(double mm) {
    return Map.of(DesignField.DIAMETER, Field.plain(Math.rint(mm)));
  }

  private String name(Sized worked) {
    var ball = worked.design().ball();
    String plain =
        words.text(
            "design.compared",
            DesignWords.plain(ball.metal().label().name()),
            Numerals.digits(1e3 * ball.diameter_m().nominal()));
    Coat.Kind kind = ball.coat().kind();
    return kind == Coat.Kind.BARE
        ? plain
        : words.text(
            "design.compared.coated",
            plain,
            words.text("design.coat." + kind.name().toLowerCase(Locale.ROOT)));
  }
}
