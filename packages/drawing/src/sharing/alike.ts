/**
 * The new value, made of the old one's objects wherever they say the same: the old one itself where all of it does.
 * Elements of a list that have an `id` or a `key` are compared with those of the same, else with those at the same
 * place. For plain data alone.
 */
export function alike<T>(before: unknown, now: T): T {
  if (Object.is(before, now) || !isHolder(before) || !isHolder(now)) return now;
  if (Array.isArray(now)) return Array.isArray(before) ? (alikeList(before, now) as T) : now;
  return Array.isArray(before) ? now : (alikeRecord(before, now) as T);
}

function alikeList(before: readonly unknown[], now: readonly unknown[]): readonly unknown[] {
  const named = now.length > 0 && nameOf(now[0]) !== undefined;
  // Most often nothing was put in or taken out, and each stands where it stood.
  let old: Map<unknown, unknown> | undefined;
  const twin = (value: unknown, i: number): unknown => {
    if (!named || nameOf(before[i]) === nameOf(value)) return before[i];
    old ??= new Map(before.map((b) => [nameOf(b), b]));
    return old.get(nameOf(value));
  };
  let [same, fresh] = [before.length === now.length, true];
  const list = now.map((value, i) => {
    const one = alike(twin(value, i), value);
    if (!Object.is(one, before[i])) same = false;
    if (!Object.is(one, value)) fresh = false;
    return one;
  });
  return same ? before : fresh ? now : list;
}

function alikeRecord(before: Holder, now: Holder): Holder {
  const keys = Object.keys(now);
  let same = keys.length === Object.keys(before).length;
  let record: Record<string, unknown> | undefined;
  for (const key of keys) {
    const value = now[key];
    const one = alike(before[key], value);
    if (!Object.is(one, before[key]) || !Object.hasOwn(before, key)) same = false;
    if (!Object.is(one, value)) {
      record ??= { ...now };
      record[key] = one;
    }
  }
  return same ? before : (record ?? now);
}

type Holder = Readonly<Record<string, unknown>>;

const isHolder = (value: unknown): value is Holder => typeof value === 'object' && value !== null;

const nameOf = (value: unknown): unknown => (isHolder(value) ? (value.id ?? value.key) : undefined);
