package hurdline.study;

import hurdline.plant.Expected;
import hurdline.plant.ProblemsException;
import hurdline.plant.Variants;
import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * The plant that is asked about, and what an answer says of where it came from.
 *
 * @param variants the plant and whatever may be changed in it
 * @param file base name of the plant file with its ending and without any folder
 * @param contentHash hash of the plant file's content
 * @param version the program's version
 * @param warnings what is allowed but looks wrong in the changed plant, with places
 */
public record PlantOrigin(
    Variants variants,
    String file,
    String contentHash,
    String version,
    List<LocatedProblem> warnings) {
  public PlantOrigin {
    warnings = List.copyOf(warnings);
  }

  /** What is asked of the file cannot be. */
  public ProblemsException refusal(String said, String expected) {
    return refusal(said, Expected.of(expected));
  }

  public ProblemsException refusal(String said, Expected expected) {
    return new ProblemsException(
        List.of(LocatedProblem.of(file, said, expected.text(), expected.nearest())));
  }

  /** The same with other warnings. */
  public PlantOrigin warning(List<LocatedProblem> of) {
    return new PlantOrigin(variants, file, contentHash, version, of);
  }
}
