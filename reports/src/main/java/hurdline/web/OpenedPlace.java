package hurdline.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/**
 * What the call names: a folder, or a plant file in one.
 *
 * @param file its name; empty for a folder
 */
record OpenedPlace(Path folder, String file) {
  /** A folder that is not there is made, since a newcomer has none. */
  static OpenedPlace of(Path place) throws IOException {
    Path whole = place.toAbsolutePath().normalize();
    String name = String.valueOf(whole.getFileName());
    boolean isFile = Files.isRegularFile(whole);
    if (isFile && name.matches(".*\\.ya?ml")) {
      return new OpenedPlace(whole.getParent(), name);
    }
    if (isFile || Files.exists(whole) && !Files.isDirectory(whole)) {
      throw new NotDirectoryException(place.toString());
    }
    return new OpenedPlace(Files.createDirectories(whole), "");
  }
}
