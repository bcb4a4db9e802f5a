package patinary.ledger;

import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;

/** Tells a person on the form in hand why the books refused what it says. */
@Component
public class Refusal {

    private static final String SUBJECT = """
            select p.code || ' ' || p.title from piece p where p.id = ?
            union all
            select s.name from supply s where s.id = ?""";

    private final JdbcTemplate jdbc;
    private final Documents documents;

    Refusal(JdbcTemplate jdbc, Documents documents) {
        this.jdbc = jdbc;
        this.documents = documents;
    }

    /** Adds one error to the whole form for each problem. */
    public void tell(Errors errors, Refused refused) {
        for (Problem problem : refused.problems()) {
            Object[] arguments = {subject(problem), problem.document().date().toString(), firstOpenDay()};
            errors.reject(problem.reason().messageKey(), arguments, null);
        }
    }

    /** Where a correction may be dated; empty where nothing is sealed. */
    private String firstOpenDay() {
        return documents.sealedUpTo().map(last -> last.plusDays(1).toString()).orElse("");
    }

    private String subject(Problem problem) {
        if (problem.subject() == null) {
            return "";
        }
        List<String> names = jdbc.queryForList(SUBJECT, String.class, problem.subject(), problem.subject());
        return names.isEmpty() ? problem.subject().toString() : names.get(0);
    }
}
