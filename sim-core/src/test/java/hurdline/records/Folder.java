package hurdline.records;

import hurdline.plant.Plant;
import hurdline.plant.yaml.PlantFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of records that a test writes, or one that is kept. */
public final class Folder {
  private static final Path SHIPPED = Path.of(System.getProperty("hurdline.root"), "line-configs");

  /**
   * The example as it was when the season was made: the records' truth is this plant's, whatever
   * the example becomes.
   */
  private static final String OF_THE_SEASON = "season-plant.yaml";

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
    try (InputStream in = Folder.class.getResourceAsStream(OF_THE_SEASON)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return PlantFile.of(OF_THE_SEASON, text).plant();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A season of which every figure's truth is known, with dirt in it; its plant is {@link #plant}.
   */
  public static Records season() {
    return RecordsFolder.read(
        Path.of(System.getProperty("hurdline.root"))
            .resolve("sim-core/src/test/resources/hurdline/records/season"),
        plant());
  }

  /** The example as it is today. */
  public static Plant example() {
    return PlantFile.read(SHIPPED.resolve("sweetgum-bend.yaml")).plant();
  }

  /** Its records: a simulated year of it as its people would have written it down, and dirt. */
  public static Records shipped() {
    return RecordsFolder.read(SHIPPED.resolve("records"), example());
  }
}
