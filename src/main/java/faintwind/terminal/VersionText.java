package faintwind.terminal;

import faintwind.job.SoftwareVersion;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
public final class VersionText implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"faintwind " + SoftwareVersion.text()};
  }
}
