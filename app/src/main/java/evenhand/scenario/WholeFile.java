package evenhand.scenario;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes a file whole or not at all: into a new one beside it, whose name nobody can foresee and that is created or refused, never
 * followed where a link stands; then, when it is on the disk, that takes the place. A file that was there keeps its permissions
 * and, where the system lets us, its owner and group; a new one has those that the person's umask gives.
 */
public final class WholeFile {
    /** A write ends within seconds; what is left after so long was left by a program that was killed. */
    private static final Duration LEFT_BEHIND = Duration.ofHours(1);

    private static final String BEGIN = ".evenhand-";
    private static final String END = ".part";
    private static final Pattern OURS = Pattern.compile(Pattern.quote(BEGIN) + "[0-9a-f]{16}" + Pattern.quote(END));
    private static final Set<PosixFilePermission> ANYONE_WRITES = EnumSet.of(
            PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
    private static final SecureRandom RANDOM = new SecureRandom();

    private WholeFile() {}

    /**
     * Writes the bytes in the place of a file, or as a new one.
     *
     * @throws IOException if it cannot be written, or is write-protected; then what was there is as it was
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        write(file, bytes, Optional.empty(), Optional.empty());
    }

    /**
     * The same.
     *
     * @param kept where what was there is kept
     * @param expected what must still be there
     * @return whether it was, and the file was written
     */
    static boolean write(Path file, byte[] bytes, Optional<Path> kept, Optional<byte[]> expected) throws IOException {
        Path target = file.toAbsolutePath();
        refuse(target);
        Optional<PosixFileAttributes> before = attributes(target);
        Path fresh = create(target, bytes, before);
        try {
            if (expected.isPresent() && !Arrays.equals(Files.readAllBytes(target), expected.get())) {
                return false;
            }
            if (kept.isPresent() && Files.exists(target)) {
                Path copy = create(kept.get(), Files.readAllBytes(target), before);
                try {
                    move(copy, kept.get());
                } finally {
                    Files.deleteIfExists(copy);
                }
            }
            move(fresh, target);
            return true;
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /** Whether somebody took away the right to write it: replacing it would need no such right, and is not what they want. */
    public static boolean isProtected(Path file) {
        // Who may do anything, may write anywhere: then the file's own word counts.
        return Files.exists(file)
                && (!Files.isWritable(file)
                        || attributes(file.toAbsolutePath())
                                .map(of -> of.permissions().stream().noneMatch(ANYONE_WRITES::contains))
                                .orElse(false));
    }

    /** Why something cannot be done with a file, in words. */
    public static String why(Exception cannot) {
        if (cannot instanceof FileSystemException file && file.getReason() != null) {
            return file.getReason();
        }
        if (cannot instanceof AccessDeniedException || cannot instanceof ReadOnlyFileSystemException) {
            return "nothing may be written there";
        }
        if (cannot instanceof NoSuchFileException) {
            return "the folder is not there any more";
        }
        String message = cannot.getMessage();
        return message == null ? "the disk refuses" : message;
    }

    private static void refuse(Path target) throws IOException {
        if (Files.isDirectory(target)) {
            throw new FileSystemException(target.toString(), null, "it is a folder");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new FileSystemException(target.toString(), null, "it is no ordinary file");
        }
        if (isProtected(target)) {
            throw new FileSystemException(target.toString(), null, "it is write-protected");
        }
    }

    private static Path create(Path target, byte[] bytes, Optional<PosixFileAttributes> before) throws IOException {
        Path folder = target.getParent();
        if (folder == null) {
            throw new FileSystemException(target.toString(), null, "it is a folder");
        }
        byte[] name = new byte[8];
        RANDOM.nextBytes(name);
        Path fresh = folder.resolve(BEGIN + HexFormat.of().formatHex(name) + END);
        // With the permissions from the start: nobody shall read meanwhile what they may not read before and after.
        FileAttribute<?>[] permissions = before.stream()
                .map(of -> PosixFilePermissions.asFileAttribute(of.permissions()))
                .toArray(FileAttribute<?>[]::new);
        boolean whole = false;
        try (FileChannel channel =
                FileChannel.open(fresh, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), permissions)) {
            before.ifPresent(of -> keep(of, fresh));
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
            whole = true;
        } finally {
            if (!whole) {
                Files.deleteIfExists(fresh);
            }
        }
        clearUp(folder, fresh);
        return fresh;
    }

    /** The owner first: who gives a file away may lose the right to change it, and the system takes rights off it then. */
    private static void keep(PosixFileAttributes before, Path fresh) {
        PosixFileAttributeView view =
                Files.getFileAttributeView(fresh, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view == null) {
            return;
        }
        try {
            if (!view.readAttributes().group().equals(before.group())) {
                view.setGroup(before.group());
            }
            if (!view.getOwner().equals(before.owner())) {
                view.setOwner(before.owner());
            }
        } catch (IOException | SecurityException notOurs) {
            // Only some may give files away; it then belongs to who wrote it.
        }
        try {
            view.setPermissions(before.permissions());
        } catch (IOException | SecurityException otherSystem) {
            // A disk without such permissions keeps none.
        }
    }

    private static Optional<PosixFileAttributes> attributes(Path file) {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        try {
            return view == null ? Optional.empty() : Optional.of(view.readAttributes());
        } catch (IOException none) {
            return Optional.empty();
        }
    }

    /** Takes away what a killed program of the same person left in the folder. */
    private static void clearUp(Path folder, Path fresh) {
        Instant old = Instant.now().minus(LEFT_BEHIND);
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEGIN + "*" + END)) {
            UserPrincipal own = Files.getOwner(fresh, LinkOption.NOFOLLOW_LINKS);
            for (Path file : left) {
                if (OURS.matcher(file.getFileName().toString()).matches()
                        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS)
                                .toInstant()
                                .isBefore(old)
                        && Files.getOwner(file, LinkOption.NOFOLLOW_LINKS).equals(own)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException | RuntimeException stays) {
            // The next write tries again.
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherDisk) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
