package faintwind.physics.advice;

import faintwind.physics.advice.PartNeed.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the steps need beside the parts of the design: tools once for everybody, things that are
 * used up with some to spare, the arm once, and what plating at home would take. How many of each:
 * common practice, no source. The words are under {@code parts.item.ID}.
 */
public final class Workshop {
  /** One pack, or one tin of varnish, is enough for so many instruments. */
  static final int INSTRUMENTS_A_PACK = 10;

  private static final List<Item> ITEMS =
      List.of(
          new Item("caliper", Kind.TOOL, Per.CLASS, 0),
          new Item("scale", Kind.TOOL, Per.CLASS, 0),
          new Item("pillar-drill", Kind.TOOL, Per.CLASS, 0),
          new Item("vice", Kind.TOOL, Per.CLASS, 0),
          new Item("jaws", Kind.TOOL, Per.CLASS, 0),
          new Item("goggles", Kind.TOOL, Per.EACH, 1),
          new Item("centre-punch", Kind.TOOL, Per.CLASS, 0),
          new Item("hammer", Kind.TOOL, Per.CLASS, 0),
          new Item("file", Kind.TOOL, Per.CLASS, 0),
          new Item("centre-drill", Kind.TOOL, Per.CLASS, 1),
          new Item("larger-drill", Kind.TOOL, Per.CLASS, 0),
          new Item("chip-brush", Kind.TOOL, Per.CLASS, 0),
          new Item("multimeter", Kind.TOOL, Per.CLASS, 0),
          new Item("proof-resistors", Kind.TOOL, Per.CLASS, 1),
          new Item("soldering-iron", Kind.TOOL, Per.CLASS, 0),
          new Item("pliers", Kind.TOOL, Per.CLASS, 0),
          new Item("side-cutter", Kind.TOOL, Per.CLASS, 0),
          new Item("hot-air-gun", Kind.TOOL, Per.CLASS, 0),
          new Item("third-hand", Kind.TOOL, Per.CLASS, 0),
          new Item("crocodile-clips", Kind.TOOL, Per.CLASS, 0),
          new Item("heat-proof-tile", Kind.TOOL, Per.CLASS, 0),
          new Item("crimping-pliers", Kind.TOOL, Per.CLASS, 0),
          new Item("fine-saw", Kind.TOOL, Per.CLASS, 0),
          new Item("fine-brush", Kind.TOOL, Per.CLASS, 1),
          new Item("drying-stand", Kind.TOOL, Per.CLASS, 0),
          new Item("clamp", Kind.TOOL, Per.EACH, 0),
          new Item("metal-plate", Kind.TOOL, Per.CLASS, 0),
          new Item("lens", Kind.TOOL, Per.CLASS, 0),
          new Item("guard", Kind.TOOL, Per.EACH, 0),
          new Item("dust-mask", Kind.TOOL, Per.EACH, 1),
          new Item("jar", Kind.TOOL, Per.CLASS, 0),
          new Item("box", Kind.TOOL, Per.CLASS, 0),
          new Item("thermometer", Kind.TOOL, Per.CLASS, 0),
          new Item("barometer", Kind.TOOL, Per.CLASS, 0),
          new Item("hygrometer", Kind.TOOL, Per.CLASS, 0),
          new Item("light-oil", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("jaw-lining", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("drill-wood", Kind.CONSUMABLE, Per.EACH, 1),
          new Item("pipe-cleaner", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("pin-and-wax", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("dry-wood", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("crimp-sleeves", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("clear-epoxy", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("polishing-cloth", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("clean-gloves", Kind.CONSUMABLE, Per.EACH, 1),
          new Item("nitrile-gloves", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("dish-soap", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("alcohol", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("solder", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("flux", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("abrasive-paper", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("wooden-sticks", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("masking-tape", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("heat-shrink", Kind.CONSUMABLE, Per.PACK, 1),
          new Item("joint-block", Kind.CONSUMABLE, Per.EACH, 0),
          new Item("felt", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("card", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("thread", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("ball-stand", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("frame-blocks", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("rods", Kind.CONSUMABLE, Per.PAIR, 1),
          new Item("frame-strips", Kind.CONSUMABLE, Per.EACH, 1),
          new Item("fuse", Kind.CONSUMABLE, Per.EACH, 2),
          new Item("fuse-holder", Kind.CONSUMABLE, Per.EACH, 0),
          new Item("supply-switch", Kind.CONSUMABLE, Per.EACH, 0),
          new Item("screw-terminals", Kind.CONSUMABLE, Per.PACK, 0),
          new Item("bias-resistor", Kind.CONSUMABLE, Per.EACH, 1),
          new Item("test-wire", Kind.CONSUMABLE, Per.CLASS, 0),
          new Item("label", Kind.CONSUMABLE, Per.PAIR, 2),
          new Item("tape-measure", Kind.ARM, Per.CLASS, 0),
          new Item("ruler", Kind.ARM, Per.CLASS, 0),
          new Item("spirit-level", Kind.ARM, Per.CLASS, 0),
          new Item("screwdriver", Kind.ARM, Per.CLASS, 0),
          new Item("saw", Kind.ARM, Per.CLASS, 0),
          new Item("spring-scale", Kind.ARM, Per.CLASS, 0),
          new Item("watch", Kind.ARM, Per.CLASS, 0),
          new Item("metronome", Kind.ARM, Per.CLASS, 0),
          new Item("matches", Kind.ARM, Per.CLASS, 0),
          new Item("water-dish", Kind.ARM, Per.CLASS, 0),
          new Item("bearing", Kind.ARM, Per.CLASS, 0),
          new Item("foot", Kind.ARM, Per.CLASS, 0),
          new Item("bar", Kind.ARM, Per.CLASS, 0),
          new Item("holder-rod", Kind.ARM, Per.CLASS, 1),
          new Item("wood-glue", Kind.ARM, Per.CLASS, 0),
          new Item("screws", Kind.ARM, Per.CLASS, 1),
          new Item("counterweight", Kind.ARM, Per.CLASS, 0),
          new Item("drive", Kind.ARM, Per.CLASS, 0),
          new Item("pulley", Kind.ARM, Per.CLASS, 0),
          new Item("drum", Kind.ARM, Per.CLASS, 0),
          new Item("cushion", Kind.ARM, Per.CLASS, 0),
          new Item("stop", Kind.ARM, Per.CLASS, 0),
          new Item("clicker", Kind.ARM, Per.CLASS, 1),
          new Item("floor-mark", Kind.ARM, Per.CLASS, 0),
          new Item("nickel-bath", Kind.HOME_PLATING, Per.PACK, 0),
          new Item("nickel-anode", Kind.HOME_PLATING, Per.CLASS, 0),
          new Item("gold-solution", Kind.HOME_PLATING, Per.PACK, 0),
          new Item("gold-anode", Kind.HOME_PLATING, Per.CLASS, 0),
          new Item("plating-supply", Kind.HOME_PLATING, Per.CLASS, 0),
          new Item("glass-vessels", Kind.HOME_PLATING, Per.SIX, 0),
          new Item("plating-wire", Kind.HOME_PLATING, Per.EACH, 0),
          new Item("bath-seal", Kind.HOME_PLATING, Per.PACK, 0),
          new Item("apron", Kind.HOME_PLATING, Per.CLASS, 0),
          new Item("waste-bottles", Kind.HOME_PLATING, Per.TWO, 0));

  private Workshop() {}

  /** What one of a thing is enough for. */
  private enum Per {
    /** Everybody who builds. */
    CLASS(0, 1),
    /** Ten instruments. */
    PACK(0, 0),
    /** One instrument. */
    EACH(1, 0),
    /** One instrument takes two. */
    PAIR(2, 0),
    /** Everybody shares two. */
    TWO(0, 2),
    /** Everybody shares six: bath, and two rinses behind it, for nickel and for gold. */
    SIX(0, 6);

    private final int each;
    private final int once;

    Per(int each, int once) {
      this.each = each;
      this.once = once;
    }

    double needed(int instruments) {
      return this == PACK
          ? Math.ceil(instruments / (double) INSTRUMENTS_A_PACK)
          : once + (double) each * instruments;
    }
  }

  /** A thing, how it is counted, and how many more are worth having. */
  private record Item(String id, Kind kind, Per per, int spare) {
    PartNeed of(int instruments) {
      return new PartNeed(kind, key(kind, id), per.needed(instruments), spare);
    }
  }

  private static String key(Kind kind, String id) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + id;
  }

  /**
   * Everything for a number of instruments.
   *
   * @param instruments how many, 1 or more
   * @param isPlated whether the balls get a metal coat
   */
  static List<PartNeed> of(int instruments, boolean isPlated) {
    List<PartNeed> all = new ArrayList<>();
    for (Item item : ITEMS) {
      if (isPlated || item.kind() != Kind.HOME_PLATING) {
        all.add(item.of(instruments));
      }
    }
    return all;
  }

  /** The id of a thing, by which its words are found; empty for a part of the design. */
  public static String id(PartNeed need) {
    return ITEMS.stream()
        .filter(
            item -> item.kind() == need.kind() && key(item.kind(), item.id()).equals(need.key()))
        .map(Item::id)
        .findFirst()
        .orElse("");
  }
}
