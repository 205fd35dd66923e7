package hurdline.problem;

/**
 * One thing that is wrong with a file or call, or worth a look, with its place.
 *
 * @param severity whether the plant cannot be simulated as it stands
 * @param file as it was named; empty where it is of no file
 * @param line from 1; 0 where no line holds it, such as a value set by the call
 * @param column from 1; 0 where only the line is known
 * @param path of the key, such as {@code machines.mill.power}; empty where it is of no key
 * @param found what is wrong, or worth a look
 * @param expected what belongs there instead; of a warning, what to do or to know
 * @param nearest the known word that was probably meant; empty where there is none
 * @param change the option, plan or values with which it arises, such as {@code option
 *     bigger_mill}; empty where it is of the file as it stands
 */
public record LocatedProblem(
    Severity severity,
    String file,
    int line,
    int column,
    String path,
    String found,
    String expected,
    String nearest,
    String change) {

  /** How much it matters. */
  public enum Severity {
    /** The plant cannot be simulated. */
    PROBLEM,
    /** It may well be meant. */
    WARNING
  }

  /** A problem of a whole file, or of a call where the file's name is empty. */
  public static LocatedProblem of(String file, String found, String expected, String nearest) {
    return at(file, 0, found, expected, nearest);
  }

  /** A problem of a line. */
  public static LocatedProblem at(
      String file, int line, String found, String expected, String nearest) {
    return new LocatedProblem(Severity.PROBLEM, file, line, 0, "", found, expected, nearest, "");
  }

  /** The same of a file with another name, such as one without its folder. */
  public LocatedProblem inFile(String name) {
    return new LocatedProblem(severity, name, line, column, path, found, expected, nearest, change);
  }

  /** One line for a person; keys and names may hold line breaks, wrong as they are. */
  public String text() {
    String then = severity == Severity.PROBLEM ? "; expected " : "; ";
    String with = change.isEmpty() ? "" : " (with " + change + ")";
    return (where() + found + then + expected + with).replaceAll("\\R", " ");
  }

  private String where() {
    String place = file + (line == 0 ? "" : ":" + line) + (column == 0 ? "" : ":" + column);
    String key = place.isEmpty() || path.isEmpty() ? place + path : place + " " + path;
    return key.isEmpty() ? "" : key + ": ";
  }
}
