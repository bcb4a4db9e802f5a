package patinary.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import org.springframework.validation.Errors;
import patinary.measure.Dimension;
import patinary.measure.Measures;
import patinary.measure.NamedMeasure;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.ShopCurrency;
import patinary.money.UnreadableAmount;

/**
 * Reads what was typed into a form's text fields and notes beside each field why it cannot be read. What cannot be read
 * comes back as a harmless value, so that all of a form's errors are found in one go; nothing is stored while there is
 * one.
 */
public final class Answers {

    /** As many decimals as the database keeps of a quantity. */
    private static final int QUANTITY_SCALE = 14;

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 9999;

    /** As it is shown: some languages set the sign off by a space that does not break. */
    private static final Pattern SIGN_OF_PERCENT = Pattern.compile("[\\s\u00a0\u202f]*%[\\s\u00a0\u202f]*");

    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d{1,20}([.,]\\d{0,20})?|[.,]\\d{1,20})");

    private final Errors errors;
    private final ShopCurrency currency;

    public Answers(Errors errors, ShopCurrency currency) {
        this.errors = errors;
        this.currency = currency;
    }

    public boolean anyWrong() {
        return errors.hasErrors();
    }

    /** Notes an error of one field, or with an empty field name of the whole form. */
    public void wrong(String field, String message, Object... arguments) {
        if (field.isEmpty()) {
            errors.reject(message, arguments, null);
        } else {
            errors.rejectValue(field, message, arguments, null);
        }
    }

    /** A text that must be there. */
    public String text(String field, @Nullable String answer, int longest, String missing) {
        String text = note(field, answer, longest);
        if (text.isBlank()) {
            wrong(field, missing);
        }
        return text;
    }

    /** A text that may be left empty. */
    public String note(String field, @Nullable String answer, int longest) {
        String text = answer == null ? "" : answer.strip();
        if (text.length() > longest) {
            wrong(field, "web.answer.too-long", longest);
        }
        return text;
    }

    /** A day that must be there. */
    public LocalDate date(String field, @Nullable String answer) {
        return optionalDate(field, answer).orElseGet(() -> {
            if (isEmpty(answer)) {
                wrong(field, "web.answer.date-missing");
            }
            return LocalDate.EPOCH;
        });
    }

    public Optional<LocalDate> optionalDate(String field, @Nullable String answer) {
        return read(field, answer, DateTimeParseException.class, "web.answer.date", Answers::day);
    }

    /**
     * A day as the shop can keep one: of a year that its calendar, both databases and the archive read alike.
     *
     * @throws DateTimeParseException where it is none
     */
    public static LocalDate day(CharSequence text) {
        LocalDate day = LocalDate.parse(text);
        if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
            throw new DateTimeParseException("Out of range", text, 0);
        }
        return day;
    }

    /** An amount of zero or more that must be there. */
    public Amount amount(String field, @Nullable String answer) {
        return optionalAmount(field, answer).orElseGet(() -> {
            if (isEmpty(answer)) {
                wrong(field, "money.error.missing");
            }
            return Amount.ZERO;
        });
    }

    /** An amount of zero or more, or nothing. */
    public Optional<Amount> optionalAmount(String field, @Nullable String answer) {
        Optional<Amount> amount = signedAmount(field, answer);
        if (amount.filter(Amount::isNegative).isPresent()) {
            wrong(field, "web.answer.negative");
            return Optional.empty();
        }
        return amount;
    }

    /** An amount that may be below zero, or nothing. */
    public Optional<Amount> signedAmount(String field, @Nullable String answer) {
        if (isEmpty(answer)) {
            return Optional.empty();
        }
        try {
            return Optional.of(currency.parse(answer));
        } catch (UnreadableAmount unreadable) {
            wrong(field, unreadable.messageKey(), unreadable.arguments().toArray());
            return Optional.empty();
        }
    }

    /** A percentage from 0 to 100, with or without its sign. */
    public Optional<Percent> percent(String field, @Nullable String answer) {
        String plain = answer == null
                ? ""
                : SIGN_OF_PERCENT.matcher(answer).replaceAll("").strip();
        return decimal(field, plain, "web.answer.percent")
                .filter(value -> check(
                        field,
                        value.signum() >= 0 && value.compareTo(BigDecimal.valueOf(100)) <= 0,
                        "web.answer.percent"))
                .map(Percent::new);
    }

    /** A decimal number, with a point or a comma. */
    public Optional<BigDecimal> decimal(String field, @Nullable String answer, String message) {
        return read(
                field,
                answer,
                NumberFormatException.class,
                message,
                text -> plain(text).setScale(QUANTITY_SCALE, RoundingMode.HALF_UP));
    }

    /** Digits with a point or a comma among them. With an exponent, a few signs could name a number that fills the memory. */
    private static BigDecimal plain(String text) {
        if (!PLAIN.matcher(text).matches()) {
            throw new NumberFormatException(text);
        }
        return new BigDecimal(text.replace(',', '.'));
    }

    /** A whole number of zero or more, or nothing. */
    public Optional<Integer> whole(String field, @Nullable String answer) {
        return read(field, answer, NumberFormatException.class, "web.answer.whole", Integer::valueOf)
                .filter(number -> check(field, number >= 0, "web.answer.whole"));
    }

    /** A quantity in the base unit of a dimension; her own measures may be named. */
    public Optional<BigDecimal> quantity(
            String field, @Nullable String answer, Dimension dimension, Collection<NamedMeasure> measures) {
        Measures.Resolution resolution = Measures.resolve(answer == null ? "" : answer, dimension, measures);
        if (resolution instanceof Measures.Resolved resolved) {
            return Optional.of(resolved.quantity().inBase().setScale(QUANTITY_SCALE, RoundingMode.HALF_UP));
        }
        Measures.Refused refused = (Measures.Refused) resolution;
        wrong(field, refused.messageKey(), words(refused));
        return Optional.empty();
    }

    /** What fills the gaps of a refusal; units and dimensions are named by the messages of their own. */
    private static Object[] words(Measures.Refused refused) {
        return refused.arguments().stream()
                .map(word -> word.startsWith("measure.")
                        ? new DefaultMessageSourceResolvable(new String[] {word}, word)
                        : word)
                .toArray();
    }

    /** A row chosen from a list that must be there. */
    public UUID id(String field, @Nullable String answer, String missing) {
        return optionalId(field, answer, missing).orElseGet(() -> {
            if (isEmpty(answer)) {
                wrong(field, missing);
            }
            return new UUID(0, 0);
        });
    }

    public Optional<UUID> optionalId(String field, @Nullable String answer, String unknown) {
        return read(field, answer, IllegalArgumentException.class, unknown, UUID::fromString);
    }

    /** One of a fixed set of words. */
    public <E extends Enum<E>> Optional<E> word(String field, @Nullable String answer, Class<E> type, String missing) {
        Optional<E> found = List.of(type.getEnumConstants()).stream()
                .filter(constant -> constant.name().equals(answer))
                .findFirst();
        if (found.isEmpty()) {
            wrong(field, missing);
        }
        return found;
    }

    private <T> Optional<T> read(
            String field,
            @Nullable String answer,
            Class<? extends RuntimeException> unreadable,
            String message,
            Function<String, T> reading) {
        if (isEmpty(answer)) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.apply(answer.strip()));
        } catch (RuntimeException failure) {
            if (!unreadable.isInstance(failure)) {
                throw failure;
            }
            wrong(field, message);
            return Optional.empty();
        }
    }

    private boolean check(String field, boolean right, String message) {
        if (!right) {
            wrong(field, message);
        }
        return right;
    }

    private static boolean isEmpty(@Nullable String answer) {
        return answer == null || answer.isBlank();
    }
}
