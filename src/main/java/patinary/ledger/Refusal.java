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

    Refusal(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds one error to the whole form for each problem. */
    public void tell(Errors errors, Refused refused) {
        for (Problem problem : refused.problems()) {
            Object[] arguments = {subject(problem), problem.document().date().toString()};
            errors.reject(problem.reason().messageKey(), arguments, null);
        }
    }

    private String subject(Problem problem) {
        if (problem.subject() == null) {
            return "";
        }
        List<String> names = jdbc.queryForList(SUBJECT, String.class, problem.subject(), problem.subject());
        return names.isEmpty() ? problem.subject().toString() : names.get(0);
    }
}
