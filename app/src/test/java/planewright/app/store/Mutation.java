package planewright.app.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/** What may befall a file on a bad disk, in a bad editor or by a bad will. */
enum Mutation {
    BITS {
        @Override
        byte[] of(byte[] content, Random random) {
            var bytes = content.clone();
            for (int left = 1 + random.nextInt(8); left > 0; left--) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            return bytes;
        }
    },
    CUT {
        @Override
        byte[] of(byte[] content, Random random) {
            return Arrays.copyOf(content, random.nextInt(content.length));
        }
    },
    HOLE {
        @Override
        byte[] of(byte[] content, Random random) {
            int from = random.nextInt(content.length);
            int to = Math.min(content.length, from + 1 + random.nextInt(60));
            return joined(Arrays.copyOf(content, from), Arrays.copyOfRange(content, to, content.length));
        }
    },
    /** A block that the file system lost is read as zeros. */
    ZEROS {
        @Override
        byte[] of(byte[] content, Random random) {
            var bytes = content.clone();
            int from = random.nextInt(bytes.length);
            Arrays.fill(bytes, from, Math.min(bytes.length, from + 1 + random.nextInt(512)), (byte) 0);
            return bytes;
        }
    },
    /** RFC 3629, section 3: a lone continuation, an overlong form, a surrogate, a sequence that is cut, octets that never are. */
    NO_UTF8 {
        private final List<byte[]> wrong = List.of(
                octets(0x80), octets(0xC0, 0xAF), octets(0xED, 0xA0, 0x80), octets(0xE2, 0x82), octets(0xFE, 0xFF));

        @Override
        byte[] of(byte[] content, Random random) {
            int at = random.nextInt(content.length);
            return joined(
                    Arrays.copyOf(content, at),
                    wrong.get(random.nextInt(wrong.size())),
                    Arrays.copyOfRange(content, at, content.length));
        }
    },
    KEY_TWICE {
        @Override
        byte[] of(byte[] content, Random random) {
            var lines = new ArrayList<>(List.of(text(content).split("\n")));
            var keyed = lines.stream()
                    .filter(line -> line.matches("\\s*\"[^\"]+\": \"?[^{\\[]*,"))
                    .toList();
            var line = keyed.get(random.nextInt(keyed.size()));
            lines.add(lines.indexOf(line), line);
            return bytes(String.join("\n", lines));
        }
    },
    DEEP {
        @Override
        byte[] of(byte[] content, Random random) {
            int depth = 1 << random.nextInt(17);
            return bytes(
                    text(content).replaceFirst("\\{", "{\"deep\": " + "[".repeat(depth) + "]".repeat(depth) + ","));
        }
    },
    HUGE_NUMBER {
        private final List<String> huge =
                List.of("1e999999999", "-1e-999999999", "9".repeat(400), "0." + "0".repeat(5_000) + "1", "2147483648");

        @Override
        byte[] of(byte[] content, Random random) {
            var number = huge.get(random.nextInt(huge.size()));
            var places = NUMBER.matcher(text(content)).results().toList();
            if (places.isEmpty()) {
                return HUGE_TEXT.of(content, random);
            }
            var place = places.get(random.nextInt(places.size()));
            var quote = random.nextBoolean() ? "\"" : "";
            return bytes(new StringBuilder(text(content))
                    .replace(place.start(), place.end(), quote + number + quote)
                    .toString());
        }
    },
    HUGE_TEXT {
        @Override
        byte[] of(byte[] content, Random random) {
            return changed(
                    content, random, () -> JsonNodeFactory.instance.textNode("x".repeat(1 << random.nextInt(21))));
        }
    },
    OTHER_TYPE {
        @Override
        byte[] of(byte[] content, Random random) {
            var nodes = JsonNodeFactory.instance;
            var others = List.of(
                    nodes.nullNode(),
                    nodes.booleanNode(true),
                    nodes.numberNode(-1),
                    nodes.numberNode(BigInteger.TEN.pow(40)),
                    nodes.textNode(""),
                    nodes.textNode("../../../etc/passwd"),
                    nodes.textNode("NaN\u0000\u202E"),
                    nodes.arrayNode(),
                    nodes.arrayNode().add(nodes.arrayNode().add(1)),
                    nodes.objectNode(),
                    nodes.objectNode().put("id", 7));
            return changed(content, random, () -> others.get(random.nextInt(others.size())));
        }
    },
    FIELD_GONE {
        @Override
        byte[] of(byte[] content, Random random) {
            return changed(content, random, () -> null);
        }
    };

    private static final Pattern NUMBER = Pattern.compile("(?<=: )(\"[0-9.]+\"|-?[0-9.]+)");

    abstract byte[] of(byte[] content, Random random);

    private interface Source {
        JsonNode next();
    }

    /** Puts something else in one place of the tree. */
    private static byte[] changed(byte[] content, Random random, Source source) {
        ObjectNode tree;
        try {
            tree = JsonFiles.parse(text(content));
        } catch (Unreadable unsound) {
            throw new IllegalArgumentException("only sound files are spoilt", unsound);
        }
        var places = new ArrayList<Place>();
        places(tree, places);
        places.get(random.nextInt(places.size())).put(source.next());
        return bytes(JsonFiles.text(tree));
    }

    /** A field of an object or an element of an array. */
    private record Place(JsonNode parent, String name, int index) {
        void put(JsonNode node) {
            if (parent instanceof ObjectNode object) {
                object.remove(name);
                if (node != null) {
                    object.set(name, node);
                }
            } else if (parent instanceof ArrayNode array) {
                array.remove(index);
                if (node != null) {
                    array.insert(index, node);
                }
            }
        }
    }

    private static void places(JsonNode node, List<Place> places) {
        node.fieldNames().forEachRemaining(name -> places.add(new Place(node, name, 0)));
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                places.add(new Place(node, "", i));
            }
        }
        node.forEach(child -> places(child, places));
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] octets(int... octets) {
        var bytes = new byte[octets.length];
        for (int i = 0; i < octets.length; i++) {
            bytes[i] = (byte) octets[i];
        }
        return bytes;
    }

    private static byte[] joined(byte[]... parts) {
        var joined = new ByteArrayOutputStream();
        for (var part : parts) {
            joined.writeBytes(part);
        }
        return joined.toByteArray();
    }
}
