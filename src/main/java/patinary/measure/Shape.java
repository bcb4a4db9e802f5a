package patinary.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * A common shape and the surface it has, from outside measures. Standard solid geometry; joints that overlap are counted
 * twice, a small fault on the safe side.
 *
 * <p>Each shape names how many measures it takes; which they are, in which order, stands in the messages
 * {@code measure.shape.<NAME>.measures}.
 */
public enum Shape {
    /** A flat panel, one face: width, height. */
    PANEL(2) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return m.get(0).multiply(m.get(1));
        }
    },
    /** A board, all faces and edges: length, width, thickness. */
    BOARD(3) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return BOX_CLOSED.reckon(m);
        }
    },
    /** A box with its lid: length, width, height. 2(lw + lh + wh). */
    BOX_CLOSED(3) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return BOX_OPEN.reckon(m).add(m.get(0).multiply(m.get(1)));
        }
    },
    /** A box without lid, outside and base: length, width, height. 2h(l + w) + lw. */
    BOX_OPEN(3) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return BOX_SIDES.reckon(m).add(m.get(0).multiply(m.get(1)));
        }
    },
    /** The four sides of a box alone: length, width, height. 2h(l + w). */
    BOX_SIDES(3) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return TWO.multiply(m.get(2)).multiply(m.get(0).add(m.get(1)));
        }
    },
    /** A round disc, one face: diameter. πd²/4. */
    DISC(1) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return PI.multiply(m.get(0)).multiply(m.get(0)).divide(FOUR, EXACT_ENOUGH);
        }
    },
    /** The side of a cylinder: diameter, height. πdh. */
    CYLINDER(2) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return PI.multiply(m.get(0)).multiply(m.get(1));
        }
    },
    /** A cylinder with its base: diameter, height. */
    CYLINDER_OPEN(2) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return CYLINDER.reckon(m).add(DISC.reckon(m));
        }
    },
    /** A cylinder with base and lid: diameter, height. */
    CYLINDER_CLOSED(2) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            return CYLINDER_OPEN.reckon(m).add(DISC.reckon(m));
        }
    },
    /** The side of a round taper: diameter at the top, at the base, height. s = √((R − r)² + h²), A = π(R + r)s. */
    FRUSTUM(3) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            BigDecimal slant = slant(m.get(0), m.get(1), m.get(2));
            return PI.multiply(m.get(0).add(m.get(1))).multiply(slant).divide(TWO, EXACT_ENOUGH);
        }
    },
    /** The sides of a four-sided taper: top length and width, base length and width, height. */
    SQUARE_TAPER(5) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            BigDecimal long2 = m.get(0).add(m.get(2)).multiply(slant(m.get(1), m.get(3), m.get(4)));
            BigDecimal wide2 = m.get(1).add(m.get(3)).multiply(slant(m.get(0), m.get(2), m.get(4)));
            return long2.add(wide2);
        }
    },
    /** The face and the edges of a frame: outer width and height, width and height of the opening, depth. */
    FRAME(5) {
        @Override
        BigDecimal reckon(List<BigDecimal> m) {
            BigDecimal face = m.get(0).multiply(m.get(1)).subtract(m.get(2).multiply(m.get(3)));
            BigDecimal around =
                    m.get(0).add(m.get(1)).add(m.get(2)).add(m.get(3)).multiply(TWO);
            return face.add(around.multiply(m.get(4)));
        }

        @Override
        boolean isPossible(List<BigDecimal> m) {
            return m.get(2).compareTo(m.get(0)) < 0 && m.get(3).compareTo(m.get(1)) < 0;
        }
    };

    /** As many decimals as the database keeps of a quantity. */
    static final int SCALE = 14;

    private static final MathContext EXACT_ENOUGH = new MathContext(40, RoundingMode.HALF_UP);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal FOUR = BigDecimal.valueOf(4);

    /** The first 41 digits of π. */
    private static final BigDecimal PI = new BigDecimal("3.1415926535897932384626433832795028841972");

    private final int measures;

    Shape(int measures) {
        this.measures = measures;
    }

    /** How many measures it takes. */
    public int measures() {
        return measures;
    }

    /**
     * The surface, in square centimetres, rounded half up once at 14 decimals.
     *
     * @param lengths in the order of the shape, each above zero
     * @throws IllegalArgumentException where there are too few or too many, one is not above zero, or an opening is not
     *     smaller than its frame
     * @throws WrongDimension where one is not a length
     */
    public Quantity area(List<Quantity> lengths) {
        lengths.forEach(length -> length.require(Dimension.LENGTH));
        List<BigDecimal> base = lengths.stream().map(Quantity::inBase).toList();
        if (base.size() != measures || base.stream().anyMatch(one -> one.signum() <= 0) || !isPossible(base)) {
            throw new IllegalArgumentException("Not the measures of a " + this + ": " + lengths);
        }
        return Quantity.ofBase(reckon(base).setScale(SCALE, RoundingMode.HALF_UP), Dimension.AREA);
    }

    /** In centimetres, each above zero, to square centimetres. */
    abstract BigDecimal reckon(List<BigDecimal> lengths);

    boolean isPossible(List<BigDecimal> lengths) {
        return true;
    }

    /** How long a side is that leans by half the difference of its ends over a height. */
    private static BigDecimal slant(BigDecimal top, BigDecimal base, BigDecimal height) {
        BigDecimal lean = top.subtract(base).divide(TWO, EXACT_ENOUGH);
        return lean.multiply(lean).add(height.multiply(height)).sqrt(EXACT_ENOUGH);
    }
}
