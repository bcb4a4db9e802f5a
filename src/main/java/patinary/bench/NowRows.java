package patinary.bench;

import java.util.List;
import java.util.UUID;

/** What the bench page chooses from, as the page and a phone's own copy hold it. */
final class NowRows {

    private NowRows() {}

    /**
     * A piece.
     *
     * @param text code and title
     * @param style its style's id, or an empty text
     * @param cautions ids of the cautions its words call up
     */
    record PieceRow(
            UUID value, String text, String code, String title, String state, String style, List<String> cautions) {}

    /**
     * A supply.
     *
     * @param text line and name
     * @param measures her own measures, then the packs
     * @param last what was typed when it was last used, or an empty text
     */
    record SupplyRow(
            UUID value,
            String text,
            String name,
            String line,
            List<String> measures,
            String last,
            List<String> cautions) {}

    /**
     * A style.
     *
     * @param last the supplies of the last entry that used any on a piece of this style
     * @param order the supplies used on its pieces, the last used first
     */
    record StyleRow(UUID value, String text, List<LastUse> last, List<UUID> order) {}

    /** A supply as it was used before. */
    record LastUse(UUID supply, String typed, boolean exact) {}

    /** Words she has used before. */
    record WordsRow(String text, List<String> cautions) {}

    /**
     * A caution.
     *
     * @param brief what it is about and its first sentence, which alone may not say so
     * @param rest the others, or an empty text
     */
    record CautionRow(String value, String severity, String brief, String rest) {

        static CautionRow of(Caution caution, String about) {
            String[] parts = caution.text().split("(?<=[.!?])\\s+", 2);
            return new CautionRow(
                    caution.id(), caution.severity().name(), about + ": " + parts[0], parts.length > 1 ? parts[1] : "");
        }

        public boolean isSerious() {
            return !severity.equals(Caution.Severity.NOTE.name());
        }
    }
}
