package evenhand.terminal;

import evenhand.forms.CsvOfFiles;
import evenhand.forms.JsonLines;
import evenhand.quantity.Unseen;
import evenhand.terminal.asked.FormOptions;
import evenhand.terminal.asked.InputFile;
import evenhand.terminal.asked.Mistake;
import evenhand.terminal.asked.OptionText;
import evenhand.terminal.asked.ProgressLine;
import evenhand.terminal.asked.Status;
import evenhand.terminal.page.Console;
import evenhand.terminal.page.Page;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One question to several files. Each is asked by itself, as many at once as there are processors, and what it answers is told in
 * the order of the files: an answer a line in JSON, one table in CSV, below a heading for people.
 */
final class Batch {
    /** Asks one of the files; what it answers and complains of goes to this console. */
    interface Ask {
        Status about(String file, Console console);
    }

    /** What came of a file. */
    private record Told(String file, Status status, String answer, List<String> complaints) {
        /** Whether this is what was told of the other, and most likely has nothing to do with either file. */
        boolean isRefusedAs(Told other) {
            return status == Status.WRONG && answer.isEmpty() && complaints.equals(other.complaints);
        }
    }

    private final String command;
    private final List<String> files;
    private final FormOptions.Form form;
    private final Console console;
    private final CsvOfFiles table = new CsvOfFiles();
    private boolean begun;

    /** @param command with the program's name before it */
    Batch(String command, List<String> files, FormOptions.Form form, Console console) throws Mistake {
        this.command = command;
        this.files = files;
        this.form = form;
        this.console = console;
        InputFile.requireReadable(files);
        for (String file : files) {
            Path path = OptionText.file(file);
            if (!InputFile.isStandard(path) && !file.matches(".*[./\\\\].*") && !Files.exists(path)) {
                throw new Mistake(
                        "\"" + file + "\" is one thing too many, or a file that is not there; words that belong"
                                + " together stand in quotes");
            }
        }
    }

    /** Asks all; how it ends is how the worst of them does. */
    Status run(Ask ask) {
        int workers = Math.min(files.size(), Runtime.getRuntime().availableProcessors());
        ExecutorService several = Executors.newFixedThreadPool(workers, work -> {
            Thread worker = new Thread(work, "file");
            worker.setDaemon(true);
            return worker;
        });
        try (ProgressLine progress = new ProgressLine(console, "answering " + files.size() + " files")) {
            AtomicInteger done = new AtomicInteger();
            List<CompletableFuture<Told>> answers = new ArrayList<>();
            for (String file : files) {
                answers.add(CompletableFuture.supplyAsync(
                        () -> {
                            Told told = asked(ask, file);
                            progress.at((double) done.incrementAndGet() / files.size());
                            return told;
                        },
                        several));
            }
            return inOrder(answers, progress);
        } finally {
            several.shutdownNow();
        }
    }

    private Told asked(Ask ask, String file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Status status = ask.about(file, console.aside(out, err));
        return new Told(
                file,
                status,
                out.toString(StandardCharsets.UTF_8),
                err.toString(StandardCharsets.UTF_8).lines().toList());
    }

    /** Tells each as soon as it and all before it are there. What is refused alike in every file is the command line's fault. */
    private Status inOrder(List<CompletableFuture<Told>> answers, ProgressLine progress) {
        Status worst = Status.DONE;
        List<Told> alike = new ArrayList<>();
        boolean allAlike = true;
        for (CompletableFuture<Told> answer : answers) {
            Told told = answer.join();
            worst = worst.compareTo(told.status()) < 0 ? told.status() : worst;
            allAlike &= told.isRefusedAs(alike.isEmpty() ? told : alike.get(0));
            alike.add(told);
            if (!allAlike) {
                alike.forEach(one -> progress.aside(() -> tell(one)));
                alike.clear();
            }
        }
        progress.close();
        if (allAlike) {
            alike.get(0).complaints().forEach(console::complain);
        }
        return worst;
    }

    private void tell(Told told) {
        told.complaints().forEach(line -> console.complain(ofFile(line, told.file())));
        if (told.answer().isEmpty()) {
            if (form == FormOptions.Form.JSON) {
                String name = command.substring(command.indexOf(' ') + 1);
                console.answer(JsonLines.none(name, told.file(), reason(told.status()), told.complaints()));
            }
            return;
        }
        switch (form) {
            case JSON -> console.answer(JsonLines.of(told.file(), told.answer()));
            case CSV -> console.answer(table.with(told.file(), told.answer()));
            case PEOPLE -> console.answer(heading(told.file()) + told.answer());
        }
    }

    private String heading(String file) {
        Page page = new Page(console);
        if (begun) {
            page.blank();
        }
        begun = true;
        page.title("== " + Unseen.shown(file));
        page.blank();
        return page.text();
    }

    /** A line that does not begin with the name of a file gets it behind the program's own. */
    private String ofFile(String line, String file) {
        for (String who : List.of(command + ": ", "evenhand: ")) {
            if (line.startsWith(who)) {
                return who + file + ": " + line.substring(who.length());
            }
        }
        return line;
    }

    private static String reason(Status status) {
        return switch (status) {
            case WRONG -> "wrong";
            case DEFECT -> "defect";
            case DONE, NO_ANSWER -> "nothingToAnswer";
        };
    }
}
