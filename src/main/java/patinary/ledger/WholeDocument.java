package patinary.ledger;

import jakarta.persistence.OrderBy;
import jakarta.persistence.metamodel.EntityType;
import jakarta.persistence.metamodel.PluralAttribute;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hibernate.Session;

/**
 * Reads a document with all its lists in one question, to be shown and not to be changed. Each row that comes back holds a row of
 * one list: joined to each other, the lists would multiply.
 */
final class WholeDocument<D extends Document> {

    private final Class<D> type;
    private final List<Field> lists;
    private final String question;

    WholeDocument(EntityType<D> entity) {
        this.type = entity.getJavaType();
        this.lists = entity.getPluralAttributes().stream()
                .map(PluralAttribute::getJavaMember)
                .map(Field.class::cast)
                .sorted(Comparator.comparing(Field::getName))
                .toList();
        lists.forEach(list -> list.setAccessible(true));
        this.question = question(entity.getName());
    }

    private String question(String entity) {
        String rows =
                IntStream.range(0, lists.size()).mapToObj(at -> ", r" + at).collect(Collectors.joining());
        String joins = IntStream.range(0, lists.size())
                .mapToObj(at -> " left join d.%s r%d on part = %d"
                        .formatted(lists.get(at).getName(), at, at))
                .collect(Collectors.joining());
        String order =
                IntStream.range(0, lists.size()).boxed().flatMap(this::order).collect(Collectors.joining(", "));
        return "select d" + rows + " from generate_series(0, " + Math.max(0, lists.size() - 1) + ") part join " + entity
                + " d on d.id = :id" + joins + (order.isEmpty() ? "" : " order by " + order);
    }

    private Stream<String> order(int at) {
        OrderBy order = lists.get(at).getAnnotation(OrderBy.class);
        return order == null
                ? Stream.empty()
                : Arrays.stream(order.value().split(", ")).map(by -> "r" + at + "." + by);
    }

    Optional<D> read(Session session, UUID id) {
        List<Object[]> rows = session.createSelectionQuery(question, Object[].class)
                .setParameter("id", id)
                .getResultList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        D document = type.cast(rows.get(0)[0]);
        session.detach(document);
        for (int at = 0; at < lists.size(); at++) {
            int column = at + 1;
            fill(
                    document,
                    lists.get(at),
                    rows.stream()
                            .map(row -> row[column])
                            .filter(Objects::nonNull)
                            .toList());
        }
        return Optional.of(document);
    }

    private static void fill(Document document, Field list, List<Object> rows) {
        try {
            list.set(document, new ArrayList<>(rows));
        } catch (IllegalAccessException opened) {
            throw new IllegalStateException(opened);
        }
    }
}
