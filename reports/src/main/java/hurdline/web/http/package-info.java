/**
 * A server for one page of this program, heard on this machine only.
 *
 * <p>{@link hurdline.web.http.LocalServer} binds the loopback address and hands each request to
 * {@link hurdline.web.http.Guard}, which refuses what does not come from the page itself, then to
 * the call of that name. It knows nothing of plants: calls and files are given to it. The JDK's
 * server lets odd requests through to its handler, so everything that may be asked is listed and no
 * path is ever joined to a folder. Read the guard first.
 */
package hurdline.web.http;
