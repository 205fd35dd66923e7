package hurdline.audit;

/** Recomputes one kind of figures of an answer and books each comparison. */
interface Check {
  /** Compares what this check is for; nothing where the answer has no such figures. */
  void compare(WrittenAnswer answer, Ledger ledger);
}
