/**
 * A bare page program of the same starters as the shop's, to measure against: a sign-in page, a list of six rows behind it, the
 * signed-in state in the database. It knows nothing of the shop and is in no delivered file; {@code .ci/measure-start} and
 * {@code .ci/measure-load} run it beside the shop on the same libraries.
 */
package yardstick;
