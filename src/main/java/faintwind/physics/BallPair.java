package faintwind.physics;

/** The heated and the reference ball; they need not be equal. */
public record BallPair(Ball heated, Ball reference) {

  public static BallPair equal(Ball ball) {
    return new BallPair(ball, ball);
  }
}
