package planewright.app.ui.help;

import java.util.Optional;
import java.util.stream.Stream;
import planewright.app.ui.common.Icons;

/** A chapter of the guide, with the page of the window that it is about, in the order in which the guide lists them. */
public enum Chapter {
    SHELF("shelf", Icons.PLANFORM),
    LOG("log", Icons.LOG),
    CAPTURE("capture", Icons.EDIT),
    BENCH("bench", Icons.BENCH),
    PICTURES("pictures-page", Icons.PICTURES),
    MEASUREMENTS("measurements-page", Icons.MEASUREMENTS),
    PARTS("parts-page", Icons.PARTS),
    PLANFORM("planform-page", Icons.PLANFORM),
    SET_UP("set-up-page", Icons.SET_UP),
    CALCULATORS("calculators", Icons.CALCULATORS),
    PLUGINS("plugins", Icons.CALCULATORS),
    TEMPLATES("templates", Icons.TEMPLATES),
    START("start", Icons.ADD),
    COMPARE("compare", Icons.COMPARE),
    ACROSS("across", Icons.ACROSS),
    SEARCH("search-page", Icons.SEARCH),
    EXCHANGE("exchange", Icons.EXCHANGE),
    JOURNALS("journals", Icons.JOURNALS),
    BIN("bin", Icons.BIN),
    NOTICES("notices", Icons.NOTICES),
    VIEW("view", Icons.VIEW);

    private final String component;
    private final Icons sign;

    Chapter(String component, Icons sign) {
        this.component = component;
        this.sign = sign;
    }

    /** What the guide's files are called, without their endings. */
    public String file() {
        return component.replaceFirst("-page$", "");
    }

    Icons sign() {
        return sign;
    }

    /** The chapter about the component of that name. */
    public static Optional<Chapter> about(String component) {
        return Stream.of(values())
                .filter(chapter -> chapter.component.equals(component))
                .findFirst();
    }
}
