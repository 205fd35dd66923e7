package hurdline.command;

import picocli.CommandLine;

/** The version that the jar's manifest names. */
final class Version implements CommandLine.IVersionProvider {
  static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "unpacked" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"hurdline " + text()};
  }
}
