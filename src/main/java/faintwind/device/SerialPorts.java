package faintwind.device;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Arrays;
import java.util.List;

/** The serial ports that the computer has now. */
public final class SerialPorts {
  private SerialPorts() {}

  /** Their paths, or names where the system has no paths. */
  public static List<String> here() {
    return Arrays.stream(SerialPort.getCommPorts()).map(SerialPort::getSystemPortPath).toList();
  }
}
