import { createStore, del, get, set } from "idb-keyval";
import type { Marks, PhotoPoint } from "./marks.ts";
import type { Photo } from "./photo.ts";

/** A photo with what was marked in it, as the browser keeps it beside a project: never in its file, never in a link. */
export interface KeptPhoto {
  readonly photo: Photo;
  readonly marks: Marks;
}

// A database of its own: whoever lists the projects need not read the photos.
const store = () => createStore("wedgeward-photos", "photos");

/** The photo kept beside a project; null where there is none, or where the browser keeps nothing. */
export async function keptPhoto(pageId: string): Promise<KeptPhoto | null> {
  try {
    const kept: unknown = await get(pageId, store());
    return isKept(kept) ? kept : null;
  } catch {
    return null;
  }
}

/** Whether it could be kept. */
export async function keepPhoto(pageId: string, { photo, marks }: KeptPhoto): Promise<boolean> {
  try {
    await set(pageId, { photo, marks }, store());
    return true;
  } catch {
    return false;
  }
}

/** Whether it is gone. */
export async function forgetPhoto(pageId: string): Promise<boolean> {
  try {
    await del(pageId, store());
    return true;
  } catch {
    return false;
  }
}

/** Another version, or a fault, may have written it. */
function isKept(value: unknown): value is KeptPhoto {
  const kept = value as { photo?: Partial<Photo>; marks?: Partial<Marks> } | null | undefined;
  const { photo, marks } = kept ?? {};
  if (!(photo?.blob instanceof Blob) || !marks) return false;
  return (
    isLength(photo.widthPx) &&
    isLength(photo.heightPx) &&
    isLength(marks.trueMm) &&
    typeof marks.mirrored === "boolean" &&
    isPair(marks.ruler) &&
    isPair(marks.wheels)
  );
}

function isLength(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value) && value > 0;
}

function isPair(value: unknown): boolean {
  const isPoint = (point: Partial<PhotoPoint> | null): boolean =>
    Number.isFinite(point?.x) && Number.isFinite(point?.y);
  return Array.isArray(value) && value.length === 2 && value.every(isPoint);
}
