package hurdline.records;

import java.util.ArrayList;
import java.util.List;

/** One row of a file and what becomes of it, which is settled once. */
final class Row {
  private final String file;
  private final int line;
  private final List<String> cells;
  private final List<String> notes = new ArrayList<>();
  private Account.Verdict verdict;
  private String whatFor = "";

  Row(String file, int line, List<String> cells) {
    this.file = file;
    this.line = line;
    this.cells = List.copyOf(cells);
  }

  int line() {
    return line;
  }

  int size() {
    return cells.size();
  }

  boolean isEmpty() {
    return cells.stream().allMatch(String::isBlank);
  }

  /** The cell without space around it; empty where the row has none there. */
  String cell(int at) {
    return at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
  }

  List<String> cells() {
    return cells;
  }

  boolean isSettled() {
    return verdict != null;
  }

  Row note(String note) {
    if (!note.isEmpty() && !notes.contains(note)) {
      notes.add(note);
    }
    return this;
  }

  /**
   * @param figures what it serves, such as {@code every lasts}
   */
  void use(String figures) {
    settle(Account.Verdict.USED, figures);
  }

  void join(String why) {
    note(why);
    settle(Account.Verdict.JOINED, "");
  }

  void setAside(String why) {
    notes.clear();
    note(why);
    settle(Account.Verdict.SET_ASIDE, "");
  }

  private void settle(Account.Verdict settled, String figures) {
    if (verdict != null) {
      throw new IllegalStateException(file + ":" + line + " is settled twice");
    }
    verdict = settled;
    whatFor = figures;
  }

  Account.Entry entry() {
    if (verdict == null) {
      throw new IllegalStateException(file + ":" + line + " is not settled");
    }
    return new Account.Entry(file, line, verdict, whatFor, String.join("; ", notes));
  }
}
