package faintwind.ui;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import org.testfx.util.WaitForAsyncUtils;

/** Waits for something that happens off the JavaFX thread. */
public final class Waiting {
  private static final int MOST_S = 20;

  private Waiting() {}

  public static void until(BooleanSupplier condition) {
    within(MOST_S, condition);
  }

  /** Waits longer, for a fit. */
  public static void within(int most_s, BooleanSupplier condition) {
    try {
      WaitForAsyncUtils.waitFor(most_s, TimeUnit.SECONDS, condition::getAsBoolean);
    } catch (TimeoutException e) {
      throw new AssertionError("nothing happened within " + most_s + " s", e);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }
}
