package hurdline.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The call that an answer comes from, as its folder keeps it, told as what was filled in on the
 * page. It is only shown and filled in again, never run: the folder may come from anyone.
 *
 * @param fields what to fill in, by name
 * @param other words that no field of the page stands for; empty where it can be asked again
 */
record AskedCall(Map<String, Object> fields, String other) {
  private static final String FILE = "call.txt";
  private static final int LONGEST = 20_000;

  /** Flags of a call that do not make it another question. */
  private static final List<String> OF_THE_READER =
      List.of("--replications", "--seed", "--out", "--units", "--locale", "--threads");

  private static final List<String> OF_THE_TERMINAL = List.of("--json", "--quiet");

  static AskedCall unknown() {
    return new AskedCall(Map.of(), "");
  }

  /** Of an answer's folder; unknown where an older program wrote it. */
  static AskedCall of(Path answer, String plant, Question question) throws IOException {
    Path file = answer.resolve(FILE);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LONGEST) {
      return unknown();
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    return of(List.of(text.strip().split("\n")), plant, question);
  }

  static AskedCall of(List<String> call, String plant, Question question) {
    List<String> words = new ArrayList<>(call);
    OF_THE_READER.forEach(flag -> value(words, flag));
    words.removeAll(OF_THE_TERMINAL);
    boolean asks = words.remove(question.verb());
    words.stream()
        .filter(word -> !word.startsWith("-") && name(word).equals(plant))
        .findFirst()
        .ifPresent(words::remove);
    Map<String, Object> fields = new LinkedHashMap<>();
    for (QuestionField field : question.fields()) {
      field.takenFrom(words).ifPresent(said -> fields.put(field.name(), said));
    }
    return new AskedCall(fields, asks ? String.join(" ", words) : String.join(" ", call));
  }

  private static String name(String path) {
    return path.substring(1 + Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')));
  }

  /** Takes the first value of a flag out of a call, with the flag. */
  static Optional<String> value(List<String> words, String flag) {
    for (int at = 0; at < words.size(); at++) {
      if (words.get(at).startsWith(flag + "=")) {
        return Optional.of(words.remove(at).substring(flag.length() + 1));
      }
      if (words.get(at).equals(flag) && at + 1 < words.size()) {
        words.remove(at);
        return Optional.of(words.remove(at));
      }
    }
    return Optional.empty();
  }
}
