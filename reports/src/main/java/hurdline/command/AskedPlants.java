package hurdline.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The plant files as they were when they were asked about, so that an answer can be read beside its
 * plant after the file has gone on.
 */
final class AskedPlants {
  private final List<String> texts;

  private AskedPlants(List<String> texts) {
    this.texts = texts;
  }

  static AskedPlants of(List<Path> files) throws IOException {
    List<String> texts = new ArrayList<>();
    for (Path file : files) {
      try {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
        texts.add(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
      } catch (CharacterCodingException noText) {
        texts.add(""); // such a file has been refused by the reader
      }
    }
    return new AskedPlants(texts);
  }

  /** By name: {@code plant.yaml}, and {@code plant-2.yaml} and so on where there are several. */
  Map<String, String> texts() {
    Map<String, String> named = new LinkedHashMap<>();
    texts.forEach(text -> named.put(name(named.size()), text));
    return named;
  }

  private static String name(int place) {
    return place == 0 ? "plant.yaml" : "plant-" + (place + 1) + ".yaml";
  }
}
