package patinary.testing;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/** Takes note of everything that the program asks its database, with the values that it asks it for. */
public final class StatementLog implements BeanPostProcessor {

    /** One call on a prepared statement that gave it a value. */
    private record Given(Method method, Object[] arguments) {}

    /** A question as it was asked. */
    public record Asked(String sql, List<Object> given) {

        /** Asks something else with the same values, such as how the database would answer. */
        public PreparedStatement prepare(Connection connection, String before) throws SQLException {
            PreparedStatement statement = connection.prepareStatement(before + sql);
            for (Object one : given) {
                Given value = (Given) one;
                invoke(value.method(), statement, value.arguments());
            }
            return statement;
        }
    }

    private final Queue<Asked> asked = new ConcurrentLinkedQueue<>();
    private volatile @Nullable Thread heard;

    /** What this thread asked since it was last called. What the program's own timers ask meanwhile is no page's question. */
    public List<Asked> take() {
        heard = Thread.currentThread();
        List<Asked> taken = new ArrayList<>();
        for (Asked one = asked.poll(); one != null; one = asked.poll()) {
            taken.add(one);
        }
        return taken;
    }

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        return bean instanceof DataSource store ? new Heard(store) : bean;
    }

    private final class Heard extends DelegatingDataSource {

        Heard(DataSource store) {
            super(store);
        }

        @Override
        public Connection getConnection() throws SQLException {
            return proxy(Connection.class, super.getConnection(), (target, method, arguments) -> {
                Object result = invoke(method, target, arguments);
                return result instanceof PreparedStatement statement ? heard(statement, (String) arguments[0]) : result;
            });
        }
    }

    private PreparedStatement heard(PreparedStatement statement, String sql) {
        List<Object> given = new ArrayList<>();
        return proxy(PreparedStatement.class, statement, (target, method, arguments) -> {
            if (method.getName().startsWith("set") && arguments != null && arguments.length > 1) {
                given.add(new Given(method, arguments));
            } else if (method.getName().startsWith("execute")) {
                note(new Asked(sql, List.copyOf(given)));
            } else if (method.getName().equals("clearParameters")) {
                given.clear();
            }
            return invoke(method, target, arguments);
        });
    }

    private void note(Asked one) {
        if (Thread.currentThread() == heard) {
            asked.add(one);
        }
    }

    private interface Call<T> {
        Object on(T target, Method method, Object[] arguments) throws SQLException;
    }

    private static <T> T proxy(Class<T> type, T target, Call<T> call) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(),
                new Class<?>[] {type},
                (self, method, arguments) -> call.on(target, method, arguments)));
    }

    private static Object invoke(Method method, Object target, Object[] arguments) throws SQLException {
        try {
            return method.invoke(target, arguments);
        } catch (InvocationTargetException thrown) {
            if (thrown.getCause() instanceof SQLException failed) {
                throw failed;
            }
            throw new IllegalStateException(thrown.getCause());
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
