package hurdline.command;

import hurdline.service.EngineStudies;
import picocli.CommandLine;

/** The version that the jar's manifest names. */
final class Version implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"hurdline " + EngineStudies.version()};
  }
}
