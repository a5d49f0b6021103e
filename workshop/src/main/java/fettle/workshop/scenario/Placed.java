package fettle.workshop.scenario;

import java.util.List;
import java.util.Map;

/** A JSON value and where in its file it stands. */
sealed interface Placed {
    Place place();

    /** How messages call a value of this kind. */
    String kind();

    /**
     * A place in a file.
     *
     * @param line from 1
     * @param column from 1
     */
    record Place(int line, int column) {}

    /** An object; fields in the order of the file. */
    record Fields(Map<String, Placed> values, Place place) implements Placed {
        @Override
        public String kind() {
            return "an object";
        }
    }

    /** An array. */
    record Items(List<Placed> values, Place place) implements Placed {
        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A number. */
    record Figure(double value, Place place) implements Placed {
        @Override
        public String kind() {
            return "a number";
        }
    }

    /** A string. */
    record Text(String value, Place place) implements Placed {
        @Override
        public String kind() {
            return "a text";
        }
    }

    /** {@code true}, {@code false} or {@code null}. */
    record Word(String value, Place place) implements Placed {
        @Override
        public String kind() {
            return value;
        }
    }
}
