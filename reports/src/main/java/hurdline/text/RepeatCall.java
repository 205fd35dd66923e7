package hurdline.text;

import hurdline.answer.Header;
import hurdline.answer.InputUncertainty;
import hurdline.answer.SeasonRest;
import java.util.ArrayList;
import java.util.List;

/** The call that gives an answer again. */
public final class RepeatCall {
  private final Header header;

  public RepeatCall(Header header) {
    this.header = header;
  }

  /** The same with the draws of inputs that it took from a file, and from what day on. */
  public String run(InputUncertainty inputs, SeasonRest rest) {
    String file = inputs.source().replaceAll("( and )?\\bdoubt$", "");
    return run()
        + (file.isEmpty() ? "" : " --draws " + quoted(file))
        + (rest.isGiven()
            ? " --records " + quoted(rest.records()) + " --as-of " + rest.asOf()
            : "");
  }

  /** {@code hurdline run plant.yaml --option bigger_mill --replications 40 --seed 1}. */
  public String run() {
    List<String> words = new ArrayList<>(List.of("hurdline", "run", quoted(header.file())));
    if (!header.option().equals("base")) {
      words.addAll(List.of("--option", quoted(header.option())));
    }
    for (String change : header.changes()) {
      words.addAll(List.of("--set", quoted(change)));
    }
    words.addAll(List.of("--replications", Integer.toString(header.replicationsAsked())));
    if (!header.until().isEmpty()) {
      words.addAll(List.of("--until", quoted(header.until())));
    }
    words.addAll(List.of("--seed", Long.toString(header.seed())));
    return String.join(" ", words);
  }

  /** As a shell takes it for one word. */
  private static String quoted(String word) {
    return word.matches("[\\w./:=,+%-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
