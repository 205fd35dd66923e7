/**
 * What is wrong with a file, or worth a look, as data with its place.
 *
 * <p>{@link hurdline.problem.LocatedProblem} goes unchanged from the reader of plant files to the
 * terminal, to {@code check --json} and into the record of an answer; only what shows it to a
 * person asks it for a line of text. Uses nothing else of the project.
 */
package hurdline.problem;
