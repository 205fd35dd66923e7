/**
 * A study over a grid of values of one key or of two.
 *
 * <p>Each cell is a plant of its own, all on the same random draws; cells with problems are left
 * out and named, finished cells are kept so that a grid stopped half way goes on from there. What
 * is highest is told from intervals for all pairs of cells. Read {@link hurdline.study.grid.Grid}
 * first.
 */
package hurdline.study.grid;
