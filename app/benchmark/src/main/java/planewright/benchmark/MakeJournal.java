package planewright.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import planewright.app.synthetic.SyntheticJournal;

/** Writes a synthetic journal: the words are its folder, how many builds, how many entries in each, how many pictures in all. */
public final class MakeJournal {
    private MakeJournal() {}

    public static void main(String[] words) throws IOException {
        if (words.length != 4) {
            throw new IllegalArgumentException(words.length
                    + " words; accepted: FOLDER BUILDS ENTRIES-A-BUILD PICTURES, such as big 200 500 5000");
        }
        SyntheticJournal.of(number(words[1]), number(words[2]), number(words[3]))
                .write(Path.of(words[0]));
    }

    private static int number(String word) {
        return Integer.parseInt(word);
    }
}
