/** A photo of the robot, made smaller: what is kept holds none of the camera's notes about place and time. */
export interface Photo {
  readonly blob: Blob;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Enough to see half a millimetre of a small robot; a phone's photo is twice as wide. */
const LONGEST_PX = 2000;
/** Larger files are no photo of a phone. */
const MOST_BYTES = 60_000_000;
const SMALLEST_PX = 50;

/** Reads a picture that the browser can decode; null where it cannot, or where it is too small to show anything. Never throws. */
export async function readPhoto(file: Blob): Promise<Photo | null> {
  if (file.size > MOST_BYTES) return null;
  try {
    const image = await createImageBitmap(file);
    const shrink = Math.min(1, LONGEST_PX / Math.max(image.width, image.height));
    const widthPx = Math.round(image.width * shrink);
    const heightPx = Math.round(image.height * shrink);
    if (Math.min(widthPx, heightPx) < SMALLEST_PX) return null;
    const canvas = new OffscreenCanvas(widthPx, heightPx);
    canvas.getContext("2d")?.drawImage(image, 0, 0, widthPx, heightPx);
    image.close();
    return { blob: await canvas.convertToBlob({ type: "image/jpeg", quality: 0.85 }), widthPx, heightPx };
  } catch {
    return null;
  }
}
