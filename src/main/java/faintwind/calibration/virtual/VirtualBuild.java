package faintwind.calibration.virtual;

/**
 * A whole made-up instrument with its chain, arm and room. Start here:
 *
 * <pre>
 * VirtualBuild build = VirtualDraw.build(7);                 // any seed is another builder
 * VirtualCalibration runs = VirtualRehearsal.calibration(    // run files and runs table
 *     build, VirtualPlan.separateRuns(), 7);                 // or VirtualPlan.staircase(), ...
 * runs.runs();    // List of Run, as the runs table would give them
 * runs.files();   // file name to whole Recording, to be written as run files
 * runs.truth();   // run name to true mean speed of the ball past undisturbed air
 * VirtualLog log = VirtualRehearsal.coldFieldLog(          // field log and its true speed
 *     build.in(otherRoom), 3600, time_s -&gt; 0.3, 7);         // or warmFieldLog(...)
 * VirtualInstrument live = new VirtualInstrument(build, 7);  // step by step, for a live rehearsal
 * </pre>
 *
 * <p>Everything from it is made up and must be labelled as rehearsal.
 *
 * @param heated the heated ball
 * @param reference the other ball
 * @param heater resistor and supply
 * @param chain thermocouple to logger
 * @param arm turntable
 * @param room where it stands
 */
public record VirtualBuild(
    VirtualBall heated,
    VirtualBall reference,
    VirtualHeater heater,
    VirtualChain chain,
    VirtualArm arm,
    VirtualRoom room) {

  /** The same build in another room. */
  public VirtualBuild in(VirtualRoom other) {
    return new VirtualBuild(heated, reference, heater, chain, arm, other);
  }

  /** The same build on another arm. */
  public VirtualBuild on(VirtualArm other) {
    return new VirtualBuild(heated, reference, heater, chain, other, room);
  }

  /** The same build read by another chain. */
  public VirtualBuild readBy(VirtualChain other) {
    return new VirtualBuild(heated, reference, heater, other, arm, room);
  }

  /** The same build read without noise in a perfectly steady room: isolates calibration error. */
  public VirtualBuild noiseless() {
    VirtualHeater steady =
        new VirtualHeater(
            heater.resistance_ohm(), heater.supply_V(), 0, heater.node_J_K(), heater.link_W_K());
    return new VirtualBuild(heated, reference, steady, chain.quiet(), arm, room.steady());
  }
}
