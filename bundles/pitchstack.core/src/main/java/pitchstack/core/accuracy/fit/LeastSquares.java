// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Weighted linear least squares. Columns are brought to length 1 first, so that a pitch in micrometres and an intercept in
 * metres do no harm to each other; then Householder QR.
 */
public final class LeastSquares {
    /** Below this part of the largest singular value a direction counts as not determined: far above rounding. */
    private static final double RANK_TOLERANCE = 1e-9;

    private final RealMatrix scaled;
    private final double[] roots;
    private final double[] norms;

    /**
     * A problem.
     *
     * @param design one row an observation, one column a coefficient; at least one of each
     * @param weights one an observation, above 0
     */
    public LeastSquares(double[][] design, double[] weights) {
        roots = new double[weights.length];
        scaled = MatrixUtils.createRealMatrix(design.length, design[0].length);
        for (int row = 0; row < design.length; row++) {
            if (!(weights[row] > 0) || Double.isInfinite(weights[row])) {
                throw new IllegalArgumentException("A weight is above 0 and finite, not " + weights[row]);
            }
            roots[row] = Math.sqrt(weights[row]);
            for (int column = 0; column < design[row].length; column++) {
                scaled.setEntry(row, column, roots[row] * design[row][column]);
            }
        }
        norms = new double[design[0].length];
        for (int column = 0; column < norms.length; column++) {
            norms[column] = scaled.getColumnVector(column).getNorm();
            if (norms[column] > 0) {
                scaled.setColumnVector(column, scaled.getColumnVector(column).mapDivide(norms[column]));
            }
        }
    }

    /**
     * For which coefficients the observations say nothing: the projection onto the directions, in columns of length 1,
     * that no observation sees. All zero where everything is determined. An entry off the diagonal says that two
     * coefficients can be traded for each other.
     */
    public RealMatrix undetermined() {
        int columns = norms.length;
        // Rows of zeros add nothing, and give the decomposition its full set of right vectors.
        RealMatrix tall = MatrixUtils.createRealMatrix(Math.max(columns, scaled.getRowDimension()), columns);
        tall.setSubMatrix(scaled.getData(), 0, 0);
        SingularValueDecomposition svd = new SingularValueDecomposition(tall);
        RealMatrix projection = MatrixUtils.createRealMatrix(columns, columns);
        double[] values = svd.getSingularValues();
        for (int k = 0; k < columns; k++) {
            if (values[k] <= RANK_TOLERANCE * values[0]) {
                projection = projection.add(svd.getV().getColumnMatrix(k).multiply(svd.getV().getColumnMatrix(k).transpose()));
            }
        }
        return projection;
    }

    /**
     * The fit.
     *
     * @param observations one a row of the design
     * @throws IllegalArgumentException if there are fewer observations than coefficients
     * @throws org.hipparchus.exception.MathRuntimeException if the observations do not determine the coefficients
     */
    public LinearFit fit(double[] observations) {
        int rows = scaled.getRowDimension();
        int columns = norms.length;
        if (rows < columns) {
            throw new IllegalArgumentException(rows + " observations cannot give " + columns + " coefficients");
        }
        double[] weighted = new double[rows];
        for (int row = 0; row < rows; row++) {
            weighted[row] = roots[row] * observations[row];
        }
        QRDecomposition qr = new QRDecomposition(scaled, RANK_TOLERANCE);
        double[] solution = qr.getSolver().solve(MatrixUtils.createRealVector(weighted)).toArray();
        RealMatrix root = MatrixUtils.inverse(qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1));
        double[] fitted = scaled.operate(solution);
        double[] residuals = new double[rows];
        double chiSquare = 0;
        for (int row = 0; row < rows; row++) {
            double left = weighted[row] - fitted[row];
            chiSquare += left * left;
            residuals[row] = left / roots[row];
        }
        return new LinearFit(unscaled(solution), covariance(root), residuals, leverages(root), chiSquare, rows - columns);
    }

    private double[] unscaled(double[] solution) {
        double[] coefficients = solution.clone();
        for (int column = 0; column < coefficients.length; column++) {
            coefficients[column] /= norms[column];
        }
        return coefficients;
    }

    private RealMatrix covariance(RealMatrix root) {
        RealMatrix inverse = root.multiplyTransposed(root);
        for (int i = 0; i < norms.length; i++) {
            for (int j = 0; j < norms.length; j++) {
                inverse.multiplyEntry(i, j, 1 / (norms[i] * norms[j]));
            }
        }
        return inverse;
    }

    private double[] leverages(RealMatrix root) {
        RealMatrix projected = scaled.multiply(root);
        double[] leverages = new double[projected.getRowDimension()];
        for (int row = 0; row < leverages.length; row++) {
            double norm = projected.getRowVector(row).getNorm();
            leverages[row] = norm * norm;
        }
        return leverages;
    }
}
