package faintwind.device;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import faintwind.calibration.live.SourceAddress;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A serial port. It is looked up anew at each opening: one that was pulled out may come back. */
final class SerialLink implements LineLink {
  private final SourceAddress.Serial address;

  SerialLink(SourceAddress.Serial address) {
    this.address = address;
  }

  @Override
  public Open open() throws IOException {
    SerialPort port = port();
    int parity =
        switch (address.parity()) {
          case NONE -> SerialPort.NO_PARITY;
          case EVEN -> SerialPort.EVEN_PARITY;
          case ODD -> SerialPort.ODD_PARITY;
        };
    int stop = address.stop() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
    port.setComPortParameters(address.baud(), address.bits(), stop, parity);
    // half blocking: waits for the first byte, and the end of the other side is told at once
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 0, 0);
    if (!port.openPort()) {
      throw new IOException(address.port() + ": " + why());
    }
    return new Open() {
      @Override
      public InputStream bytes() {
        return port.getInputStream();
      }

      @Override
      public void close() {
        port.closePort();
      }
    };
  }

  private SerialPort port() throws IOException {
    try {
      return SerialPort.getCommPort(address.port());
    } catch (SerialPortInvalidPortException e) {
      throw new IOException(address.port() + ": no such serial port", e);
    }
  }

  private String why() {
    if (!address.port().startsWith("/")) {
      return "busy, or not allowed";
    }
    Path device = Path.of(address.port());
    if (!Files.exists(device)) {
      return "no such serial port";
    }
    return Files.isReadable(device) && Files.isWritable(device)
        ? "busy: another program uses it"
        : "not allowed: ask for the right to use serial ports (often the group dialout)";
  }

  @Override
  public SourceEvent.Wholeness firstLine() {
    return SourceEvent.Wholeness.PERHAPS_TORN;
  }
}
