package faintwind.ui;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import org.testfx.util.WaitForAsyncUtils;

/** Waits for something that happens off the JavaFX thread. */
final class Waiting {
  private static final int MOST_S = 20;

  private Waiting() {}

  static void until(BooleanSupplier condition) {
    try {
      WaitForAsyncUtils.waitFor(MOST_S, TimeUnit.SECONDS, condition::getAsBoolean);
    } catch (TimeoutException e) {
      throw new AssertionError("nothing happened within " + MOST_S + " s", e);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }
}
