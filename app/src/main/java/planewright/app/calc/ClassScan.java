package planewright.app.calc;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks in a class file for calls that no calculator makes: those that end the program or start another. Calls by reflection it does not
 * see; a plugin that wants to hurt can, which is why each is asked about before it is trusted.
 */
final class ClassScan {
    private static final int MAGIC = 0xCAFEBABE;

    private static final Map<String, String> FORBIDDEN = Map.of(
            "java/lang/System.exit", "ends the program",
            "java/lang/Runtime.exit", "ends the program",
            "java/lang/Runtime.halt", "ends the program",
            "java/lang/Runtime.exec", "starts another program",
            "java/lang/ProcessBuilder.start", "starts another program");

    private final Map<Integer, String> texts = new HashMap<>();
    private final Map<Integer, Integer> names = new HashMap<>();
    private final List<int[]> methods = new ArrayList<>();

    private ClassScan() {}

    /** What a class does that it must not, such as {@code System.exit, which ends the program}; empty for nothing. */
    static Optional<String> forbidden(byte[] classFile) throws IOException {
        var scan = new ClassScan();
        scan.read(new DataInputStream(new ByteArrayInputStream(classFile)));
        return scan.methods.stream()
                .map(scan::called)
                .filter(FORBIDDEN::containsKey)
                .findFirst()
                .map(call -> PluginWords.say(
                        "{0}, which {1}",
                        call.substring(call.lastIndexOf('/') + 1), PluginWords.say(FORBIDDEN.get(call))));
    }

    private String called(int[] method) {
        return texts.get(names.get(method[0])) + "." + texts.get(names.get(method[1]));
    }

    /** The constant pool: The Java Virtual Machine Specification, 4.4. */
    private void read(DataInputStream in) throws IOException {
        if (in.readInt() != MAGIC) {
            throw new IOException("no class file");
        }
        in.skipNBytes(4);
        int count = in.readUnsignedShort();
        for (int index = 1; index < count; index++) {
            int tag = in.readUnsignedByte();
            switch (tag) {
                case 1 -> texts.put(index, in.readUTF());
                case 3, 4, 17, 18 -> in.skipNBytes(4);
                case 5, 6 -> {
                    in.skipNBytes(8);
                    index++;
                }
                case 7 -> names.put(index, in.readUnsignedShort());
                case 12 -> {
                    names.put(index, in.readUnsignedShort());
                    in.skipNBytes(2);
                }
                case 10, 11 -> methods.add(new int[] {in.readUnsignedShort(), in.readUnsignedShort()});
                case 9 -> in.skipNBytes(4);
                case 15 -> in.skipNBytes(3);
                case 8, 16, 19, 20 -> in.skipNBytes(2);
                default -> throw new IOException("a constant of the unknown kind " + tag);
            }
        }
    }
}
