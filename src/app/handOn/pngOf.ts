import { POSTER_PX } from "../../report/poster.ts";
import { picturesTexts as t } from "../../texts/english/pictures.ts";

/** Sharp enough for a sheet of A4. */
const SCALE = 2;

/** The poster's SVG as a PNG picture. */
export async function pngOf(svg: string): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = SCALE * POSTER_PX.width;
  canvas.height = SCALE * POSTER_PX.height;
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error(t.noCanvas);
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error(t.empty))), "image/png");
  });
}
