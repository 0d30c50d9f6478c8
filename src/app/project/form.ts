/** A project file as plain JSON, the way people fill it in: it may be wrong, and is checked like any file. */
export type Form = { readonly [key: string]: unknown };

/** "zone.keepOuts[2].xMm" → ["zone", "keepOuts", 2, "xMm"]. Paths are those of the file's issues. */
export function stepsOf(path: string): readonly (string | number)[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, key, index]) =>
    index === undefined ? (key ?? "") : Number(index),
  );
}

/** The value under a path; undefined where there is none. */
export function valueAt(form: unknown, path: string): unknown {
  let value = form;
  for (const step of stepsOf(path)) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Readonly<Record<string | number, unknown>>)[step];
  }
  return value;
}

/** The form with another value under a path; missing objects on the way are made. undefined takes the key, or the entry of the list, out. */
export function withValue(form: Form, path: string, value: unknown): Form {
  return replaced(form, stepsOf(path), value) as Form;
}

function replaced(at: unknown, [step, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (step === undefined) return value;
  if (typeof step === "number") {
    const list = Array.isArray(at) ? [...at] : [];
    if (rest.length === 0 && value === undefined) list.splice(step, 1);
    else list[step] = replaced(list[step], rest, value);
    return list;
  }
  const object = typeof at === "object" && at !== null && !Array.isArray(at) ? at : {};
  const entry = replaced((object as Form)[step], rest, value);
  if (entry !== undefined) return { ...object, [step]: entry };
  return Object.fromEntries(Object.entries(object).filter(([key]) => key !== step));
}
