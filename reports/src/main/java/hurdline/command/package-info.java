/**
 * The verbs of the command line; the one place that knows every other.
 *
 * <p>Read {@link hurdline.command.Hurdline} first. A verb is one class: it reads its flags, has the
 * plant prepared so that all that is wrong shows at once and nothing is written, claims the folder
 * for its answer, asks through {@link hurdline.service.Studies}, and hands the answer to tables,
 * charts, page and words. Nothing is computed here.
 *
 * <p>Answers go to standard output, errors and progress to standard error; exit codes are in {@code
 * ExitCode}. May use all packages of the project, picocli and progressbar.
 */
package hurdline.command;
