package planewright.app.calc;

import java.util.List;

/** What plugins see of the program: Java itself, the API and the libraries that are part of it, and nothing else. */
final class ProgramView extends ClassLoader {
    private static final List<String> SHOWN =
            List.of("planewright.api.", "javax.measure.", "tech.units.", "tech.uom.", "org.pf4j.");

    private final ClassLoader program = ProgramView.class.getClassLoader();

    ProgramView() {
        super(ClassLoader.getPlatformClassLoader());
    }

    static boolean shows(String className) {
        return SHOWN.stream().anyMatch(className::startsWith);
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        if (shows(name)) {
            return program.loadClass(name);
        }
        throw new ClassNotFoundException(name + " is not part of the API; a plugin must bring what it needs");
    }
}
