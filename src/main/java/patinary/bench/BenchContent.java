package patinary.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Everything a bench entry says.
 *
 * @param date the day of the work
 * @param note free text
 * @param minutes of work on all the pieces together; shared equally over them in reports
 * @param done what was done
 * @param pieces the pieces worked on
 * @param uses the supplies used
 * @param usePieces which pieces a use went on and in which proportion; a use that names none went on no piece
 * @param mishaps what went wrong
 * @param handling how supplies were cut and mixed
 * @param finishId the finish that was followed, or null
 */
public record BenchContent(
        LocalDate date,
        String note,
        int minutes,
        String done,
        List<BenchPiece> pieces,
        List<SupplyUse> uses,
        List<UsePiece> usePieces,
        List<Mishap> mishaps,
        Handling handling,
        @Nullable UUID finishId) {

    /** An entry whose supplies went straight on the pieces, by no finish. */
    public BenchContent(
            LocalDate date,
            String note,
            int minutes,
            String done,
            List<BenchPiece> pieces,
            List<SupplyUse> uses,
            List<UsePiece> usePieces,
            List<Mishap> mishaps) {
        this(date, note, minutes, done, pieces, uses, usePieces, mishaps, Handling.PLAIN);
    }

    /** Work that followed no finish. */
    public BenchContent(
            LocalDate date,
            String note,
            int minutes,
            String done,
            List<BenchPiece> pieces,
            List<SupplyUse> uses,
            List<UsePiece> usePieces,
            List<Mishap> mishaps,
            Handling handling) {
        this(date, note, minutes, done, pieces, uses, usePieces, mishaps, handling, null);
    }
}
