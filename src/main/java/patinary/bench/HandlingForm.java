package patinary.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What was cut and mixed, as typed. */
class HandlingForm {

    /** Cuts alike from one sheet. */
    static class CutLine extends BenchForm.UseLine {
        /** The id of the supply, or the id and the name of a motif with a bar between. */
        public String what = "";

        public String times = "";

        CutLine() {
            how = "EXACT";
        }

        @Override
        boolean isEmpty() {
            return what.isBlank() && quantity.isBlank();
        }
    }

    /** A pot, or a cup poured from one. Its share, only and parts say which pieces it went on. */
    static class PotLine extends BenchForm.UseLine {
        public String name = "";
        /** The number of the earlier pot, or nothing. */
        public String from = "";

        public String poured = "";
        public List<Inside> inside = new ArrayList<>();
        public String water = "";
        public String made = "";
        public String rest = "";
        public String then = Then.THROWN.name();
        public String keptAs = UUID.randomUUID().toString();
        public String keptName = "";
        public String useBy = "";

        static PotLine fresh() {
            PotLine line = new PotLine();
            line.inside.add(new Inside());
            return line;
        }

        @Override
        boolean isEmpty() {
            return from.isBlank()
                    && poured.isBlank()
                    && water.isBlank()
                    && made.isBlank()
                    && rest.isBlank()
                    && inside.stream().allMatch(Inside::isEmpty);
        }
    }

    /** An ingredient. */
    static class Inside {
        public String supply = "";
        public String quantity = "";
        public String how = "EXACT";

        boolean isEmpty() {
            return supply.isBlank() && quantity.isBlank();
        }
    }

    /** What became of the leftover. */
    enum Then {
        THROWN,
        KEPT
    }

    public List<CutLine> cuts = new ArrayList<>();
    public List<PotLine> pots = new ArrayList<>();

    /** Carries out a button of this part of the form; says whether it is one of its own. */
    boolean act(String act) {
        if (act.equals("cut")) {
            cuts.add(new CutLine());
        } else if (act.equals("pot")) {
            pots.add(PotLine.fresh());
        } else if (act.startsWith("inside-")) {
            number(act, pots.size()).forEach(i -> pots.get(i).inside.add(new Inside()));
        } else if (act.startsWith("drop-cut-")) {
            number(act, cuts.size()).forEach(i -> cuts.remove(i.intValue()));
        } else if (act.startsWith("drop-pot-")) {
            number(act, pots.size()).forEach(i -> pots.remove(i.intValue()));
        } else {
            return false;
        }
        return true;
    }

    private static List<Integer> number(String act, int size) {
        String number = act.substring(act.lastIndexOf('-') + 1);
        return number.matches("[0-9]{1,4}") && Integer.parseInt(number) < size
                ? List.of(Integer.parseInt(number))
                : List.of();
    }
}
