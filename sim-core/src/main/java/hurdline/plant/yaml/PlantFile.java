package hurdline.plant.yaml;

import hurdline.plant.Change;
import hurdline.plant.Choices;
import hurdline.plant.Plant;
import hurdline.plant.PlantTexts;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import hurdline.plant.Warnings;
import hurdline.plant.yaml.tree.FileText;
import hurdline.plant.yaml.tree.Finding;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Locator;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A plant file that has been read and found without problems. */
public final class PlantFile {
  private final String name;
  private final String contentHash;
  private final TreeVariants variants;
  private final Plant plant;
  private final Choices choices;
  private final PlantTexts texts;

  private PlantFile(
      String name,
      String contentHash,
      TreeVariants variants,
      Plant plant,
      Choices choices,
      PlantTexts texts) {
    this.name = name;
    this.contentHash = contentHash;
    this.variants = variants;
    this.plant = plant;
    this.choices = choices;
    this.texts = texts;
  }

  /**
   * Reads a plant file and the rain files that it or its options name.
   *
   * @throws ProblemsException with every problem of the files
   */
  public static PlantFile read(Path file) {
    String name = file.toString();
    try {
      byte[] bytes = FileText.bytes(file);
      return bound(name, FileText.text(bytes), bytes, tree -> RainFiles.beside(file, tree));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(name)));
    }
  }

  /**
   * Reads a plant from a text that stands for a file, with the rain files that lie beside that.
   *
   * @param file is not read
   * @throws ProblemsException with every problem of the texts
   */
  public static PlantFile edited(Path file, String text) {
    String name = file.getFileName().toString();
    try {
      return bound(
          name,
          FileText.text(text),
          text.getBytes(StandardCharsets.UTF_8),
          tree -> RainFiles.beside(file, tree));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(name)));
    }
  }

  /**
   * Reads a plant from text, which has no rain files with it.
   *
   * @param name shown in messages in place of a file
   * @throws ProblemsException with every problem of the text
   */
  public static PlantFile of(String name, String text) {
    return of(name, text, Map.of());
  }

  /**
   * Reads a plant from text.
   *
   * @param name shown in messages in place of a file
   * @param rain the text of each rain file by the name that the plant calls it
   * @throws ProblemsException with every problem of the texts
   */
  public static PlantFile of(String name, String text, Map<String, String> rain) {
    try {
      return bound(
          name,
          FileText.text(text),
          text.getBytes(StandardCharsets.UTF_8),
          tree -> RainFiles.among(rain, tree));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().problemOf(name)));
    }
  }

  private static PlantFile bound(
      String name, String text, byte[] bytes, Function<Tree, RainFiles> beside) {
    Findings findings = new Findings();
    Tree tree = TreeReader.read(text, findings);
    RainFiles rains = beside.apply(tree);
    Binding binding = new Binding(rains, findings, new Findings());
    Plant plant = BoundPlant.plant(tree, binding);
    BoundBefore before =
        findings.isEmpty() ? BoundBefore.of(tree, binding, plant) : BoundBefore.nothing();
    if (!BoundPlant.lacksASection(findings)) {
      PatchCheck.all(binding.misspellings().corrected(tree), rains, before, findings);
    }
    Choices choices = ChoiceBinder.choices(tree, plant, binding);
    if (findings.problemsOf(name).stream().allMatch(of -> of.path().startsWith("doubt."))) {
      DoubtBinder.refuseAstray(plant, tree, findings);
    }
    List<LocatedProblem> problems = new ArrayList<>(findings.problemsOf(name));
    problems.addAll(rains.problems());
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    TreeVariants variants = new TreeVariants(name, tree, rains, before);
    PlantTexts texts = new PlantTexts(baseOf(name), text, rains.texts());
    return new PlantFile(name, rains.hash(bytes), variants, plant, choices, texts);
  }

  private static String baseOf(String name) {
    return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
  }

  public Plant plant() {
    return plant;
  }

  /** All that it was read from. */
  public PlantTexts texts() {
    return texts;
  }

  /** What is open in this plant. */
  public Choices choices() {
    return choices;
  }

  /** The door to this plant with something changed. */
  public Variants variants() {
    return variants;
  }

  /**
   * What may well be meant and is worth a look; of the changed plant where changes are given.
   *
   * @throws ProblemsException if the changed plant has problems, of which warnings would only be
   *     echoes
   */
  public List<LocatedProblem> warnings(Change... changes) {
    Findings cautions = new Findings();
    Plant looked = variants.with(cautions, changes);
    Tree changed = variants.changed(changes);
    Warnings.of(looked)
        .forEach(
            problem -> cautions.add(new Finding(Locator.of(changed, problem.path()), problem)));
    return cautions.inOrder().stream().map(finding -> finding.warningOf(name)).toList();
  }

  /** SHA-256 in hex of the file's bytes and, where it names rain files, of theirs. */
  public String contentHash() {
    return contentHash;
  }

  /** The path or name as it was given. */
  public String name() {
    return name;
  }
}
