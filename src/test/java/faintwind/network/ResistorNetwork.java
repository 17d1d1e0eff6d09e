package faintwind.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Resistors between named nodes. Kirchhoff's current law at every node but the grounded one: Σ g_ij
 * (V_i − V_j) = I_i (nodal analysis, any textbook of circuits).
 */
final class ResistorNetwork {
  private record Resistor(String one, String other, double siemens) {}

  /** Keeps a node that nothing joins from making the equations singular; 1e15 Ω to ground. */
  private static final double NOWHERE_S = 1e-15;

  private final List<Resistor> resistors = new ArrayList<>();
  private final Map<String, Integer> nodes = new LinkedHashMap<>();

  /** Joins two nodes; infinite ohms join nothing. */
  void join(String one, String other, double ohm) {
    number(one);
    number(other);
    if (!Double.isInfinite(ohm)) {
      resistors.add(new Resistor(one, other, 1 / ohm));
    }
  }

  private int number(String node) {
    return nodes.computeIfAbsent(node, n -> nodes.size());
  }

  /** What an ideal ohmmeter between two nodes shows, Ω. */
  double ohm(String one, String other) {
    return potential_V(one, other, one, other, 1);
  }

  /**
   * Voltage between two nodes while a current flows through the network.
   *
   * @param in where the current enters
   * @param out where it leaves; grounded
   */
  double potential_V(String plus, String minus, String in, String out, double current_A) {
    int size = nodes.size();
    RealMatrix law = new Array2DRowRealMatrix(size, size);
    for (Resistor r : resistors) {
      add(law, number(r.one()), number(r.other()), r.siemens());
    }
    int ground = known(out);
    for (int i = 0; i < size; i++) {
      law.addToEntry(i, i, NOWHERE_S);
      law.setEntry(ground, i, i == ground ? 1 : 0);
    }
    RealVector current = new ArrayRealVector(size);
    current.setEntry(known(in), current_A);
    current.setEntry(ground, 0);
    RealVector volts = new LUDecomposition(law, 0).getSolver().solve(current);
    return volts.getEntry(known(plus)) - volts.getEntry(known(minus));
  }

  private int known(String node) {
    return Objects.requireNonNull(nodes.get(node), node);
  }

  private static void add(RealMatrix law, int i, int j, double siemens) {
    law.addToEntry(i, i, siemens);
    law.addToEntry(j, j, siemens);
    law.addToEntry(i, j, -siemens);
    law.addToEntry(j, i, -siemens);
  }
}
