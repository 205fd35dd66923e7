/**
 * The rate calculation alone, on bare arrays: how fast every head may run under shared limits.
 *
 * <p>Progressive filling of limits (max-min fairness), swept over full and empty bins until the
 * rooms stand still, and linear equations for heads that depend on themselves. Knows no machine,
 * bin or clock: indices, kg/s and shares only, and nothing else of ours. Read {@link
 * hurdline.flow.rates.RateSolver} first; its class comment is the mathematics. Hot path: nothing
 * here allocates.
 */
package hurdline.flow.rates;
