/**
 * The public door to the program: a plant from a file or from memory, its problems as data, its
 * capacity by formula, and every study as something that is prepared first, then simulated with
 * progress and a stop.
 *
 * <p>Read {@link hurdline.service.Studies} first; {@code
 * reports/src/test/java/hurdline/service/LibraryExample.java} uses it as a program of one's own
 * would. The commands of the terminal come through the same door. Results of ranges of replications
 * can be simulated apart and put together. Nothing here prints, writes files or starts threads.
 */
package hurdline.service;
