package hurdline.study.choose;

/** Counts years as they are simulated, and reports them with those that are due. */
final class YearCount implements Runnable {
  private final ChooseProgress progress;
  private long done;
  private long due;

  YearCount(ChooseProgress progress) {
    this.progress = progress;
  }

  /** So many more are due, whatever was due before. */
  void expect(long more) {
    due = done + more;
  }

  /** One more is simulated. */
  @Override
  public void run() {
    done++;
    progress.done(shown(done), shown(Math.max(done, due)));
  }

  private static int shown(long count) {
    return (int) Math.min(Integer.MAX_VALUE, count);
  }
}
