package hurdline.service;

import hurdline.plant.yaml.PlantFile;
import java.nio.file.Path;
import java.util.Map;

/** The text of a plant, with the rain files that it names: on disk, or in memory. */
public sealed interface PlantText {

  /** A plant file, whose rain files lie in its folder or below. */
  static PlantText of(Path file) {
    return new OnDisk(file);
  }

  /**
   * @param name stands in problems and answers in place of a file's
   */
  static PlantText of(String name, String text) {
    return new InMemory(name, text, Map.of());
  }

  /**
   * @param rain the text of each rain file by the name that the plant calls it
   */
  static PlantText of(String name, String text, Map<String, String> rain) {
    return new InMemory(name, text, rain);
  }

  /**
   * The text of a plant file as it stands in an editor.
   *
   * @param file beside which its rain files lie; the file itself is not read
   */
  static PlantText edited(Path file, String text) {
    return new Edited(file, text);
  }

  /** Without any folder: answers must not depend on where a file lies. */
  String name();

  /**
   * The plant, without problems.
   *
   * @throws hurdline.plant.ProblemsException with every problem
   */
  PlantFile read();

  /** A file, read anew each time. */
  record OnDisk(Path file) implements PlantText {
    @Override
    public String name() {
      return file.getFileName().toString();
    }

    @Override
    public PlantFile read() {
      return PlantFile.read(file);
    }
  }

  /** A text that no file holds. */
  record InMemory(String name, String text, Map<String, String> rain) implements PlantText {
    public InMemory {
      rain = Map.copyOf(rain);
    }

    @Override
    public PlantFile read() {
      return PlantFile.of(name, text, rain);
    }
  }

  /** A text that may differ from its file. */
  record Edited(Path file, String text) implements PlantText {
    @Override
    public String name() {
      return file.getFileName().toString();
    }

    @Override
    public PlantFile read() {
      return PlantFile.edited(file, text);
    }
  }
}
