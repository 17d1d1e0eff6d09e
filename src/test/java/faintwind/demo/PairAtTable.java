package faintwind.demo;

import faintwind.calibration.Provenance;
import faintwind.calibration.live.LiveHead;
import faintwind.calibration.plan.Response;
import faintwind.calibration.virtual.VirtualBall;
import faintwind.calibration.virtual.VirtualBuild;
import faintwind.calibration.virtual.VirtualConvection;
import faintwind.job.live.BenchSource;
import faintwind.job.live.LiveInput;
import faintwind.job.live.LiveSession;
import faintwind.job.live.Rehearsal;
import faintwind.job.live.RehearsalHand;
import faintwind.job.live.RehearsalPlan;
import faintwind.physics.Interval;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A made-up pair of a class at the turntable: a live session as fast as it can, along a plan of
 * three speeds. Its source says that it measures, so that what comes of it can count in the test.
 */
final class PairAtTable {
  private static final double DUST = 0.84;
  private static final double LIGHTER = 0.78;

  private PairAtTable() {}

  /** What is wrong with a pair. */
  enum Fault {
    NONE,
    /** A sixth of the air's cooling is kept away from the ball. */
    DUSTY,
    /** The ball has less mass than the one that was weighed. */
    OTHER_WEIGHED
  }

  /** The build of a pair, made by other hands than the next one's. */
  static VirtualBuild build(int number, Fault fault) {
    VirtualBuild like = DemoCellar.onTheTurntable();
    VirtualBall ball = like.heated();
    VirtualConvection c = ball.convection();
    double hands = (1 + 0.008 * (number % 3 - 1)) * (fault == Fault.DUSTY ? DUST : 1);
    double capacity = fault == Fault.OTHER_WEIGHED ? LIGHTER : 1 + 0.003 * (number % 2);
    VirtualBall heated =
        new VirtualBall(
            ball.diameter_m(),
            capacity * ball.capacity_J_K(),
            ball.emissivity(),
            ball.leads_W_K(),
            new VirtualConvection(hands * c.forced(), hands * c.natural(), c.tilt(), c.mixing()));
    return new VirtualBuild(
        heated, like.reference(), like.heater(), like.chain(), like.arm(), like.room());
  }

  /** Turns the session; its runs table with recording and chain beside it. */
  static Path session(VirtualBuild build, long seed, Path folder) throws IOException {
    Files.createDirectories(folder);
    Rehearsal table = new Rehearsal(build, seed, Double.POSITIVE_INFINITY);
    LiveInput made = table.input();
    LiveHead head =
        new LiveHead(
            made.head().unit(),
            made.head().columns(),
            Provenance.MEASURED,
            "made-up data",
            made.head().others());
    LiveInput input =
        new LiveInput(
            made.source(), head, made.lines(), made.arrival(), made.possible(), made.raw());
    Response expected =
        new Response(Interval.share(480, 0.2), Interval.share(170, 0.2), 32, 0.02, 1);
    LiveSession session =
        new LiveSession(
            input,
            folder,
            BenchSource.prepare(
                RehearsalPlan.preparation(RehearsalPlan.Length.SHORT).plan(),
                expected,
                head.unit()),
            Optional.of(
                new RehearsalHand(table, RehearsalHand.Lead.GUIDE, seed, Double.POSITIVE_INFINITY)),
            () -> System.nanoTime() / 1e9);
    session.run();
    Files.writeString(
        folder.resolve("chain.json"),
        "{\"note\": \"made-up data\", \"input\": \"voltage\", \"type\": \"T\", \"gain\": 1, \"sign\": 1}\n",
        StandardCharsets.UTF_8);
    return session.table();
  }
}
