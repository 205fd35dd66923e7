/**
 * The page that {@code hurdline open} shows in a browser: plants of one folder, edited and asked.
 *
 * <p>{@link hurdline.web.PageServer} wires it: files of the folder by {@link
 * hurdline.web.PlantFolder}, what is said of a text while it is typed, studies as processes of
 * their own, answers. Each call answers with a record that becomes JSON; scripts and styles lie
 * among the resources. Everything that it does, the terminal does too. Below it {@code web.http}
 * guards the door. Read the server first.
 */
package hurdline.web;
