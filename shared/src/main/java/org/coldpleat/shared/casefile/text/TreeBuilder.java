package org.coldpleat.shared.casefile.text;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** Builds the tree of one YAML document; anchors, aliases, tags and deep nesting are refused. */
public final class TreeBuilder {
    private static final int DEEPEST = 30;

    private final PlainLists source;
    private final FileProblems problems;
    private final Parser events;
    private boolean anchorNamed;
    private boolean tagNamed;

    private TreeBuilder(PlainLists source, FileProblems problems) {
        this.source = source;
        this.problems = problems;
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        // what builds objects out of events is not wanted, and takes time to be set up
        this.events = new ParserImpl(new StreamReader(new StringReader(source.text())), options);
    }

    /** The tree of the text; empty if it holds nothing or is no YAML, or is refused, with the problems noted. */
    public static Optional<Tree> build(String text, FileProblems problems) {
        PlainLists source = PlainLists.of(text);
        try {
            return new TreeBuilder(source, problems).document();
        } catch (TooDeep e) {
            problems.add(e.line, 0, "yaml.tooDeep", Integer.toString(DEEPEST));
        } catch (MarkedYAMLException e) {
            syntax(e, source, problems);
        } catch (YAMLException e) {
            problems.add(0, 0, "yaml.syntax", String.valueOf(e.getMessage()));
        }
        return Optional.empty();
    }

    private Optional<Tree> document() throws TooDeep {
        Optional<Tree> tree = Optional.empty();
        boolean seen = false;
        while (events.peekEvent() != null) {
            Event event = events.getEvent();
            if (event instanceof DocumentStartEvent start && seen) {
                problems.add(line(start.getStartMark()), 0, "yaml.severalDocuments");
                return Optional.empty();
            }
            if (event instanceof NodeEvent) {
                seen = true;
                tree = Optional.of(node(event, 0));
            }
        }
        return problems.isEmpty() ? tree : Optional.empty();
    }

    private Tree node(Event event, int depth) throws TooDeep {
        Mark mark = event.getStartMark();
        if (depth > DEEPEST) {
            throw new TooDeep(line(mark));
        }
        refuse((NodeEvent) event, mark);
        if (event instanceof ScalarEvent scalar) {
            boolean plain = scalar.getScalarStyle() == ScalarStyle.PLAIN;
            return new Scalar(
                    scalar.getValue(), plain, line(mark), column(mark), source.index(mark), end(scalar, mark));
        }
        if (event instanceof SequenceStartEvent start) {
            return items(start, depth);
        }
        if (event instanceof MappingStartEvent start) {
            return keys(start, depth);
        }
        int at = source.index(mark);
        return new Scalar("", true, line(mark), column(mark), at, at);
    }

    private Items items(SequenceStartEvent start, int depth) throws TooDeep {
        Mark mark = start.getStartMark();
        List<Tree> items = new ArrayList<>();
        Event event = events.getEvent();
        while (!(event instanceof SequenceEndEvent)) {
            items.add(node(event, depth + 1));
            event = events.getEvent();
        }
        int at = source.index(mark);
        int last = items.isEmpty() ? at : items.get(items.size() - 1).end();
        int end = start.isFlow() ? source.index(event.getEndMark()) : last;
        String raw = start.isFlow() ? source.slice(at, end) : "";
        return new Items(List.copyOf(items), raw, line(mark), column(mark), at, end);
    }

    private Keys keys(MappingStartEvent start, int depth) throws TooDeep {
        Mark mark = start.getStartMark();
        List<Pair> pairs = new ArrayList<>();
        Event event = events.getEvent();
        while (!(event instanceof MappingEndEvent)) {
            Tree key = node(event, depth + 1);
            Tree value = node(events.getEvent(), depth + 1);
            if (key instanceof Scalar scalar) {
                pairs.add(new Pair(scalar, value));
            } else {
                problems.add(key.line(), key.column(), "yaml.keyIsNoWord");
            }
            event = events.getEvent();
        }
        int at = source.index(mark);
        int last = pairs.isEmpty() ? at : pairs.get(pairs.size() - 1).value().end();
        int end = start.isFlow() ? source.index(event.getEndMark()) : last;
        return new Keys(List.copyOf(pairs), start.isFlow(), line(mark), column(mark), at, end);
    }

    private void refuse(NodeEvent event, Mark mark) {
        boolean anchored = event instanceof AliasEvent || event.getAnchor() != null;
        if (anchored && !anchorNamed) {
            anchorNamed = true;
            problems.add(line(mark), column(mark), "yaml.anchor", event.getAnchor());
        }
        String tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof SequenceStartEvent list
                        ? list.getTag()
                        : event instanceof MappingStartEvent map ? map.getTag() : null;
        if (tag != null && !tagNamed) {
            tagNamed = true;
            problems.add(line(mark), column(mark), "yaml.tag", tag);
        }
    }

    /** Where a value ends; the blank lines behind a text block are not part of it. */
    private int end(ScalarEvent scalar, Mark start) {
        int at = source.index(start);
        String text = source.slice(at, source.index(scalar.getEndMark()));
        boolean block = scalar.getScalarStyle() == ScalarStyle.FOLDED || scalar.getScalarStyle() == ScalarStyle.LITERAL;
        return at + (block ? text.stripTrailing() : text).length();
    }

    private int line(Mark mark) {
        return mark.getLine() + 1;
    }

    private int column(Mark mark) {
        return source.column(mark);
    }

    private static void syntax(MarkedYAMLException e, PlainLists source, FileProblems problems) {
        Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
        String problem = String.valueOf(e.getProblem());
        String context = String.valueOf(e.getContext());
        String code = "yaml.syntax";
        int open = mark == null ? -1 : source.openQuote(mark.getLine());
        if (open >= 0) {
            problems.add(open + 1, 0, "yaml.quoteOpen", source.line(open).strip());
            return;
        }
        if (context.contains("quoted scalar")) {
            code = "yaml.quoteOpen";
            mark = e.getContextMark();
        } else if (problem.contains("mapping values are not allowed")) {
            code = "yaml.colon";
        } else if (problem.contains("could not find expected ':'")) {
            code = "yaml.colonMissing";
            mark = e.getContextMark() == null ? mark : e.getContextMark();
        } else if (problem.contains("expected ',' or")) {
            code = "yaml.bracket";
            mark = e.getContextMark() == null ? mark : e.getContextMark();
        } else if (problem.contains("block end") || problem.contains("sequence entries are not allowed")) {
            code = "yaml.indent";
        } else if (problem.contains("cannot start any token")
                || context.contains("scanning an alias")
                || context.contains("scanning an anchor")
                || problem.contains("alphabetic or numeric")) {
            code = "yaml.startCharacter";
        }
        if (mark == null) {
            problems.add(0, 0, code, problem);
            return;
        }
        String line = source.line(mark.getLine()).strip();
        problems.add(
                mark.getLine() + 1,
                source.column(mark),
                code,
                line.length() > 80 ? line.substring(0, 80) : line,
                problem.toLowerCase(Locale.ROOT));
    }

    /** Ends the reading of a tree that is nested too deeply. */
    private static final class TooDeep extends Exception {
        private final int line;

        TooDeep(int line) {
            super("nested too deeply", null, false, false);
            this.line = line;
        }
    }
}
