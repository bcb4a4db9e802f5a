package patinary.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads one file row by row: UTF-8, RFC 4180, with a header row whose columns may stand in any order. */
final class CsvFile {

    /** Takes the cells of one row in the order of the wanted columns, and the line where it starts. */
    interface Rows {
        void row(long line, List<String> cells);
    }

    static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private final ArchiveSource source;
    private final ErrorList errors;

    CsvFile(ArchiveSource source, ErrorList errors) {
        this.source = source;
        this.errors = errors;
    }

    void read(String file, List<String> columns, Rows rows) throws IOException {
        read(file, columns, Set.of(), rows);
    }

    /** @param later columns that a file of an earlier release lacks; their cells are then empty */
    void read(String file, List<String> columns, Set<String> later, Rows rows) throws IOException {
        long line = 1;
        try (Reader reader = text(file);
                CSVParser parser =
                        CSVParser.builder().setReader(reader).setFormat(FORMAT).get()) {
            Iterator<CSVRecord> records = parser.iterator();
            int width = 0;
            int[] positions = null;
            while (records.hasNext()) {
                CSVRecord record = records.next();
                if (positions == null) {
                    if (!headerIsRight(file, record.toList(), columns, later)) {
                        return;
                    }
                    width = record.size();
                    positions =
                            columns.stream().mapToInt(record.toList()::indexOf).toArray();
                } else if (record.size() != width) {
                    errors.add(ArchiveError.of(file, line, "", "", "cells", "" + width, "" + record.size()));
                } else {
                    rows.row(
                            line,
                            IntStream.of(positions)
                                    .mapToObj(at -> at < 0 ? "" : record.get(at))
                                    .toList());
                }
                line = parser.getCurrentLineNumber() + 1;
            }
            if (positions == null) {
                errors.add(ArchiveError.of(file, 1, "", "", "header"));
            }
        } catch (UncheckedIOException | IOException broken) {
            told(file, line, broken);
        }
    }

    /** A file that is no text or no CSV is the archive's fault; anything else is the machine's. */
    private void told(String file, long line, Exception broken) throws IOException {
        Throwable cause = broken instanceof UncheckedIOException unchecked ? unchecked.getCause() : broken;
        if (cause instanceof CharacterCodingException) {
            errors.add(ArchiveError.of(file, line, "", "", "utf-8"));
        } else if (cause instanceof org.apache.commons.csv.CSVException) {
            errors.add(ArchiveError.of(file, line, "", "", "csv"));
        } else {
            throw new IOException(broken);
        }
    }

    private Reader text(String file) throws IOException {
        BufferedReader reader = new BufferedReader(new InputStreamReader(
                source.open(file),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)));
        reader.mark(1);
        // Some spreadsheets put a byte order mark in front.
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        return reader;
    }

    private boolean headerIsRight(String file, List<String> header, List<String> columns, Set<String> later) {
        Set<String> seen = new HashSet<>();
        boolean right = true;
        for (String name : header) {
            if (!columns.contains(name) || !seen.add(name)) {
                errors.add(
                        ArchiveError.of(file, 1, name, "", columns.contains(name) ? "column-twice" : "column-unknown"));
                right = false;
            }
        }
        for (String name : columns) {
            if (!seen.contains(name) && !later.contains(name)) {
                errors.add(ArchiveError.of(file, 1, name, "", "column-missing"));
                right = false;
            }
        }
        return right;
    }
}
