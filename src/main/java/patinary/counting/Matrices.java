package patinary.counting;

/** The little linear algebra that a handful of measures needs. */
final class Matrices {

    private Matrices() {}

    /** The inverse of a symmetric positive definite matrix, by Gauss and Jordan; its pivots are never zero. */
    static double[][] inverse(double[][] matrix) {
        int size = matrix.length;
        double[][] left = new double[size][];
        double[][] right = new double[size][size];
        for (int i = 0; i < size; i++) {
            left[i] = matrix[i].clone();
            right[i][i] = 1;
        }
        for (int pivot = 0; pivot < size; pivot++) {
            scale(left[pivot], right[pivot], 1 / left[pivot][pivot]);
            for (int row = 0; row < size; row++) {
                if (row != pivot) {
                    double factor = left[row][pivot];
                    subtract(left[row], left[pivot], factor);
                    subtract(right[row], right[pivot], factor);
                }
            }
        }
        return right;
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                product[i] += matrix[i][j] * vector[j];
            }
        }
        return product;
    }

    private static void scale(double[] left, double[] right, double factor) {
        for (int i = 0; i < left.length; i++) {
            left[i] *= factor;
            right[i] *= factor;
        }
    }

    private static void subtract(double[] from, double[] what, double factor) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= factor * what[i];
        }
    }
}
