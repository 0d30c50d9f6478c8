import type { Project } from "../model/project.ts";
import type { Dials } from "./dial.ts";
import type { PushRun } from "./pushRun.ts";
import type { Scene } from "./scene.ts";

/** One choice of parameters within a pattern; speed and names are added by the catalogue. */
export interface Variant {
  /** Parameters in short, part of the routine's id: stable. */
  readonly code: string;
  /** The same in plain words. */
  readonly label: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
  /** Which way round the frame is taken: its x axis along the longer or the shorter side of the zone. */
  readonly longFirst: boolean;
  /** Room beside walls on top of the settings' clearance, mm: where the dial of that name usually stands. */
  readonly extraBerthMm: number;
  /** The other dials that this variant has, and where they usually stand. */
  readonly dials?: Pick<Dials, "spacingFrac" | "radiusFrac">;
  /** @param dials where all of its dials stand */
  readonly runs: (scene: Scene, dials: Dials) => readonly PushRun[];
}

/** A pattern: a way of searching that yields routines for any zone and robot. */
export interface Family {
  /** First part of the routine's id. */
  readonly id: string;
  /** Name in plain words, unique. */
  readonly pattern: string;
  readonly variants: readonly Variant[];
  /** Some robots only. Left out: any. */
  readonly needs?: {
    readonly fits: (project: Project) => boolean;
    /** Why others get no such routine: a plain sentence. */
    readonly reason: string;
  };
}

/** The families that a project's robot can drive at all. */
export function fittingFamilies(families: readonly Family[], project: Project): readonly Family[] {
  return families.filter(({ needs }) => needs === undefined || needs.fits(project));
}

/** Every combination of the listed values, first list slowest. */
export function combinations<T extends Readonly<Record<string, readonly unknown[]>>>(
  lists: T,
): readonly { readonly [K in keyof T]: T[K][number] }[] {
  type Choice = { readonly [K in keyof T]: T[K][number] };
  return Object.entries(lists).reduce<readonly Choice[]>(
    (made, [name, values]) => made.flatMap((one) => values.map((value) => ({ ...one, [name]: value }))),
    [{} as Choice],
  );
}

export function percent(share: number): number {
  return Math.round(100 * share);
}

/** "a, b, c" without the empty ones. */
export function listed(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(", ");
}

/** Parameters in short, joined for an id. */
export function coded(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join("-");
}
