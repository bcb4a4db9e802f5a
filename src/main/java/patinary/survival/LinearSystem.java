package patinary.survival;

/** A few linear equations, solved by elimination with the largest pivot. */
final class LinearSystem {

    private LinearSystem() {}

    /**
     * @param rows the coefficients of each equation followed by its right side; changed by the sum. An unknown that no equation
     *     tells is 0
     */
    static double[] solve(double[]... rows) {
        int size = rows.length;
        for (int column = 0; column < size; column++) {
            swapLargestUp(rows, column);
            for (int row = column + 1; row < size; row++) {
                eliminate(rows, column, row);
            }
        }
        double[] solved = new double[size];
        for (int row = size - 1; row >= 0; row--) {
            double right = rows[row][size];
            for (int column = row + 1; column < size; column++) {
                right -= rows[row][column] * solved[column];
            }
            solved[row] = rows[row][row] == 0 ? 0 : right / rows[row][row];
        }
        return solved;
    }

    private static void swapLargestUp(double[][] rows, int column) {
        int largest = column;
        for (int row = column + 1; row < rows.length; row++) {
            if (Math.abs(rows[row][column]) > Math.abs(rows[largest][column])) {
                largest = row;
            }
        }
        double[] held = rows[column];
        rows[column] = rows[largest];
        rows[largest] = held;
    }

    private static void eliminate(double[][] rows, int column, int row) {
        double pivot = rows[column][column];
        if (pivot == 0) {
            return;
        }
        double factor = rows[row][column] / pivot;
        for (int i = column; i < rows[row].length; i++) {
            rows[row][i] -= factor * rows[column][i];
        }
    }
}
