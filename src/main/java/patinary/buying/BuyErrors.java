package patinary.buying;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.validation.BindingResult;
import org.springframework.validation.Errors;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;

/** Puts what is wrong with a receipt beside the fields that the page for buying has for it. */
final class BuyErrors {

    private static final Pattern LINE = Pattern.compile("lines\\[([0-9]+)]\\.(.*)");
    private static final Pattern PART = Pattern.compile("pieces\\[[0-9]+]\\.");
    private static final Set<String> SAME =
            Set.of("date", "source", "newSource", "tillTotal", "paidWith", "kind", "style", "price");
    private static final Map<String, String> NAMES =
            Map.of("title", "what", "quantity", "count", "pieceCount", "count");

    private BuyErrors() {}

    static void copy(BindingResult receipt, BuyForm form, Errors errors) {
        for (ObjectError error : receipt.getAllErrors()) {
            String code = Objects.requireNonNullElse(error.getCode(), "");
            String field = error instanceof FieldError one ? field(one.getField(), form) : "";
            if (field.isEmpty()) {
                errors.reject(code, error.getArguments(), error.getDefaultMessage());
            } else {
                errors.rejectValue(field, code, error.getArguments(), error.getDefaultMessage());
            }
        }
    }

    /** The field of the page, or empty where the whole form is meant. */
    private static String field(String receiptField, BuyForm form) {
        Matcher line = LINE.matcher(receiptField);
        if (receiptField.startsWith("charges[")) {
            return "tax";
        }
        if (!line.matches()) {
            return SAME.contains(receiptField) ? receiptField : "";
        }
        int at = Integer.parseInt(line.group(1));
        boolean ofPiece = PART.matcher(line.group(2)).lookingAt();
        String name = PART.matcher(line.group(2)).replaceFirst("");
        if (at >= form.things.size() || name.equals("id")) {
            return "";
        }
        return "things[" + at + "]." + ownName(name, ofPiece, form.things.get(at));
    }

    private static String ownName(String name, boolean ofPiece, BuyForm.Thing thing) {
        if (name.equals("discount")) {
            return thing.otherPercent.isBlank() ? "percent" : "otherPercent";
        }
        if (name.equals("kind") && !ofPiece) {
            return "use";
        }
        return NAMES.getOrDefault(name, SAME.contains(name) ? name : "what");
    }
}
