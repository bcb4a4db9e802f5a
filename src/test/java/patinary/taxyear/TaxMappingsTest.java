package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.taxyear.TaxMapping.Goes;

/** What goes on which line, year by year. */
class TaxMappingsTest {

    private static final String FORM = "us-schedule-c";
    private static final String SOFTWARE = TaxTable.key("EXPENSE", "software");

    private final TaxTables tables = TaxTables.load();

    /**
     * The line of other expenses by tax year: 2023 read in its instructions, 2024 from memory, 2025 read in two summaries, 2026
     * carried over; for 2022 no form is known and the plain list stands in.
     */
    @ParameterizedTest
    @CsvSource({"2023, 27a, false", "2024, 27a, true", "2025, 27b, true", "2026, 27b, true"})
    void otherExpensesAreKeyedByMeaning(int year, String line, boolean check) {
        TaxTable table = tables.table(FORM, year);
        TaxLine other =
                table.meaning("EXPENSE", "education").flatMap(table::line).orElseThrow();
        assertThat(other.line()).isEqualTo(line);
        assertThat(other.check()).isEqualTo(check);
    }

    @Test
    void aYearWithoutItsFormHasNoLines() {
        assertThat(tables.table(FORM, 2022).lines()).isEmpty();
        assertThat(tables.table("uk-self-employment-short", 2022).lines()).isEmpty();
        assertThat(tables.table(TaxTables.PLAIN, 2022).lines()).isNotEmpty();
    }

    @Test
    void aChangeForOneYearLeavesTheOthers() {
        TaxMappings one = none().with(put(2025, "other_expenses", false));
        assertThat(line(one, 2024)).isEqualTo("office");
        assertThat(line(one, 2025)).isEqualTo("other_expenses");
        assertThat(line(one, 2026)).isEqualTo("office");
    }

    @Test
    void aChangeFromAYearOnHoldsUntilAnother() {
        TaxMappings onward = none().with(put(2024, "other_expenses", true)).with(put(2026, "supplies", true));
        assertThat(line(onward, 2023)).isEqualTo("office");
        assertThat(line(onward, 2025)).isEqualTo("other_expenses");
        assertThat(line(onward, 2030)).isEqualTo("supplies");
        assertThat(line(onward.takenBack(FORM, 2026, SOFTWARE), 2030)).isEqualTo("other_expenses");
    }

    @Test
    void aYearThatBecomesAnExceptionLeavesWhatHeldAfterIt() {
        TaxMappings exception = none().with(put(2024, "other_expenses", true)).with(put(2024, "supplies", false));
        assertThat(line(exception, 2024)).isEqualTo("supplies");
        assertThat(line(exception, 2025)).isEqualTo("other_expenses");
    }

    @Test
    void everythingAsSuppliedFromAYearOnLeavesTheYearsBefore() {
        TaxMappings back = none().with(put(2024, "other_expenses", true))
                .with(put(2026, "supplies", false))
                .asSupplied(FORM, 2025);
        assertThat(line(back, 2024)).isEqualTo("other_expenses");
        assertThat(line(back, 2025)).isEqualTo("office");
        assertThat(line(back, 2026)).isEqualTo("office");
    }

    /** Also where the whole account has a line: a category on no line does not fall back to it. */
    @Test
    void whatGoesNowhereIsOnNoLine() {
        TaxMappings nowhere =
                none().with(new TaxMapping(FORM, 2025, "OTHER_INCOME", "Videos", Goes.NOWHERE, "", false));
        TaxTable table = nowhere.over(tables.table(FORM, 2025), 2025);
        assertThat(table.meaning("OTHER_INCOME", "Videos").flatMap(table::line)).isEmpty();
        assertThat(table.meaning("OTHER_INCOME", "Lessons")).contains("other_income");
    }

    @Test
    void anotherTableIsLeftAlone() {
        TaxMappings one = none().with(put(2025, "other_expenses", true));
        assertThat(one.over(tables.table(TaxTables.PLAIN, 2025), 2025).meaning("EXPENSE", "software"))
                .contains("expense_software");
    }

    private static TaxMappings none() {
        return new TaxMappings(List.of());
    }

    private static TaxMapping put(int year, String meaning, boolean onward) {
        return new TaxMapping(FORM, year, "EXPENSE", "software", Goes.LINE, meaning, onward);
    }

    private String line(TaxMappings mappings, int year) {
        return mappings.over(tables.table(FORM, year), year)
                .meaning("EXPENSE", "software")
                .orElseThrow();
    }
}
