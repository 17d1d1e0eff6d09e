package faintwind.ui.part;

import faintwind.message.Messages;
import faintwind.report.picture.PictureWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Orientation;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * One of the program's own line drawings. It reads the part of SVG that they use (g with translate,
 * path, line, circle, rect, text; a class that names a token in place of colours) and draws it in
 * the theme and size of the text.
 */
public final class PictureView extends Region {
  private final Group drawing = new Group();
  private final Map<String, Point2D> points = new HashMap<>();
  private final List<Text> texts = new ArrayList<>();
  private double width = 1;
  private double height = 1;

  /**
   * The drawing of that file name under {@code assets/pictures}; empty where there is none.
   *
   * @param shows what it shows, in words
   */
  public static Optional<PictureView> of(String file, String shows) {
    String name = "/faintwind/assets/pictures/" + file;
    try (InputStream in = PictureView.class.getResourceAsStream(name)) {
      return in == null ? Optional.empty() : Optional.of(new PictureView(in, shows));
    } catch (IOException | XMLStreamException e) {
      // Drawings are part of the program, and a test reads them all: a bad one is a broken build.
      throw new IllegalStateException("drawing " + file, e);
    }
  }

  /**
   * A drawing of somebody's own, in the same part of SVG; empty where it is not there or cannot be
   * understood.
   *
   * @param shows what it shows, in words
   */
  public static Optional<PictureView> ofFile(Path file, String shows) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(new PictureView(in, shows));
    } catch (IOException | XMLStreamException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * The drawing of a bench with the tips of the meter on two of its points; empty where there is no
   * such bench or point.
   *
   * @param scene the bench: {@code tips-SCENE.svg}
   * @param one name of a point, as its id in the file
   * @param other name of another point
   * @param unit what the meter is set to
   * @param shows what it shows, in words
   */
  public static Optional<PictureView> ofTips(
      String scene, String one, String other, String unit, String shows) {
    return of("tips-" + scene + ".svg", shows)
        .filter(view -> view.points.keySet().containsAll(List.of(one, other)))
        .map(view -> view.withTips(one, other, unit));
  }

  /**
   * The same with the builder's own numbers in its words.
   *
   * @param fill puts them in place of {@code {values}}
   */
  public PictureView filled(UnaryOperator<String> fill) {
    texts.forEach(text -> text.setText(fill.apply(text.getText())));
    return this;
  }

  /** The same with its words in a language. */
  public PictureView in(Messages words) {
    return filled(text -> PictureWords.of(words, text));
  }

  private PictureView withTips(String one, String other, String unit) {
    drawing
        .getChildren()
        .addAll(
            ProbeTips.between(
                point(one), point(other), point("upper-socket"), point("lower-socket")),
            ProbeTips.display(unit));
    return this;
  }

  private Point2D point(String id) {
    return Objects.requireNonNull(points.get(id), id);
  }

  private PictureView(InputStream in, String shows) throws XMLStreamException {
    getStyleClass().addAll("picture", "drawing");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(shows);
    drawing.setManaged(false);
    getChildren().add(drawing);
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    read(factory.createXMLStreamReader(in));
  }

  private void read(XMLStreamReader xml) throws XMLStreamException {
    Deque<Group> open = new ArrayDeque<>();
    open.push(drawing);
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        element(xml, open);
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("g")) {
        open.pop();
      }
    }
  }

  private void element(XMLStreamReader xml, Deque<Group> open) throws XMLStreamException {
    switch (xml.getLocalName()) {
      case "svg" -> {
        String[] box = String.valueOf(xml.getAttributeValue(null, "viewBox")).split(" ", 4);
        if (box.length < 4) {
          throw new IllegalArgumentException("viewBox = " + String.join(" ", box));
        }
        width = Double.parseDouble(box[2]);
        height = Double.parseDouble(box[3]);
      }
      case "g" -> {
        Group group = new Group();
        translate(xml).ifPresent(group.getTransforms()::add);
        add(open, group, xml);
        open.push(group);
      }
      case "path" -> {
        SVGPath path = new SVGPath();
        path.setContent(xml.getAttributeValue(null, "d"));
        add(open, path, xml);
      }
      case "line" ->
          add(
              open,
              new Line(number(xml, "x1"), number(xml, "y1"), number(xml, "x2"), number(xml, "y2")),
              xml);
      case "circle" -> circle(xml, open);
      case "rect" -> add(open, rectangle(xml), xml);
      case "text" -> text(xml, open);
      default -> {
        // style and title are for readers other than this one
      }
    }
  }

  /** A circle; one of the class "at" only names a point. */
  private void circle(XMLStreamReader xml, Deque<Group> open) {
    if ("at".equals(xml.getAttributeValue(null, "class"))) {
      points.put(
          xml.getAttributeValue(null, "id"), new Point2D(number(xml, "cx"), number(xml, "cy")));
    } else {
      add(open, new Circle(number(xml, "cx"), number(xml, "cy"), number(xml, "r")), xml);
    }
  }

  private static Rectangle rectangle(XMLStreamReader xml) {
    Rectangle box =
        new Rectangle(
            number(xml, "x"), number(xml, "y"), number(xml, "width"), number(xml, "height"));
    box.setArcWidth(2 * number(xml, "rx"));
    box.setArcHeight(2 * number(xml, "rx"));
    return box;
  }

  private void text(XMLStreamReader xml, Deque<Group> open) throws XMLStreamException {
    double x = number(xml, "x");
    double y = number(xml, "y");
    String anchor = Optional.ofNullable(xml.getAttributeValue(null, "text-anchor")).orElse("start");
    Text text = new Text(x, y, "");
    add(open, text, xml);
    text.setText(xml.getElementText());
    texts.add(text);
    double share = anchor.equals("end") ? 1 : anchor.equals("middle") ? 0.5 : 0;
    // The width is known only with the font, which the style sheet gives.
    text.layoutBoundsProperty()
        .addListener((property, was, now) -> text.setTranslateX(-share * now.getWidth()));
  }

  private static void add(Deque<Group> open, Node node, XMLStreamReader xml) {
    String classes = xml.getAttributeValue(null, "class");
    if (classes != null) {
      for (String name : classes.trim().split(" +", -1)) {
        node.getStyleClass().add("pic-" + name);
      }
    }
    open.element().getChildren().add(node);
  }

  private static Optional<Translate> translate(XMLStreamReader xml) {
    String text = xml.getAttributeValue(null, "transform");
    if (text == null || !text.startsWith("translate(")) {
      return Optional.empty();
    }
    String[] parts = text.substring(10, text.length() - 1).split("[ ,]+", -1);
    return Optional.of(
        new Translate(
            Double.parseDouble(parts[0]), parts.length > 1 ? Double.parseDouble(parts[1]) : 0));
  }

  private static double number(XMLStreamReader xml, String name) {
    String text = xml.getAttributeValue(null, name);
    return text == null ? 0 : Double.parseDouble(text);
  }

  @Override
  protected double computePrefHeight(double forWidth) {
    double wide = forWidth < 0 ? prefWidth(-1) : forWidth;
    return wide * height / width;
  }

  @Override
  protected double computeMinHeight(double forWidth) {
    return computePrefHeight(forWidth);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected void layoutChildren() {
    double scale = Math.min(getWidth() / width, getHeight() / height);
    drawing.getTransforms().setAll(new Scale(scale, scale));
    drawing.setLayoutX((getWidth() - width * scale) / 2);
  }
}
