package org.coldpleat.shared.casefile.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.SchemaNode;

/**
 * The way from the top of a file to a field, such as {@code candidates[2].medium.thickness}. A step is a key, or the
 * number of a list entry.
 */
public record CasePath(List<Step> steps) {
    private static final Pattern PART = Pattern.compile("([^.\\[\\]]+)((?:\\[\\d{1,6}])*)");

    /** One step: a key, or an entry where the key is empty. */
    public record Step(String key, int entry) {
        public boolean isEntry() {
            return key.isEmpty();
        }
    }

    public CasePath {
        steps = List.copyOf(steps);
    }

    public static CasePath of(String path) {
        List<Step> steps = new ArrayList<>();
        for (String part : path.split("\\.", -1)) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("path must be keys joined by points, was " + path);
            }
            steps.add(new Step(matcher.group(1), 0));
            for (String entry : matcher.group(2).split("[\\[\\]]+", -1)) {
                if (!entry.isEmpty()) {
                    steps.add(new Step("", Integer.parseInt(entry)));
                }
            }
        }
        return new CasePath(steps);
    }

    /** What the catalog says of the field; empty if it has no such field. Parts of a quantity are texts of their own. */
    public Optional<SchemaNode> schema(SchemaNode root) {
        SchemaNode at = root;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (step.isEntry()) {
                if (at.items().isEmpty()) {
                    return Optional.empty();
                }
                at = at.items().get();
            } else if (at.type() == SchemaNode.Type.QUANTITY
                    && i + 1 == steps.size()
                    && SchemaNode.QUANTITY_KEYS.contains(step.key())) {
                return Optional.of(at);
            } else {
                SchemaNode below = at.properties().get(step.key());
                if (below == null) {
                    return Optional.empty();
                }
                at = below;
            }
        }
        return Optional.of(at);
    }

    /** True if the last step names a part of the quantity before it. */
    public boolean isPartOfQuantity(SchemaNode root) {
        return steps.size() > 1
                && new CasePath(steps.subList(0, steps.size() - 1))
                        .schema(root)
                        .map(node -> node.type() == SchemaNode.Type.QUANTITY)
                        .orElse(false);
    }

    public CasePath head(int length) {
        return new CasePath(steps.subList(0, length));
    }

    public CasePath key(String key) {
        List<Step> longer = new ArrayList<>(steps);
        longer.add(new Step(key, 0));
        return new CasePath(longer);
    }

    public CasePath entry(int number) {
        List<Step> longer = new ArrayList<>(steps);
        longer.add(new Step("", number));
        return new CasePath(longer);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Step step : steps) {
            if (step.isEntry()) {
                text.append('[').append(step.entry()).append(']');
            } else {
                text.append(text.length() == 0 ? "" : ".").append(step.key());
            }
        }
        return text.toString();
    }
}
