package hurdline.command;

import java.io.PrintWriter;

/**
 * What a verb works in.
 *
 * @param out for answers
 * @param err for errors and progress
 * @param onTerminal whether someone watches {@code err}
 * @param studies answers questions about plants
 */
record Setting(PrintWriter out, PrintWriter err, boolean onTerminal, Studies studies) {}
