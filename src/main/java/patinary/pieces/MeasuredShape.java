package patinary.pieces;

import patinary.measure.Shape;

/**
 * How a surface was measured.
 *
 * @param measures as typed
 */
record MeasuredShape(Shape shape, String measures) {}
