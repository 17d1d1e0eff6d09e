package faintwind.ui.design;

import faintwind.job.design.Sized;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.Coat;
import faintwind.ui.design.DesignSideModel.Compared;
import faintwind.ui.figure.FigureCard;
import faintwind.ui.figure.FigureView;
import faintwind.ui.fold.ProseLink;
import faintwind.ui.frame.DataScreen;
import faintwind.ui.frame.Desk;
import faintwind.ui.frame.Unsaved;
import faintwind.ui.part.Act;
import faintwind.ui.part.Boxes;
import faintwind.ui.part.Rows;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.fxml.FXML;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/**
 * What is chosen at the left, what follows from it in the middle, plots at the right; all live. Its
 * pages: the wish, the design, other parts, side by side, what to buy.
 */
public final class DesignScreen extends DataScreen {
  private static final double PLOT_EM = 13;
  private static final double DRAWING_EM = 17;
  private static final int BESIDE = 3;
  private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

  private final DesignModel model;
  private final DesignWords said;
  private final DesignCompareWords compared;
  private final VBox left = Boxes.column("path wide-path design-choices");
  private final VBox form = new VBox();
  private final FlowPane pages = new FlowPane();
  private final VBox aside = Boxes.column("design-aside wide");
  private final DesignChoicesView choices;
  private final DesignOutcomesView outcomes;
  private final DesignWishView wish;
  private final DesignOthersView others;
  private final DesignSideView side;
  private final DesignPartsView parts;
  private final Map<DesignPage, Hyperlink> links = new EnumMap<>(DesignPage.class);

  @FXML private Label title;
  @FXML private Label how;
  @FXML private VBox problems;
  @FXML private VBox page;

  public DesignScreen(Desk desk, DesignModel model) {
    super(desk, model.next());
    this.model = model;
    said = new DesignWords(desk.words());
    compared = new DesignCompareWords(desk.words());
    choices = new DesignChoicesView(desk.words(), model);
    outcomes = new DesignOutcomesView(desk);
    wish = new DesignWishView(desk, model);
    others = new DesignOthersView(desk, model);
    side = new DesignSideView(desk, model);
    parts = new DesignPartsView(desk, model);
    left.setId("design-choices");
    aside.setId("design-aside");
    for (DesignPage each : DesignPage.values()) {
      links.put(each, link(each));
    }
    pages.setId("design-pages");
    pages.getStyleClass().add("page-links");
    pages.getChildren().setAll(links.values());
    left.getChildren().setAll(pages, form);
    model.page().addListener((property, was, now) -> open(now));
    model.side().columns().addListener((property, was, now) -> fillAside());
    open(model.page().get());
    withPath(left);
    withMargin(aside);
    filledBy(model.view(), this::fill);
  }

  @Override
  public boolean undo() {
    return model.undo();
  }

  @Override
  public Optional<Unsaved> unsaved() {
    if (model.isUnsaved()) {
      Act keep = new Act("design-keep", text("design.next.keep.act"), model::keep);
      return Optional.of(unsaved("design.unsaved", Optional.of(keep)));
    }
    return model.wish().isChanged()
        ? Optional.of(unsaved("design.unsaved-wish", model.takeFirst()))
        : Optional.empty();
  }

  private Unsaved unsaved(String question, Optional<Act> keep) {
    return new Unsaved(text(question), keep, text("window.unsaved.drop"));
  }

  private Hyperlink link(DesignPage each) {
    String id = each.name().toLowerCase(Locale.ROOT);
    Hyperlink link = new ProseLink(text("design.page." + id));
    link.setId("design-page-" + id);
    link.getStyleClass().add("page-link");
    link.setOnAction(event -> model.open(each));
    return link;
  }

  private void open(DesignPage now) {
    desk().notes().close();
    links.forEach((each, link) -> link.pseudoClassStateChanged(HERE, each == now));
    form.getChildren()
        .setAll(
            switch (now) {
              case WISH -> wish.form();
              case OTHERS -> others.form();
              case PARTS -> parts.form();
              case DESIGN, SIDE -> choices.node();
            });
    page.getChildren()
        .setAll(
            switch (now) {
              case WISH -> wish.node();
              case OTHERS -> others.node();
              case PARTS -> parts.node();
              case SIDE -> side.node();
              case DESIGN -> outcomes.node();
            });
    tell();
    fillAside();
  }

  private void tell() {
    String id = model.page().get().name().toLowerCase(Locale.ROOT);
    boolean design = model.page().get() == DesignPage.DESIGN;
    title.setText(design ? model.title() : text("design.page." + id + ".title"));
    how.setText(text("design.page." + id + ".how"));
  }

  private void fill(DesignAnswer now) {
    tell();
    problems.getChildren().setAll(Rows.problems(now.problems(), true, desk().words()));
    model
        .parts()
        .ifPresent(
            (Catalogue all) -> {
              choices.fill(all);
              wish.fill(all);
              others.fill(all);
            });
    now.worked().ifPresent(worked -> choices.fill(worked.design()));
    now.worked().ifPresent(outcomes::fill);
    fillAside();
  }

  /** Plots and a drawing stand beside the design; the other pages take the room. */
  private void fillAside() {
    Optional<Sized> worked = model.view().get().worked();
    boolean shown = model.page().get() == DesignPage.DESIGN && worked.isPresent();
    if (shown) {
      fillAside(worked.get());
    } else {
      aside.getChildren().clear();
    }
    if (aside.isVisible() != shown) {
      aside.setVisible(shown);
    }
  }

  private void fillAside(Sized worked) {
    List<Compared> few = few();
    FigureView ball = new FigureView(desk().look(), desk().words().locale(), DRAWING_EM);
    ball.show(said.ball(worked));
    ball.setAccessibleText(said.ball(worked).description());
    aside
        .getChildren()
        .setAll(
            FigureCard.of("design-delta", said.delta(worked), PLOT_EM, desk()),
            FigureCard.of("design-time", compared.timeConstants(few), PLOT_EM, desk()));
    if (!few.isEmpty()) {
      aside.getChildren().add(beside(few));
    }
    aside
        .getChildren()
        .addAll(FigureCard.of("design-course", said.course(worked), PLOT_EM, desk()), ball);
  }

  /** The present design, and others as bare as it comes: the margin has room for three. */
  private List<Compared> few() {
    List<Compared> all = model.side().columns().get();
    return all.stream()
        .filter(
            c ->
                c.worked().design().ball().coat().kind() == Coat.Kind.BARE
                    || c.worked().equals(all.get(0).worked()))
        .limit(BESIDE)
        .toList();
  }

  private Node beside(List<Compared> few) {
    Hyperlink all = new ProseLink(text("design.page.side"));
    all.setId("design-all-beside");
    all.setOnAction(event -> model.open(DesignPage.SIDE));
    VBox box =
        new VBox(
            DesignTable.of(
                "beside-table",
                DesignCompareWords.heads(few),
                compared.rows(few, DesignCompareWords.FEW)),
            all);
    box.getStyleClass().add("fact-block");
    return box;
  }
}
