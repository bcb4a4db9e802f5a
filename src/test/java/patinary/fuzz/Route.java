package patinary.fuzz;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.core.MethodParameter;
import org.springframework.http.server.PathContainer;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * An address of the program with all that its method reads from a request, whether a page asks for it or not.
 *
 * @param change whether it is for changing, POST, or for reading, GET
 */
record Route(boolean change, String pattern, PathPattern compiled, List<FoundForm.Field> fields) {

    static Route of(boolean change, String pattern, HandlerMethod method) {
        List<FoundForm.Field> fields = new ArrayList<>();
        for (MethodParameter parameter : method.getMethodParameters()) {
            read(parameter, fields);
        }
        return new Route(change, pattern, PathPatternParser.defaultInstance.parse(pattern), fields);
    }

    boolean fits(String path) {
        return compiled.matches(PathContainer.parsePath(path));
    }

    boolean takesFiles() {
        return fields.stream().anyMatch(field -> field.type().equals("file"));
    }

    private static void read(MethodParameter parameter, List<FoundForm.Field> fields) {
        RequestParam named = parameter.getParameterAnnotation(RequestParam.class);
        Class<?> type = parameter.getParameterType();
        if (named != null) {
            String name = named.value().isEmpty() ? named.name() : named.value();
            String known = name.isEmpty() ? parameter.getParameter().getName() : name;
            fields.add(plain(known, parameter.getGenericParameterType()));
        } else if (type.getName().startsWith("patinary.")
                && !type.isEnum()
                && !parameter.hasParameterAnnotation(PathVariable.class)) {
            inside("", type, fields, 0);
        }
    }

    private static void inside(String before, Class<?> form, List<FoundForm.Field> fields, int depth) {
        for (Field field : form.getDeclaredFields()) {
            if (Modifier.isStatic(field.getModifiers()) || field.isSynthetic() || depth > 2) {
                continue;
            }
            String name = before + field.getName();
            Type inner = field.getGenericType() instanceof ParameterizedType many
                    ? many.getActualTypeArguments()[many.getActualTypeArguments().length - 1]
                    : field.getType();
            String at = Collection.class.isAssignableFrom(field.getType())
                    ? name + "[0]"
                    : Map.class.isAssignableFrom(field.getType()) ? name + "[a]" : name;
            if (inner instanceof Class<?> line && line.getName().startsWith("patinary.") && !line.isEnum()) {
                inside(at + ".", line, fields, depth + 1);
            } else {
                fields.add(plain(at, inner));
            }
        }
    }

    private static FoundForm.Field plain(String name, Type type) {
        String kind = type.getTypeName().contains(MultipartFile.class.getName()) ? "file" : "text";
        List<String> options = type instanceof Class<?> choice && choice.isEnum()
                ? List.of(choice.getEnumConstants()).stream()
                        .map(one -> ((Enum<?>) one).name())
                        .toList()
                : List.of();
        return new FoundForm.Field(name, kind, "", options);
    }
}
