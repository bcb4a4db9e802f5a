package patinary.bringing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** How a file is to be read, as typed. */
class MappingForm {

    public String encoding = "";
    public String delimiter = "";
    public String leadIn = "";
    public boolean header;
    public String dates = "";
    public String numbers = "";
    public String spread = "";
    public boolean sent;
    public String channel = "";
    /** The name under which it is saved; empty where it is not. */
    public String name = "";
    /** For each meaning, in their order, the place of its column from 0, or empty. */
    public List<String> columns = new ArrayList<>(Collections.nCopies(Meaning.values().length, ""));

    static MappingForm of(Mapping mapping) {
        MappingForm form = new MappingForm();
        DateForm dates = mapping.dates();
        NumberForm numbers = mapping.numbers();
        UUID channel = mapping.channel();
        form.encoding = mapping.encoding().name();
        form.delimiter = mapping.delimiter().name();
        form.leadIn = String.valueOf(mapping.leadIn());
        form.header = mapping.header();
        form.dates = dates == null ? "" : dates.name();
        form.numbers = numbers == null ? "" : numbers.name();
        form.spread = mapping.eachRow() ? "EACH_ROW" : "ONCE";
        form.sent = mapping.sent();
        form.channel = channel == null ? "" : channel.toString();
        for (Map.Entry<Meaning, Integer> column : mapping.columns().entrySet()) {
            form.columns.set(column.getKey().ordinal(), column.getValue().toString());
        }
        return form;
    }
}
