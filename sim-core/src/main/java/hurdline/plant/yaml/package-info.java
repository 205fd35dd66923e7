/**
 * Reads plant files: text to tree, tree to the records of {@code hurdline.plant}, and trees patched
 * for options and single values.
 *
 * <p>Read {@link hurdline.plant.yaml.PlantFile} first. The binder knows lines, columns and keys
 * ({@code KeyTable} lists them all); rules that span keys live in {@code hurdline.plant} and know
 * neither. All problems of a file come in one go. This is the only package that knows YAML, opens a
 * file or meets a unit: beyond it everything is SI.
 */
package hurdline.plant.yaml;
