package patinary.selling;

import java.util.UUID;

/** A piece as forms and lists of selling name it. */
record PieceRef(UUID id, String code, String title, String state) {

    boolean canBeSold() {
        return !state.equals("SOLD") && !state.equals("GONE");
    }

    /** Whether it is there and on no offer. */
    boolean isFree() {
        return canBeSold() && !state.equals("OFFERED");
    }
}
