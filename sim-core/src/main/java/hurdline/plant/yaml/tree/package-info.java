/**
 * YAML text as a tree with the place of every key and value, and merge patches on it.
 *
 * <p>Keeps line and column of each node, refuses what no plant file needs (tags, anchors that
 * unfold, endless lines), and writes findings with the text they are about. Patches follow RFC
 * 7396. Knows no key of the format: that is {@code hurdline.plant.yaml}. Read {@link
 * hurdline.plant.yaml.tree.TreeReader} first.
 */
package hurdline.plant.yaml.tree;
