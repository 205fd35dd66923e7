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
 * The plant files as they were when they were asked about, and the call, so that an answer can be
 * read with its plant after the file has gone on, and be asked for again.
 */
final class AskedPlants {
  private final List<String> call;
  private final List<String> texts;

  private AskedPlants(List<String> call, List<String> texts) {
    this.call = call;
    this.texts = texts;
  }

  /** Of an answer to which no plant belongs. */
  static AskedPlants none() {
    return new AskedPlants(List.of(), List.of());
  }

  /**
   * @param call the words of the call, the verb first
   */
  static AskedPlants of(List<String> call, List<Path> files) throws IOException {
    List<String> texts = new ArrayList<>();
    for (Path file : files) {
      try {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
        texts.add(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
      } catch (CharacterCodingException noText) {
        texts.add(""); // such a file has been refused by the reader
      }
    }
    return new AskedPlants(call, texts);
  }

  /**
   * By name: {@code plant.yaml}, and {@code plant-2.yaml} and so on where there are several; {@code
   * call.txt} with a word on each line.
   */
  Map<String, String> texts() {
    Map<String, String> named = new LinkedHashMap<>();
    texts.forEach(text -> named.put(name(named.size()), text));
    if (!call.isEmpty()) {
      named.put("call.txt", String.join("\n", asked()) + "\n");
    }
    return named;
  }

  /** Where the answer went, who followed it and on how many threads is no part of the question. */
  private List<String> asked() {
    List<String> words = new ArrayList<>();
    for (int at = 0; at < call.size(); at++) {
      String word = call.get(at);
      if (word.equals("--out") || word.equals("--threads")) {
        at++; // and its value
      } else if (!word.matches("--(out=.*|threads=.*|steered|quiet|json)")) {
        words.add(word);
      }
    }
    return words;
  }

  private static String name(int place) {
    return place == 0 ? "plant.yaml" : "plant-" + (place + 1) + ".yaml";
  }
}
