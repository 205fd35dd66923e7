package hurdline.web;

import hurdline.web.http.Ask;
import hurdline.web.http.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Something to fill in, and the words of a call that it becomes.
 *
 * @param kind {@code text}, {@code tick}, {@code folder}, {@code options} or {@code plans} of the
 *     plant
 * @param value that it has at first
 * @param hint beside it
 * @param flag of the call; a folder stands without one
 * @param between names of options or plans
 */
record QuestionField(
    String name,
    String label,
    String kind,
    String value,
    String hint,
    String flag,
    String between) {
  private static final int MOST_LETTERS = 1000;

  /** Names that begin with a letter or digit of any script, one below the other. */
  private static final Pattern FOLDER =
      Pattern.compile("WORD(/WORD)*".replace("WORD", "[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} ._-]*"));

  static QuestionField text(String name, String label, String value, String hint) {
    return new QuestionField(name, label, "text", value, hint, "--" + name, "");
  }

  static QuestionField until() {
    return text(
        "until", "Go on until known to", "", "such as money.margin:2%; at least 40 replications");
  }

  static QuestionField tick(String name, String label) {
    return new QuestionField(name, label, "tick", "", "", "--" + name, "");
  }

  static QuestionField folder(String name, String label, String value, String hint) {
    return new QuestionField(name, label, "folder", value, hint, "", "");
  }

  static QuestionField options(String name, String label, String between) {
    return new QuestionField(name, label, "options", "", "", "--" + name, between);
  }

  static QuestionField plans(String name, String label) {
    return new QuestionField(name, label, "plans", "", "", "--" + name, ",");
  }

  /** The same under a flag of another name. */
  QuestionField of(String other) {
    return new QuestionField(name, label, kind, value, hint, "--" + other, between);
  }

  /**
   * Adds what was filled in. Each value stands behind the equals sign of its flag, so that none can
   * become a flag, and a folder lies below that of the plants.
   */
  void addTo(List<String> words, Ask ask) {
    String given = ask.text(name).strip();
    if (given.length() > MOST_LETTERS) {
      throw new Refusal(400, "\"" + label + "\" is too long.");
    }
    switch (kind) {
      case "tick" -> {
        if (given.equals("true")) {
          words.add(flag);
        }
      }
      case "options", "plans" -> {
        if (!ask.texts(name).isEmpty()) {
          words.add(flag + "=" + String.join(between, ask.texts(name)));
        }
      }
      case "folder" -> {
        if (!FOLDER.matcher(given).matches()) {
          throw new Refusal(400, "\"" + label + "\" is a folder below that of the plants.");
        }
        words.add(given);
      }
      default -> {
        if (!given.isEmpty()) {
          words.add(flag + "=" + given);
        }
      }
    }
  }

  /** Takes its words out of a call; what it was filled in with: a text, or a list of names. */
  Optional<Object> takenFrom(List<String> words) {
    return switch (kind) {
      case "tick" -> words.remove(flag) ? Optional.of("true") : Optional.empty();
      case "folder" -> first(words);
      case "options", "plans" -> {
        List<String> names = new ArrayList<>();
        for (Optional<String> one = value(words); one.isPresent(); one = value(words)) {
          names.addAll(List.of(one.get().split("[+,]")));
        }
        yield names.isEmpty() ? Optional.empty() : Optional.of(names);
      }
      default -> value(words).map(said -> said);
    };
  }

  private static Optional<Object> first(List<String> words) {
    Optional<String> found = words.stream().filter(word -> !word.startsWith("-")).findFirst();
    found.ifPresent(words::remove);
    return found.map(said -> said);
  }

  private Optional<String> value(List<String> words) {
    return AskedCall.value(words, flag);
  }
}
