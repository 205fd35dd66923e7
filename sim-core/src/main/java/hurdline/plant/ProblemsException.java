package hurdline.plant;

import java.util.List;

/** All problems of a plant at once. */
public final class ProblemsException extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<String> lines;

  /**
   * @param lines one finished line a problem, with its place
   */
  public ProblemsException(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  public List<String> lines() {
    return lines;
  }
}
