package hurdline.study.choose;

import hurdline.plant.Change;
import hurdline.plant.Choice;
import hurdline.plant.Choices;
import hurdline.plant.Expected;
import hurdline.plant.Nearest;
import hurdline.problem.LocatedProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The choices of the file with those of the call. */
final class OpenChoices {
  private final String file;
  private final Choices ofFile;
  private final List<Choice> all = new ArrayList<>();
  private final List<LocatedProblem> wrong = new ArrayList<>();

  private OpenChoices(String file, Choices ofFile) {
    this.file = file;
    this.ofFile = ofFile;
    all.addAll(ofFile.all());
  }

  /**
   * @param wrong takes what is wrong with those of the call
   */
  static Choices of(
      String file, Choices ofFile, List<ChoiceChange> ofCall, List<LocatedProblem> wrong) {
    OpenChoices open = new OpenChoices(file, ofFile);
    ofCall.forEach(open::add);
    wrong.addAll(open.wrong);
    return new Choices(open.all, ofFile.never(), ofFile.kept());
  }

  private void add(ChoiceChange change) {
    for (int at = 0; at < all.size(); at++) {
      if (all.get(at).name().equals(change.name())) {
        all.set(at, narrowed(all.get(at), change));
        return;
      }
    }
    if (!change.name().contains(".")) {
      List<String> names = ofFile.all().stream().map(Choice::name).toList();
      refuse(
          "--choice \"" + change.name() + "\" is no choice of this file",
          Nearest.expected("a choice, or the path of a key", change.name(), names));
      return;
    }
    Optional<Choice> other =
        ofFile.all().stream().filter(of -> sets(of, change.name())).findFirst();
    if (other.isPresent()) {
      refuse(
          "--choice \"" + change.name() + "\" is the key of choice \"" + other.get().name() + "\"",
          Expected.of("the name of that choice before its values"));
      return;
    }
    all.add(
        new Choice(
            change.name(),
            Choice.Kind.KEY,
            change.values().stream().map(text -> value(change.name(), text)).toList()));
  }

  private static Choice.Value value(String key, String text) {
    return new Choice.Value(text, List.of(new Change.Value(key, text)), List.of());
  }

  private static boolean sets(Choice choice, String key) {
    return choice.values().stream()
        .flatMap(value -> value.changes().stream())
        .anyMatch(made -> made instanceof Change.Value value && value.path().equals(key));
  }

  private Choice narrowed(Choice choice, ChoiceChange change) {
    List<String> known = choice.values().stream().map(Choice.Value::text).toList();
    List<String> bare = known.stream().map(OpenChoices::bare).toList();
    List<String> wanted = change.values().stream().map(OpenChoices::bare).toList();
    for (String text : change.values()) {
      if (!bare.contains(bare(text))) {
        refuse(
            "--choice \"" + text + "\" is no value of choice \"" + choice.name() + "\"",
            Nearest.expected("a value of it", text, known));
      }
    }
    return new Choice(
        choice.name(),
        choice.kind(),
        choice.values().stream().filter(of -> wanted.contains(bare(of.text()))).toList());
  }

  /** Without spaces, which a call would have to quote. */
  private static String bare(String text) {
    return text.replaceAll("\\s", "");
  }

  private void refuse(String said, Expected expected) {
    wrong.add(LocatedProblem.of(file, said, expected.text(), expected.nearest()));
  }
}
