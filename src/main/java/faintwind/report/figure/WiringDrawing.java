package faintwind.report.figure;

import faintwind.message.Messages;
import faintwind.report.paint.PlotPen;
import faintwind.report.picture.Picture;
import faintwind.report.picture.PictureSize;
import faintwind.report.picture.PictureStyle;
import faintwind.report.picture.PlotToken;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Locale;

/**
 * The whole chain: supply, fuse and switch, and two conductors to the heater; one wire of the
 * negative alloy between the balls, two of the positive alloy to joints side by side; two
 * conductors to the input.
 *
 * @param power what feeds the heater
 * @param couple what the thermocouple's wires are
 * @param input what kind of input reads it
 * @param messages words in the drawing
 */
public record WiringDrawing(Power power, Couple couple, Input input, Messages messages)
    implements Picture {
  /** Size the drawing is laid out for; it scales to the size it is given. */
  public static final PictureSize SIZE = new PictureSize(340, 492);

  /** What reads the signal. */
  public enum Input {
    /** Volts; a floating pair may want a return path for the input's own current. */
    VOLTAGE,
    /** A difference in kelvin. */
    DIFFERENCE,
    /** A thermocouple input that adds its terminal temperature. */
    COMPENSATED
  }

  /**
   * What feeds the heater, in words.
   *
   * @param supply battery or other source
   * @param regulated what holds the voltage, and the voltage; may be empty
   * @param cable length and drop; empty where the leads go straight to the supply
   */
  public record Power(String supply, String regulated, String cable) {}

  /**
   * The thermocouple, in words.
   *
   * @param type type and the standard that the colours follow
   * @param positive alloy and colour of the positive wires
   * @param negative alloy and colour of the negative wire
   */
  public record Couple(String type, String positive, String negative) {}

  @Override
  public String title() {
    return messages.text("plot.wiring");
  }

  @Override
  public String description() {
    return messages.text(
        "plot.wiring.description",
        power.supply(),
        couple.positive(),
        couple.negative(),
        inputName());
  }

  private String inputName() {
    return messages.text("plot.wiring.input." + input.name().toLowerCase(Locale.ROOT));
  }

  @Override
  public void draw(Graphics2D g, PictureSize size, PictureStyle style) {
    double scale =
        Math.min(size.width() / (double) SIZE.width(), size.height() / (double) SIZE.height());
    var before = g.getTransform();
    g.translate((size.width() - scale * SIZE.width()) / 2, 0);
    g.scale(scale, scale);
    new Layout(new PlotPen(g, style), this).draw();
    g.setTransform(before);
  }

  /** The parts at their places in a field of 340 by 492. */
  private record Layout(PlotPen pen, WiringDrawing what) {
    private static final double HEATED_X = 85;
    private static final double REFERENCE_X = 255;
    private static final double BALLS_Y = 190;
    private static final double RADIUS = 34;
    private static final double JOINTS_Y = 345;
    private static final double PLUS_X = 150;
    private static final double MINUS_X = 190;
    private static final double INPUT_Y = 424;
    private static final BasicStroke INK =
        new BasicStroke(1.75f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke DASHED =
        new BasicStroke(
            1.75f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {7, 4}, 0);

    void draw() {
      supply();
      ball(HEATED_X, PlotToken.HEATED, "plot.wiring.heated");
      ball(REFERENCE_X, PlotToken.REFERENCE, "plot.wiring.reference");
      heater();
      couple();
      joints();
      input();
    }

    private void supply() {
      box(8, what.power().supply(), what.power().regulated());
      guardedPlus();
      pen.rule(100, 68, 100, BALLS_Y - 14, PlotToken.INK, 1.75);
      small("+", 58, 82, PlotPen.Align.END);
      small("−", 112, 84, PlotPen.Align.START);
      tie(62, 108, 104);
      small(what.text("plot.wiring.power"), 122, 100, PlotPen.Align.START);
      small(what.power().cable(), 122, 118, PlotPen.Align.START);
    }

    /** The plus wire with its fuse next to the supply and the switch behind it. */
    private void guardedPlus() {
      pen.rule(70, 68, 70, 118, PlotToken.INK, 1.75);
      Shape fuse = new Rectangle2D.Double(65, 74, 10, 20);
      pen.stroke(fuse, PlotToken.INK, INK);
      pen.rule(70, 134, 60, 119, PlotToken.INK, 1.75);
      pen.rule(70, 134, 70, BALLS_Y - 14, PlotToken.INK, 1.75);
      small(what.text("plot.wiring.fuse"), 58, 98, PlotPen.Align.END);
      small(what.text("plot.wiring.switch"), 54, 132, PlotPen.Align.END);
    }

    /** A tie that takes the pull off the wires. */
    private void tie(double left, double right, double y) {
      pen.stroke(
          new RoundRectangle2D.Double(left, y - 4, right - left, 8, 8, 8), PlotToken.EDGE, INK);
    }

    private void ball(double x, PlotToken colour, String key) {
      Shape ball = new Ellipse2D.Double(x - RADIUS, BALLS_Y - RADIUS, 2 * RADIUS, 2 * RADIUS);
      pen.wash(ball, colour, 0.16);
      pen.stroke(ball, colour, INK);
      String name = what.text(key);
      double left = x == HEATED_X ? x + RADIUS - 4 : x - RADIUS + 4;
      PlotPen.Align align = x == HEATED_X ? PlotPen.Align.START : PlotPen.Align.MIDDLE;
      pen.words(
          name, x == HEATED_X ? left : x, BALLS_Y - RADIUS - 8, strong(), PlotToken.INK, align);
    }

    private void heater() {
      Shape body = new Rectangle2D.Double(HEATED_X - 15, BALLS_Y - 14, 30, 12);
      pen.fill(body, PlotToken.SHEET);
      pen.stroke(body, PlotToken.INK, INK);
    }

    private void couple() {
      double y = BALLS_Y + 12;
      Path2D middle = new Path2D.Double();
      middle.moveTo(HEATED_X + 8, y);
      middle.lineTo(REFERENCE_X - 8, y);
      pen.stroke(middle, PlotToken.INK, DASHED);
      leg(HEATED_X + 8, y, PLUS_X);
      leg(REFERENCE_X - 8, y, MINUS_X);
      dot(HEATED_X + 8, y);
      dot(REFERENCE_X - 8, y);
      double line = BALLS_Y + RADIUS + 22;
      small(what.couple().type(), 170, line, PlotPen.Align.MIDDLE);
      small(what.text("plot.wiring.legs"), 170, line + 20, PlotPen.Align.MIDDLE);
      wire(what.couple().positive(), line + 36);
      small(what.text("plot.wiring.middle"), 170, line + 54, PlotPen.Align.MIDDLE);
      wire(what.couple().negative(), line + 70);
    }

    private void wire(String words, double y) {
      pen.words(words, 170, y, pen.fineStrong(), PlotToken.INK, PlotPen.Align.MIDDLE);
    }

    private void leg(double x, double y, double jointX) {
      Path2D leg = new Path2D.Double();
      leg.moveTo(x, y);
      double out = x < 170 ? 40 : 300;
      leg.lineTo(out, BALLS_Y + RADIUS + 18);
      leg.lineTo(out, JOINTS_Y - 24);
      leg.lineTo(jointX, JOINTS_Y);
      pen.stroke(leg, PlotToken.INK, INK);
    }

    private void joints() {
      Shape block = new RoundRectangle2D.Double(PLUS_X - 22, JOINTS_Y - 13, 84, 26, 8, 8);
      pen.wash(block, PlotToken.CARE, 0.14);
      pen.stroke(block, PlotToken.CARE, INK);
      dot(PLUS_X, JOINTS_Y);
      dot(MINUS_X, JOINTS_Y);
      pen.rule(PLUS_X, JOINTS_Y, PLUS_X, INPUT_Y, PlotToken.INK, 1.75);
      pen.rule(MINUS_X, JOINTS_Y, MINUS_X, INPUT_Y, PlotToken.INK, 1.75);
      small(what.text("plot.wiring.joints"), 222, JOINTS_Y + 12, PlotPen.Align.START);
      small(what.text("plot.wiring.wrapped"), 222, JOINTS_Y + 28, PlotPen.Align.START);
      tie(PLUS_X - 8, MINUS_X + 8, JOINTS_Y + 34);
      small("+", PLUS_X - 10, INPUT_Y - 8, PlotPen.Align.END);
      small("−", MINUS_X + 10, INPUT_Y - 8, PlotPen.Align.START);
      small(what.text("plot.wiring.signal"), PLUS_X - 26, INPUT_Y - 24, PlotPen.Align.END);
    }

    private void input() {
      String key = "plot.wiring.input." + what.input().name().toLowerCase(Locale.ROOT);
      box(INPUT_Y, what.text(key), what.text(key + "-note"));
      if (what.input() == Input.VOLTAGE) {
        bias();
      } else if (what.input() == Input.COMPENSATED) {
        thermometer();
      }
    }

    /** From signal minus through a resistor to the input's common. */
    private void bias() {
      double y = INPUT_Y - 30;
      Path2D path = new Path2D.Double();
      path.moveTo(MINUS_X, y);
      path.lineTo(240, y);
      path.moveTo(276, y);
      path.lineTo(300, y);
      path.lineTo(300, INPUT_Y);
      pen.stroke(path, PlotToken.EDGE, INK);
      pen.stroke(new Rectangle2D.Double(240, y - 5, 36, 10), PlotToken.EDGE, INK);
      dot(MINUS_X, y);
      small(what.text("plot.wiring.common"), 306, INPUT_Y - 8, PlotPen.Align.START);
    }

    private void thermometer() {
      double y = INPUT_Y - 8;
      pen.stroke(new RoundRectangle2D.Double(262, y - 30, 8, 26, 8, 8), PlotToken.ACT, INK);
      pen.fill(new Ellipse2D.Double(260, y - 8, 12, 12), PlotToken.ACT);
      small(what.text("plot.wiring.terminal"), 278, y - 8, PlotPen.Align.START);
    }

    private void box(double y, String first, String second) {
      Shape box = new RoundRectangle2D.Double(8, y, 324, 60, 6, 6);
      pen.fill(box, PlotToken.SHEET);
      pen.stroke(box, PlotToken.INK, INK);
      double line = second.isEmpty() ? y + 35 : y + 25;
      pen.words(first, 170, line, strong(), PlotToken.INK, PlotPen.Align.MIDDLE);
      small(second, 170, y + 45, PlotPen.Align.MIDDLE);
    }

    private void dot(double x, double y) {
      pen.fill(new Ellipse2D.Double(x - 3.5, y - 3.5, 7, 7), PlotToken.INK);
    }

    private Font strong() {
      return pen.fineStrong();
    }

    private void small(String words, double x, double y, PlotPen.Align align) {
      pen.words(words, x, y, pen.fine(), PlotToken.INK_SOFT, align);
    }
  }

  private String text(String key) {
    return messages.text(key);
  }
}
