/** The projects that ship with the tool, each a file in fields/, fetched when chosen. */
const FILES = import.meta.glob<string>("../../fields/*.json", { query: "?raw", import: "default" });

export interface ShippedField {
  /** File name without ending; stable. */
  readonly id: string;
  readonly title: string;
  readonly load: () => Promise<string>;
}

/** The one that opens first. */
export const DEFAULT_FIELD = "usual-zone";

/** "usual-zone" → "Usual zone", the default first. */
export const SHIPPED_FIELDS: readonly ShippedField[] = Object.entries(FILES)
  .map(([path, load]) => {
    const id = path.replace(/^.*\//, "").replace(/\.json$/, "");
    const words = id.replaceAll("-", " ");
    return { id, title: words.charAt(0).toUpperCase() + words.slice(1), load };
  })
  .sort((a, b) => Number(b.id === DEFAULT_FIELD) - Number(a.id === DEFAULT_FIELD));
