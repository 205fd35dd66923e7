package hurdline.plant.yaml;

import hurdline.plant.Cautions;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A plant file that has been read and found without problems. */
public final class PlantFile {
  private final String name;
  private final String contentHash;
  private final TreeVariants variants;
  private final Plant plant;

  private PlantFile(String name, String contentHash, Tree tree, Plant plant) {
    this.name = name;
    this.contentHash = contentHash;
    this.variants = new TreeVariants(name, tree);
    this.plant = plant;
  }

  /**
   * Reads a plant file.
   *
   * @throws ProblemsException with every problem of the file, each on a line
   */
  public static PlantFile read(Path file) {
    String name = file.toString();
    try {
      byte[] bytes = FileText.bytes(file);
      return bound(name, FileText.text(bytes), FileText.hash(bytes));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().line(name)));
    }
  }

  /**
   * Reads a plant from text.
   *
   * @param name shown in messages in place of a file
   * @throws ProblemsException with every problem of the text, each on a line
   */
  public static PlantFile of(String name, String text) {
    try {
      FileText.refuseContent(text);
      return bound(name, text, FileText.hash(text.getBytes(StandardCharsets.UTF_8)));
    } catch (UnreadableException e) {
      throw new ProblemsException(List.of(e.finding().line(name)));
    }
  }

  private static PlantFile bound(String name, String text, String hash) {
    Findings findings = new Findings();
    Tree tree = TreeReader.read(text, findings);
    Plant plant = Bound.plant(tree, findings);
    PatchCheck.all(tree, findings);
    if (!findings.isEmpty()) {
      throw new ProblemsException(findings.lines(name));
    }
    return new PlantFile(name, hash, tree, plant);
  }

  public Plant plant() {
    return plant;
  }

  /** The door to this plant with something changed. */
  public Variants variants() {
    return variants;
  }

  /**
   * What may well be meant and is worth a look, each on a line; of the changed plant where changes
   * are given.
   */
  public List<String> warnings(Change... changes) {
    Tree changed = variants.changed(changes);
    Findings cautions = new Findings();
    Plant looked = Bound.plant(changed, new Findings(), cautions);
    Cautions.of(looked)
        .forEach(
            problem -> cautions.add(new Finding(Locator.of(changed, problem.path()), problem)));
    return cautions.inOrder().stream().map(finding -> finding.caution(name)).toList();
  }

  /** SHA-256 of the file's bytes, in hex. */
  public String contentHash() {
    return contentHash;
  }

  /** The path or name as it was given. */
  public String name() {
    return name;
  }
}
