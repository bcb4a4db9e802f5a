package patinary.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import patinary.finishes.Finish;
import patinary.finishes.Span;

/** What the bench page chooses from, as the page and a phone's own copy hold it. */
final class NowRows {

    private NowRows() {}

    /**
     * A piece.
     *
     * @param text code and title
     * @param style its style's id, or an empty text
     * @param area in square centimetres, or an empty text
     * @param finish id of the finish it waits for, or an empty text
     * @param cautions ids of the cautions its words call up
     */
    record PieceRow(
            UUID value,
            String text,
            String code,
            String title,
            String state,
            String style,
            String area,
            String finish,
            List<String> cautions) {}

    /**
     * A supply.
     *
     * @param text line and name
     * @param unit the word of its base unit, or an empty text where it is counted
     * @param measures her own measures, then the packs
     * @param last what was typed when it was last used, or an empty text
     * @param use of a tool whose price is spread over its uses: the part of one that a use takes; else an empty text
     */
    record SupplyRow(
            UUID value,
            String text,
            String name,
            String line,
            String unit,
            List<String> measures,
            String last,
            String use,
            List<String> cautions) {

        /** Whether it is offered among the tools, to be ticked once. */
        public boolean wears() {
            return !use.isEmpty();
        }
    }

    /**
     * A style.
     *
     * @param last the supplies of the last entry that used any on a piece of this style
     * @param order the supplies used on its pieces, the last used first
     */
    record StyleRow(UUID value, String text, List<LastUse> last, List<UUID> order) {}

    /**
     * A supply as it was used before.
     *
     * @param tool whether it was a tool that was used once
     */
    record LastUse(UUID supply, String typed, boolean exact, boolean tool) {}

    /**
     * A finish.
     *
     * @param minutes of work on one piece
     * @param uses what it takes, each supply of each step
     * @param cautions ids of the cautions of its steps and their words
     */
    record FinishRow(
            UUID value, String text, int minutes, List<FinishUse> uses, List<FinishStep> steps, List<String> cautions) {

        static FinishRow of(UUID id, Finish finish, List<String> cautions) {
            return new FinishRow(
                    id,
                    finish.name(),
                    finish.minutes(),
                    finish.needs().stream().map(FinishUse::of).toList(),
                    finish.steps().stream().map(FinishStep::of).toList(),
                    cautions);
        }
    }

    /**
     * A supply of a finish.
     *
     * @param quantity in the base unit, for so many square centimetres; for a piece where {@code per} is empty
     */
    record FinishUse(UUID supply, String quantity, String per) {

        static FinishUse of(Finish.Need need) {
            BigDecimal per = need.coverage().perArea();
            return new FinishUse(need.supplyId(), plain(need.coverage().quantity()), per == null ? "" : plain(per));
        }

        private static String plain(BigDecimal number) {
            return number.stripTrailingZeros().toPlainString();
        }
    }

    /**
     * A step of a finish.
     *
     * @param after the least minutes that are waited after it; zero where none are
     * @param words what the wait is called
     */
    record FinishStep(int line, String what, int after, String words) {

        static FinishStep of(Finish.Step step) {
            return new FinishStep(
                    step.line(),
                    step.what(),
                    step.pause() == null ? 0 : step.pause().from(),
                    waiting(step));
        }

        /** What may be done then, and how long is waited; an empty text where nothing is waited for. */
        static String waiting(Finish.Step step) {
            Finish.Wait wait = step.pause();
            if (wait == null) {
                return "";
            }
            String range = Span.range(wait.from(), wait.to());
            String words = wait.words().isBlank() ? step.what() : wait.words();
            int room = BenchWait.WORDS - range.length() - 3;
            String most = words.length() > room ? words.substring(0, room) : words;
            return most + " (" + range + ")";
        }
    }

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
