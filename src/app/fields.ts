import type { ProjectFile } from "../model/parse.ts";
import { shippedTexts as t } from "../texts/english/shipped.ts";

/** The projects that ship with the tool, each a file in fields/, fetched when chosen. */
const FILES = import.meta.glob<string>("../../fields/*.json", { query: "?raw", import: "default" });

export interface ShippedField {
  /** File name without ending; stable. */
  readonly id: string;
  readonly load: () => Promise<string>;
}

/** The one that opens first. */
export const DEFAULT_FIELD = "usual-zone";

/** The default first. */
export const SHIPPED_FIELDS: readonly ShippedField[] = Object.entries(FILES)
  .map(([path, load]) => ({ id: path.replace(/^.*\//, "").replace(/\.json$/, ""), load }))
  .sort((a, b) => Number(b.id === DEFAULT_FIELD) - Number(a.id === DEFAULT_FIELD));

/** "usual-zone" → "Usual zone", where the language has no name of its own for it. */
export function fieldTitle(id: string): string {
  const words = id.replaceAll("-", " ");
  return t.title(id, words.charAt(0).toUpperCase() + words.slice(1));
}

/** A shipped project with its names and its note in the language spoken; its numbers are the file's. */
export function fieldInWords(id: string, file: ProjectFile): ProjectFile {
  const { name, note, robot } = file.project;
  return {
    ...file,
    project: {
      ...file.project,
      name: t.name(id, name),
      note: t.note(id, note),
      robot: { ...robot, name: t.robot(id, robot.name) },
    },
  };
}
