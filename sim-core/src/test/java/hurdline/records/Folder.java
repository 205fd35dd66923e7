package hurdline.records;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of records that a test writes, or the shipped one. */
public final class Folder {
  private static final Path SHIPPED = Path.of(System.getProperty("hurdline.root"), "line-configs");

  private final Path folder;

  public Folder(Path folder) {
    this.folder = folder;
  }

  /**
   * @param lines with line breaks between
   */
  public Folder with(String file, String lines) {
    return with(file, lines.getBytes(StandardCharsets.UTF_8));
  }

  Folder with(String file, byte[] bytes) {
    try {
      Files.write(folder.resolve(file), bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Records read() {
    return RecordsFolder.read(folder, plant());
  }

  public static Plant plant() {
    return PlantFile.read(SHIPPED.resolve("sweetgum-bend.yaml")).plant();
  }

  public static Records season() {
    return RecordsFolder.read(SHIPPED.resolve("records"), plant());
  }
}
