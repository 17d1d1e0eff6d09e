package faintwind.bench;

import faintwind.Main;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Window;

/**
 * Walks through the real window in one process, on the demonstration instruments, and prints after
 * each place how much memory is resident (VmRSS) and was at most (VmHWM), how long the window took
 * from the start of the process, and how long a changed design takes to its new numbers. Run by
 * {@code src/bench/window.sh}. The only argument is an empty folder for instruments.
 */
public final class WindowPath {
  private static final long PATIENCE_MS = 150_000;

  private WindowPath() {}

  /** Walks and ends the process. */
  public static void main(String[] arguments) {
    Thread walk = new Thread(WindowPath::walk, "walk");
    walk.setDaemon(true);
    walk.start();
    Main.main(new String[] {"--instruments", arguments[0]});
  }

  private static void walk() {
    try {
      await("#first-keep");
      say(
          "window shown",
          "%.2f s from the start of the process, %.2f s of a processor",
          uptime_s(),
          processor_s());
      if (Boolean.getBoolean("bench.start-only")) {
        System.exit(0);
      }
      fire("#first-keep");
      if (Boolean.getBoolean("bench.fit-only")) {
        fit();
        System.exit(0);
      }
      memory("home");
      path();
      memory("end");
      System.gc();
      Thread.sleep(500);
      say(
          "heap in use",
          "%d MB",
          (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
      say("heap held", "%d MB", Runtime.getRuntime().totalMemory() >> 20);
      memory("collected");
      System.exit(0);
    } catch (Exception broke) {
      broke.printStackTrace();
      Window.getWindows().stream()
          .flatMap(window -> window.getScene().getRoot().lookupAll("*").stream())
          .filter(node -> node.getId() != null && node.isVisible())
          .forEach(node -> System.out.print(node.getId() + " "));
      Runtime.getRuntime().halt(1);
    }
  }

  /** Opens the first instrument of the folder and fits its runs, which were never fitted. */
  private static void fit() throws Exception {
    fire("#open-first");
    fire("#place-formula");
    until(() -> there("#formula-fit"));
    long begun = System.nanoTime();
    double spent_s = processor_s();
    fire("#formula-fit");
    until(() -> there("#formula-loss"));
    say(
        "fit in the window",
        "%.1f s, %.1f s of a processor",
        (System.nanoTime() - begun) * 1e-9,
        processor_s() - spent_s);
  }

  private static void path() throws Exception {
    fire("#start-parts");
    await("#new-name");
    type("#new-name", "Rind 9");
    type("#new-who", "Ida");
    fire("#begin");
    fire("#design-page-design");
    await("#outcome-smallest-speed-m-s");
    Thread.sleep(2000);
    memory("design");
    edit("12.0");
    edit("9.5");
    edit("12.7");
    for (String page : List.of("wish", "others", "side", "parts", "design")) {
      fire("#design-page-" + page);
      Thread.sleep(1500);
      memory("design, " + page);
    }
    fire("#design-keep");
    Thread.sleep(1000);
    place("make", "#step-title");
    place("turntable", "#turntable-path");
    home();
    fire("#open-demo");
    await("#field-plot");
    Thread.sleep(3000);
    memory("demo, a day");
    place("turntable", "#caution-spinning-arm-read");
    fire("#caution-spinning-arm-read");
    place("formula", "#formula-loss");
    Thread.sleep(6000);
    memory("formula, drawn");
    fire("#formula-again");
    long begun = System.nanoTime();
    until(() -> there("#fit-curve"));
    until(() -> !there("#fit-curve") && there("#formula-loss"));
    say("one fit", "%.1f s", (System.nanoTime() - begun) * 1e-9);
    memory("formula, fitted");
    place("field", "#field-plot");
    Thread.sleep(3000);
    memory("field, drawn");
    place("record", "#ledger");
    Thread.sleep(2000);
    memory("record, drawn");
  }

  /** Types a diameter and waits until the smallest speed says something else. */
  private static void edit(String diameter_mm) throws Exception {
    String before = outcome();
    long begun = System.nanoTime();
    double spent_s = processor_s();
    run(
        () -> {
          TextField field = (TextField) find("#design-diameter").orElseThrow();
          field.requestFocus();
          field.setText(diameter_mm);
          find("#design-page-wish").orElseThrow().requestFocus(); // the field is judged when left
        });
    long waited_ms = 0;
    while (outcome().equals(before) && waited_ms < 5000) {
      Thread.sleep(5);
      waited_ms += 5;
    }
    say(
        "design edit",
        "%.0f ms, %.0f ms of a processor",
        (System.nanoTime() - begun) * 1e-6,
        (processor_s() - spent_s) * 1000);
    Thread.sleep(1500);
  }

  private static void type(String field, String text) throws Exception {
    run(() -> ((TextField) find(field).orElseThrow()).setText(text));
  }

  private static String outcome() throws Exception {
    return on(
        () -> {
          StringBuilder words = new StringBuilder();
          find("#outcome-smallest-speed-m-s")
              .ifPresent(
                  node ->
                      node.lookupAll(".label")
                          .forEach(label -> words.append(((Labeled) label).getText()).append(' ')));
          return words.toString();
        });
  }

  /** A click on the sign at the left of the strip. */
  private static void home() throws Exception {
    run(
        () ->
            find(".pair-wire")
                .orElseThrow()
                .fireEvent(
                    new MouseEvent(
                        MouseEvent.MOUSE_CLICKED,
                        0,
                        0,
                        0,
                        0,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        true,
                        false,
                        true,
                        null)));
    await("#open-demo");
    memory("home again");
  }

  private static void place(String place, String there) throws Exception {
    fire("#place-" + place);
    await(there);
    memory(place);
  }

  private static void fire(String id) throws Exception {
    until(
        () -> {
          try {
            return on(
                () -> {
                  Optional<Node> found =
                      find(id).filter(n -> n instanceof ButtonBase && n.isVisible());
                  found.ifPresent(button -> ((ButtonBase) button).fire());
                  return found.isPresent();
                });
          } catch (Exception broke) {
            throw new IllegalStateException(id, broke);
          }
        });
    Thread.sleep(500);
  }

  private static void await(String id) throws Exception {
    until(() -> there(id));
  }

  private static boolean there(String id) {
    try {
      return on(() -> find(id).filter(Node::isVisible).isPresent());
    } catch (Exception notYet) {
      return false;
    }
  }

  private static void until(BooleanSupplier is) throws InterruptedException {
    long begun = System.nanoTime();
    while (!is.getAsBoolean()) {
      if (System.nanoTime() - begun > PATIENCE_MS * 1_000_000) {
        throw new IllegalStateException("nothing happened");
      }
      Thread.sleep(10);
    }
  }

  private static Optional<Node> find(String id) {
    return Window.getWindows().stream()
        .flatMap(window -> Optional.ofNullable(window.getScene().lookup(id)).stream())
        .findFirst();
  }

  private static void run(Runnable change) throws Exception {
    on(
        () -> {
          change.run();
          return true;
        });
  }

  private static <T> T on(Callable<T> look) throws Exception {
    CompletableFuture<T> answer = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            answer.complete(look.call());
          } catch (Exception broke) {
            answer.completeExceptionally(broke);
          }
        });
    return answer.get();
  }

  private static double uptime_s() {
    return ManagementFactory.getRuntimeMXBean().getUptime() / 1000.0;
  }

  private static double processor_s() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toMillis()
        / 1000.0;
  }

  private static void memory(String place) throws IOException {
    say(place, "%d MB resident, at most %d MB", status("VmRSS"), status("VmHWM"));
  }

  private static long status(String key) throws IOException {
    return Files.readAllLines(Path.of("/proc/self/status")).stream()
        .filter(line -> line.startsWith(key))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
        .findFirst()
        .orElse(0);
  }

  private static void say(String what, String form, Object... numbers) {
    System.out.printf("%-18s %s%n", what, String.format(form, numbers));
  }
}
