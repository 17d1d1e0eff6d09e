package faintwind.calibration;

/** The person asked a long computation to stop. */
public final class Cancelled extends RuntimeException {
  private static final long serialVersionUID = 1L;
}
