package evenhand.scenario;

import evenhand.catalogue.Catalogue;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * JSON Merge Patch (RFC 7396): objects merge, everything else is replaced, null removes. Each value keeps the place it came from.
 * One rule goes beyond: where a patch changes a kind or layout, that object is replaced whole, never half of it.
 */
final class MergePatch {
    private MergePatch() {}

    static Json merge(Json base, Json patch) {
        if (!(patch instanceof Json.Obj changes)) {
            return patch;
        }
        Json.Obj target = base instanceof Json.Obj obj && !changesKind(obj, changes)
                ? obj
                : new Json.Obj(changes.place(), Map.of(), Map.of(), Map.of());
        Map<String, Json> members = new LinkedHashMap<>(target.members());
        Map<String, Place> keys = new HashMap<>(target.keys());
        Map<String, Json> removed = new HashMap<>(target.removed());
        changes.members().forEach((key, change) -> {
            Place keyPlace = changes.keys().getOrDefault(key, change.place());
            if (change instanceof Json.Null) {
                members.remove(key);
                removed.put(key, change);
                keys.put(key, keyPlace);
            } else {
                Json before = members.get(key);
                members.put(key, merge(before == null ? new Json.Null(change.place()) : before, change));
                removed.remove(key);
                if (before == null) {
                    keys.put(key, keyPlace);
                }
            }
        });
        return new Json.Obj(target.place(), members, keys, removed);
    }

    private static boolean changesKind(Json.Obj base, Json.Obj patch) {
        return Catalogue.KIND_KEYS.stream()
                .anyMatch(key -> base.members().get(key) instanceof Json.Str before
                        && patch.members().get(key) instanceof Json.Str after
                        && !before.text().equals(after.text()));
    }
}
