package hurdline.study;

/** What flows through lines, from a simulation or by formula; mass per time of the line. */
public interface FlowFigures {
  /** Mass that takes a way: an outlet of a node of a head's stretch, kg. */
  double wayKg(int head, int node, int outlet);

  /** Mass fed to a line, kg. */
  double fedKg(String line);

  /** What of a product comes from a line, in any unit that all its products share. */
  double made(String line, String product);

  /** Scheduled hours of a line in which these masses flow. */
  double hours(String line);

  /** Share of the scheduled hours in which a machine or bin limits a line, 0 to 1. */
  double limitsShare(String line, String node);
}
